package trammel.reading.quantity;

import java.util.Optional;

/**
 * A unit that is understood at the edge, with its size in the unit used inside the tool.
 *
 * <p>Sizes are the exact definitions of the international inch (25.4 mm) and pound (0.45359237 kg)
 * and of standard gravity (9.80665 m/s²): NIST Special Publication 811, appendix B.
 */
public enum Unit {
  /** 25.4 mm. */
  INCH(QuantityKind.LENGTH, 254, 10, true, "in", "inch", "inches", "\""),
  /** 304.8 mm. */
  FOOT(QuantityKind.LENGTH, 3048, 10, true, "ft", "foot", "feet", "'"),
  /** The unit inside. */
  MILLIMETRE(QuantityKind.LENGTH, 1, 1, false, "mm"),
  /** 10 mm. */
  CENTIMETRE(QuantityKind.LENGTH, 10, 1, false, "cm"),
  /** 1000 mm. */
  METRE(QuantityKind.LENGTH, 1000, 1, false, "m"),
  /** π/180 rad. */
  DEGREE(QuantityKind.ANGLE, Math.PI / 180, true, "deg", "°", "degree", "degrees"),
  /** 0.45359237 kg. */
  POUND(QuantityKind.MASS, 45_359_237, 100_000_000, true, "lb", "lbs", "pound", "pounds"),
  /** The unit inside. */
  KILOGRAM(QuantityKind.MASS, 1, 1, false, "kg"),
  /** 4.4482216152605 N. */
  POUND_FORCE(QuantityKind.FORCE, 4.4482216152605, true, "lb", "lbf", "lbs"),
  /** The unit inside. */
  NEWTON(QuantityKind.FORCE, 1, 1, false, "N"),
  /** 1000 N. */
  KILONEWTON(QuantityKind.FORCE, 1000, 1, false, "kN"),
  /** 0.17512683524647636 N/mm. */
  POUND_PER_INCH(QuantityKind.RATE, 4.4482216152605 / 25.4, true, "lb/in", "lbf/in", "lbs/in"),
  /** The unit inside. */
  NEWTON_PER_MILLIMETRE(QuantityKind.RATE, 1, 1, false, "N/mm", "kN/m"),
  /** 1355.8179483314004 Nmm. */
  POUND_FOOT(
      QuantityKind.TORQUE,
      4.4482216152605 * 304.8,
      true,
      "lb-ft",
      "ft-lb",
      "lb ft",
      "ft lb",
      "lbf-ft",
      "ft-lbf"),
  /** 112.9848290276167 Nmm. */
  POUND_INCH(QuantityKind.TORQUE, 4.4482216152605 * 25.4, true, "lb-in", "in-lb", "in lb", "lb in"),
  /** 1000 Nmm. */
  NEWTON_METRE(QuantityKind.TORQUE, 1000, 1, false, "Nm", "N m", "N-m"),
  /** 0.0068947572931683 MPa. */
  PSI(QuantityKind.PRESSURE, 4.4482216152605 / 645.16, true, "psi"),
  /** 6.8947572931683 MPa. */
  KSI(QuantityKind.PRESSURE, 4448.2216152605 / 645.16, true, "ksi"),
  /** 0.001 MPa. */
  KILOPASCAL(QuantityKind.PRESSURE, 1, 1000, false, "kPa"),
  /** 0.1 MPa. */
  BAR(QuantityKind.PRESSURE, 1, 10, false, "bar"),
  /** The unit inside. */
  MEGAPASCAL(QuantityKind.PRESSURE, 1, 1, false, "MPa", "N/mm²"),
  /** 0.44704 m/s. */
  MILE_PER_HOUR(QuantityKind.SPEED, 44_704, 100_000, true, "mph"),
  /** 1/3.6 m/s. */
  KILOMETRE_PER_HOUR(QuantityKind.SPEED, 10, 36, false, "km/h", "kph", "kmh"),
  /** The unit inside. */
  METRE_PER_SECOND(QuantityKind.SPEED, 1, 1, false, "m/s"),
  /** The unit inside. */
  RPM(QuantityKind.ROTATION, 1, 1, false, "rpm"),
  /** The unit inside. */
  HOUR(QuantityKind.TIME, 1, 1, true, "h", "hr", "hrs", "hour", "hours"),
  /** 1/60 h. */
  MINUTE(QuantityKind.TIME, 1, 60, false, "min", "minute", "minutes"),
  /** 1/100. */
  PERCENT(QuantityKind.PERCENT, 1, 100, false, "%", "percent");

  /** Integers up to this size are exact in a double. */
  private static final double EXACT_LIMIT = 9_007_199_254_740_992.0;

  private final QuantityKind kind;
  private final long numerator;
  private final long denominator;
  private final double factor;
  private final boolean takesFractions;
  private final String[] names;

  Unit(
      QuantityKind kind,
      long numerator,
      long denominator,
      boolean takesFractions,
      String... names) {
    this.kind = kind;
    this.numerator = numerator;
    this.denominator = denominator;
    this.factor = (double) numerator / denominator;
    this.takesFractions = takesFractions;
    this.names = names;
  }

  Unit(QuantityKind kind, double factor, boolean takesFractions, String... names) {
    this.kind = kind;
    this.numerator = 0;
    this.denominator = 0;
    this.factor = factor;
    this.takesFractions = takesFractions;
    this.names = names;
  }

  /** What this unit measures. */
  public QuantityKind kind() {
    return kind;
  }

  /** The first name of the unit, as it is printed. */
  public String symbol() {
    return names[0];
  }

  /** The size of this unit in the unit used inside the tool. */
  public double factor() {
    return factor;
  }

  /** Converts a value of the inside unit to this unit. */
  public double fromInside(double value) {
    return numerator == 0 ? value / factor : value * denominator / numerator;
  }

  boolean takesFractions() {
    return takesFractions;
  }

  /**
   * A value in this unit given as a fraction of integers, in the inside unit; rounded only once
   * when the integers allow it, so that 29 1/2 in and 29.5 in are the same double.
   */
  double toInside(double over, double under) {
    double scaledOver = over * numerator;
    double scaledUnder = under * denominator;
    if (numerator != 0 && scaledOver <= EXACT_LIMIT && scaledUnder <= EXACT_LIMIT) {
      return scaledOver / scaledUnder;
    }
    return over / under * factor;
  }

  /** The unit of a kind by one of its names, in any case. */
  static Optional<Unit> find(QuantityKind kind, String name) {
    for (Unit unit : values()) {
      if (unit.kind == kind && unit.isNamed(name)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** Any unit with this name, for saying that it measures something else. */
  static Optional<Unit> findAny(String name) {
    for (Unit unit : values()) {
      if (unit.isNamed(name)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The names of all units of a kind, for a message. */
  static String symbolsOf(QuantityKind kind) {
    StringBuilder list = new StringBuilder();
    for (Unit unit : values()) {
      if (unit.kind == kind) {
        list.append(list.isEmpty() ? "" : ", ").append(unit.symbol());
      }
    }
    return list.toString();
  }

  private boolean isNamed(String name) {
    for (String known : names) {
      if (known.equalsIgnoreCase(name)) {
        return true;
      }
    }
    return false;
  }
}
