package trammel.reading.quantity;

/** What a quantity measures; decides which units are understood and what a bare number means. */
public enum QuantityKind {
  /** Inside: mm. */
  LENGTH("a length", "mm", "29 1/2 in", "750 mm"),
  /** Inside: rad. */
  ANGLE("an angle", "rad", "1.5 deg", "1.5 deg"),
  /** Inside: kg. Weights read from scales are masses. */
  MASS("a weight", "kg", "820 lb", "372 kg"),
  /** Inside: N. */
  FORCE("a force", "N", "1200 lb", "5.3 kN"),
  /** Inside: N/mm. */
  RATE("a spring rate", "N/mm", "180 lb/in", "31.5 N/mm"),
  /** Inside: Nmm. */
  TORQUE("a torque", "Nmm", "300 lb-ft", "400 Nm"),
  /** Inside: MPa, which is N/mm². */
  PRESSURE("a pressure", "MPa", "80 psi", "550 kPa"),
  /** Inside: m/s. */
  SPEED("a speed", "m/s", "60 mph", "100 km/h"),
  /** Inside: revolutions per minute. */
  ROTATION("a shaft speed", "rpm", "3000 rpm", "3000 rpm"),
  /** Inside: hours. */
  TIME("a time", "h", "2.5 h", "2.5 h"),
  /** Inside: a ratio, 1 for 100 %. */
  PERCENT("a percentage", "ratio", "65 %", "65 %");

  private final String noun;
  private final String insideUnit;
  private final String usExample;
  private final String metricExample;

  QuantityKind(String noun, String insideUnit, String usExample, String metricExample) {
    this.noun = noun;
    this.insideUnit = insideUnit;
    this.usExample = usExample;
    this.metricExample = metricExample;
  }

  /** The kind in words, with its article: {@code a length}. */
  public String noun() {
    return noun;
  }

  /** The unit of values of this kind inside the tool. */
  public String insideUnit() {
    return insideUnit;
  }

  /** A correctly written quantity of this kind. */
  public String example(UnitSystem system) {
    return system == UnitSystem.US ? usExample : metricExample;
  }

  /** The unit that a bare number of this kind takes. */
  public Unit bareUnit(UnitSystem system) {
    boolean us = system == UnitSystem.US;
    return switch (this) {
      case LENGTH -> us ? Unit.INCH : Unit.MILLIMETRE;
      case ANGLE -> Unit.DEGREE;
      case MASS -> us ? Unit.POUND : Unit.KILOGRAM;
      case FORCE -> us ? Unit.POUND_FORCE : Unit.NEWTON;
      case RATE -> us ? Unit.POUND_PER_INCH : Unit.NEWTON_PER_MILLIMETRE;
      case TORQUE -> us ? Unit.POUND_FOOT : Unit.NEWTON_METRE;
      case PRESSURE -> us ? Unit.PSI : Unit.KILOPASCAL;
      case SPEED -> us ? Unit.MILE_PER_HOUR : Unit.KILOMETRE_PER_HOUR;
      case ROTATION -> Unit.RPM;
      case TIME -> Unit.HOUR;
      case PERCENT -> Unit.PERCENT;
    };
  }
}
