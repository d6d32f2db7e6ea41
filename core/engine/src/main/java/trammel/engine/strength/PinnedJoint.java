package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A plate (or several alike) with a hole and a pin or bolt in it, pulled toward an edge: the tab of
 * a bracket.
 *
 * <p>A link pivot turns even though its bolt is tight on the sleeve, so it is taken as a pin: AISC
 * 360-10 D5 with J7, from memory. Safe loads are the nominal ones over the standard's factors, 2.00
 * and 1.67.
 *
 * @param plateMm thickness of one plate, mm, 0.5 to 100
 * @param plates number of plates that share the load: 2 for a clevis bracket, 1 to 10
 * @param pinMm diameter of pin or bolt, mm, 2 to 200
 * @param holeMm diameter of the hole, mm, from the pin up to twice the pin
 * @param edgeMm distance from the middle of the hole to the edge the pin is pulled toward, mm, over
 *     half the hole, up to 2000
 * @param widthMm width of the plate across the pull at the hole, mm, over the hole, up to 4000; the
 *     hole is taken in the middle
 * @param grade steel of the plate
 */
public record PinnedJoint(
    double plateMm,
    int plates,
    double pinMm,
    double holeMm,
    double edgeMm,
    double widthMm,
    SteelGrade grade) {
  /** How the plate gives way. */
  public enum Mode {
    /** The pin crushes the side of the hole. */
    BEARING,
    /** The pin tears out to the edge. */
    TEAR_OUT,
    /** The plate tears across beside the hole. */
    NET_SECTION,
    /** The whole width stretches. */
    GROSS_SECTION
  }

  private static final double FACTOR_ON_RUPTURE = 2.00;
  private static final double FACTOR_ON_YIELD = 1.67;

  /** The extra 16 mm (0.63 in) of effective width beside a pin. Source: AISC 360 D5.1. */
  private static final double EXTRA_WIDTH_MM = 16.0;

  /**
   * Checks the joint.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public PinnedJoint {
    Given.within("plate thickness", plateMm, 0.5, 100, "mm", "Measure one plate.");
    Given.within("number of plates", plates, 1, 10, "", "A clevis bracket has 2.");
    Given.within("pin diameter", pinMm, 2, 200, "mm", "Give the bolt's nominal size.");
    Given.within(
        "hole diameter", holeMm, pinMm, 2.0 * pinMm, "mm", "The pin has to pass and not rattle.");
    Given.within(
        "edge distance",
        edgeMm,
        0.5 * holeMm + 0.1,
        2000,
        "mm",
        "Measure from the middle of the hole; it must leave metal beyond the hole.");
    Given.within(
        "plate width at the hole",
        widthMm,
        holeMm + 0.2,
        4000,
        "mm",
        "It must leave metal on both sides of the hole.");
  }

  private double clearEdgeMm() {
    return edgeMm - holeMm / 2.0;
  }

  private double besideHoleMm() {
    return (widthMm - holeMm) / 2.0;
  }

  private double allPlatesMm() {
    return plates * plateMm;
  }

  /**
   * Load at which the joint gives way in one manner.
   *
   * @param mode the manner
   * @return nominal strength, N
   */
  public double nominalN(Mode mode) {
    double thickness = allPlatesMm();
    switch (mode) {
      case BEARING:
        return 1.8 * grade.yieldMPa() * pinMm * thickness;
      case TEAR_OUT:
        return 0.6 * grade.tensileMPa() * 2.0 * thickness * (clearEdgeMm() + pinMm / 2.0);
      case NET_SECTION:
        double beside = Math.min(2.0 * plateMm + EXTRA_WIDTH_MM, besideHoleMm());
        return grade.tensileMPa() * 2.0 * beside * thickness;
      default:
        return grade.yieldMPa() * widthMm * thickness;
    }
  }

  /**
   * Load the standard allows in one manner.
   *
   * @param mode the manner
   * @return allowable strength, N
   */
  public double allowableN(Mode mode) {
    double factor = mode == Mode.GROSS_SECTION ? FACTOR_ON_YIELD : FACTOR_ON_RUPTURE;
    return nominalN(mode) / factor;
  }

  /**
   * The manner in which the joint gives way first, judged by what the standard allows.
   *
   * @return the governing mode
   */
  public Mode governing() {
    Mode least = Mode.BEARING;
    for (Mode mode : Mode.values()) {
      if (allowableN(mode) < allowableN(least)) {
        least = mode;
      }
    }
    return least;
  }

  /**
   * Load the standard allows.
   *
   * @return the least allowable strength of all modes, N
   */
  public double allowableN() {
    return allowableN(governing());
  }
}
