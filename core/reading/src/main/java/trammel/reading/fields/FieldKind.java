package trammel.reading.fields;

/** What may stand at a field. */
public enum FieldKind {
  /** A length; value in mm. */
  LENGTH,
  /** An angle; value in rad. */
  ANGLE,
  /** A weight; value in kg. */
  MASS,
  /** A force; value in N. */
  FORCE,
  /** A spring rate; value in N/mm. */
  RATE,
  /** A torque; value in Nmm. */
  TORQUE,
  /** A pressure or stress; value in MPa. */
  PRESSURE,
  /** A speed; value in m/s. */
  SPEED,
  /** A shaft speed; value in revolutions per minute. */
  ROTATION,
  /** A time; value in hours. */
  TIME,
  /** A percentage; value as a ratio. */
  PERCENT,
  /** A number without unit. */
  NUMBER,
  /** A whole number. */
  COUNT,
  /** One of several words. */
  CHOICE,
  /** A list of words out of several. */
  CHOICES,
  /** Several names that are not known beforehand, {@code List<String>}. */
  NAMES,
  /** True or false. */
  FLAG,
  /** A text. */
  TEXT,
  /** A day. */
  DATE,
  /** An amount of money in the currency of the job; an exact decimal. */
  MONEY,
  /** A currency by its ISO 4217 code. */
  CURRENCY,
  /** A length, one or several readings. */
  MEASURED_LENGTH,
  /** An angle with its datum, one or several readings. */
  MEASURED_ANGLE,
  /** An angle from level, one or several readings. */
  MEASURED_LEVEL_ANGLE,
  /** A weight, one or several readings. */
  MEASURED_MASS,
  /** Three distances: forward, left, up. */
  POINT,
  /** Three measured distances: forward, left, up. */
  MEASURED_POINT,
  /** Some of three distances: forward, left, up. */
  PARTIAL_POINT,
  /** Two distances along one axis. */
  SPAN,
  /** A group of fields. */
  SECTION,
  /** A list of groups of the same fields. */
  SECTION_LIST,
  /** Groups of the same fields, each under a name of its own. */
  SECTION_MAP,
  /** A group of keys that something else reads. */
  OPTIONS,
  /** Groups of keys that something else reads, each under a name that it knows. */
  OPTIONS_MAP
}
