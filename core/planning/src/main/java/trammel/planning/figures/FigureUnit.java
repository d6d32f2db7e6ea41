package trammel.planning.figures;

import trammel.reading.quantity.UnitSystem;

/** Units of results: what a value inside the tool is divided by, in US shop units and in metric. */
public enum FigureUnit {
  /** Inside: mm. */
  LENGTH("in", Size.INCH_MM, "mm", 1),
  /** Inside: mm². */
  AREA("in2", Size.INCH_MM * Size.INCH_MM, "mm2", 1),
  /** Inside: mm³. */
  VOLUME("in3", Size.INCH_MM * Size.INCH_MM * Size.INCH_MM, "mm3", 1),
  /** Inside: mm⁴. */
  SECOND_MOMENT("in4", Size.INCH_MM * Size.INCH_MM * Size.INCH_MM * Size.INCH_MM, "mm4", 1),
  /** Inside: kg. */
  MASS("lb", Size.POUND_KG, "kg", 1),
  /** Inside: kg/m. */
  MASS_PER_LENGTH("lb/ft", Size.POUND_KG / (12e-3 * Size.INCH_MM), "kg/m", 1),
  /** Inside: kg/m². */
  MASS_PER_AREA("lb/ft2", Size.POUND_KG / (144e-6 * Size.INCH_MM * Size.INCH_MM), "kg/m2", 1),
  /** Inside: N. */
  FORCE("lb", Size.POUND_N, "N", 1),
  /** Inside: N/mm; rates, and the strength of a weld along its length. */
  RATE("lb/in", Size.POUND_N / Size.INCH_MM, "N/mm", 1),
  /** Inside: Nmm. */
  TORQUE("lb-ft", 12 * Size.POUND_N * Size.INCH_MM, "Nm", 1000),
  /** Inside: MPa. */
  STRESS("psi", Size.POUND_N / (Size.INCH_MM * Size.INCH_MM), "MPa", 1),
  /** Inside: MPa. */
  PRESSURE("psi", Size.POUND_N / (Size.INCH_MM * Size.INCH_MM), "kPa", 1e-3),
  /** Inside: rad. */
  ANGLE("deg", Math.PI / 180, "deg", Math.PI / 180),
  /** Inside: rad/mm. */
  ANGLE_PER_TRAVEL("deg/in", Math.PI / 180 / Size.INCH_MM, "deg/mm", Math.PI / 180),
  /** Inside: Nmm/rad. */
  ROLL_STIFFNESS(
      "lb-in/deg", Size.POUND_N * Size.INCH_MM * 180 / Math.PI, "Nm/deg", 1000 * 180 / Math.PI),
  /** Inside: rad/s². */
  ANGULAR_ACCELERATION("rad/s2", 1, "rad/s2", 1),
  /** Inside: a ratio, shown as one. */
  RATIO("", 1, "", 1),
  /** Inside: a ratio, shown as a percentage. */
  PERCENT("%", 0.01, "%", 0.01),
  /** Inside: Hz. */
  FREQUENCY("Hz", 1, "Hz", 1),
  /** Inside: Hz, shown as cycles a minute. */
  CYCLES("cpm", 1 / 60.0, "cpm", 1 / 60.0),
  /** Inside: revolutions a minute. */
  ROTATION("rpm", 1, "rpm", 1),
  /** Inside: mm/min. */
  FEED("in/min", Size.INCH_MM, "mm/min", 1),
  /** Inside: hours. */
  HOURS("h", 1, "h", 1),
  /** Inside: minutes. */
  MINUTES("min", 1, "min", 1),
  /** Inside: ampere. */
  CURRENT("A", 1, "A", 1),
  /** Inside: kg/h. */
  MASS_PER_HOUR("lb/h", Size.POUND_KG, "kg/h", 1),
  /** Inside: litres. */
  GAS("ft3", 28.316846592, "L", 1),
  /** Inside: money a kilogram. */
  MONEY_PER_MASS("per lb", 1 / Size.POUND_KG, "per kg", 1),
  /** Inside: a count. */
  COUNT("", 1, "", 1),
  /** An exact amount in the currency that was put in. */
  MONEY("", 1, "", 1),
  /** No number but a word. */
  WORD("", 1, "", 1);

  /** The exact definitions of inch and pound, and standard gravity: NIST SP 811, appendix B. */
  private static final class Size {
    static final double INCH_MM = 25.4;
    static final double POUND_KG = 0.45359237;
    static final double POUND_N = 4.4482216152605;
  }

  private final String usSymbol;
  private final double usSize;
  private final String metricSymbol;
  private final double metricSize;

  FigureUnit(String usSymbol, double usSize, String metricSymbol, double metricSize) {
    this.usSymbol = usSymbol;
    this.usSize = usSize;
    this.metricSymbol = metricSymbol;
    this.metricSize = metricSize;
  }

  /** The unit as it is printed; empty for a pure number. */
  public String symbol(UnitSystem units) {
    return units == UnitSystem.US ? usSymbol : metricSymbol;
  }

  /** A value inside the tool in the unit that is printed. */
  public double shown(double inside, UnitSystem units) {
    return inside / (units == UnitSystem.US ? usSize : metricSize);
  }
}
