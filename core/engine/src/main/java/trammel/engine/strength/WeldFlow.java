package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * The force flow in a group of welds, linear over their plane. The sums over the welds do not
 * depend on the load: they are worked out once for as many loads as there are.
 */
public final class WeldFlow {
  /** A second moment smaller than this share of the larger one is none at all. */
  private static final double NO_STIFFNESS = 1e-9;

  /** A moment smaller than this about an axis without stiffness is rounding, Nmm. */
  private static final double NO_MOMENT_NMM = 1e-3;

  private final WeldGroup group;
  private final double lengthMm;
  private final double centreXMm;
  private final double centreYMm;
  private final double secondXMm3;
  private final double secondYMm3;
  private final double productMm3;

  /**
   * @param group the welds
   */
  public WeldFlow(WeldGroup group) {
    this.group = group;
    double length = 0;
    double momentX = 0;
    double momentY = 0;
    for (WeldLine line : group.lines()) {
      double own = line.lengthMm();
      length += own;
      momentX += own * line.middleXMm();
      momentY += own * line.middleYMm();
    }
    lengthMm = length;
    centreXMm = momentX / length;
    centreYMm = momentY / length;
    double secondX = 0;
    double secondY = 0;
    double product = 0;
    for (WeldLine line : group.lines()) {
      double own = line.lengthMm();
      double run = line.endXMm() - line.startXMm();
      double rise = line.endYMm() - line.startYMm();
      double armX = line.middleXMm() - centreXMm;
      double armY = line.middleYMm() - centreYMm;
      secondX += own * (rise * rise / 12.0 + armY * armY);
      secondY += own * (run * run / 12.0 + armX * armX);
      product += own * (run * rise / 12.0 + armX * armY);
    }
    secondXMm3 = secondX;
    secondYMm3 = secondY;
    productMm3 = product;
  }

  double centreXMm() {
    return centreXMm;
  }

  double centreYMm() {
    return centreYMm;
  }

  double secondXMm3() {
    return secondXMm3;
  }

  double secondYMm3() {
    return secondYMm3;
  }

  /**
   * Largest force flow anywhere in the welds.
   *
   * @param load the load
   * @return force for each mm of weld, N/mm
   * @throws IllegalArgumentException if all welds lie on one line and the load bends about it,
   *     which they cannot bear
   */
  public double largestNPerMm(WeldLoad load) {
    UnderLoad flow = new UnderLoad(load);
    double largest = 0;
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (WeldLine line : group.lines()) {
      // Most welds start where the one before them ends.
      if (line.startXMm() != lastX || line.startYMm() != lastY) {
        largest = Math.max(largest, flow.atNPerMm(line.startXMm(), line.startYMm()));
      }
      lastX = line.endXMm();
      lastY = line.endYMm();
      largest = Math.max(largest, flow.atNPerMm(lastX, lastY));
    }
    return largest;
  }

  /**
   * Largest stress on the throat.
   *
   * @param load the load
   * @param legMm leg of the fillets, mm, 0.5 to 50
   * @return stress, MPa
   * @throws IllegalArgumentException if the leg is outside its range, or as {@link #largestNPerMm}
   */
  public double throatStressMPa(WeldLoad load, double legMm) {
    FilletSeam.checkLeg(legMm);
    return largestNPerMm(load) / (FilletSeam.THROAT_SHARE * legMm);
  }

  /** The flow under one load. */
  private final class UnderLoad {
    private final double evenX;
    private final double evenY;
    private final double evenZ;
    private final double twist;
    private final double slopeX;
    private final double slopeY;

    UnderLoad(WeldLoad load) {
      evenX = load.forceXN() / lengthMm;
      evenY = load.forceYN() / lengthMm;
      evenZ = load.forceZN() / lengthMm;
      double armX = load.atXMm() - centreXMm;
      double armY = load.atYMm() - centreYMm;
      double armZ = load.atZMm();
      double momentX = load.momentXNmm() + armY * load.forceZN() - armZ * load.forceYN();
      double momentY = load.momentYNmm() + armZ * load.forceXN() - armX * load.forceZN();
      double momentZ = load.momentZNmm() + armX * load.forceYN() - armY * load.forceXN();
      twist = momentZ / (secondXMm3 + secondYMm3);
      // Principal axes of the lines: a moment about each is borne by that axis alone.
      double momentDifference = secondYMm3 - secondXMm3;
      double turn = 0.5 * Math.atan2(2.0 * productMm3, momentDifference);
      double cosine = Math.cos(turn);
      double sine = Math.sin(turn);
      double mean = 0.5 * (secondXMm3 + secondYMm3);
      double spread = Math.hypot(0.5 * momentDifference, productMm3);
      double alongFirst = momentX * cosine + momentY * sine;
      double alongSecond = momentY * cosine - momentX * sine;
      double acrossSlope = slope(alongFirst, mean - spread, mean);
      double alongSlope = slope(alongSecond, mean + spread, mean);
      slopeX = -acrossSlope * sine - alongSlope * cosine;
      slopeY = acrossSlope * cosine - alongSlope * sine;
    }

    private static double slope(double momentNmm, double stiffnessMm3, double meanMm3) {
      if (stiffnessMm3 > NO_STIFFNESS * meanMm3) {
        return momentNmm / stiffnessMm3;
      }
      if (Math.abs(momentNmm) <= NO_MOMENT_NMM) {
        return 0;
      }
      throw Given.refusal(
          "moment about the line of the welds",
          Given.text(momentNmm) + " Nmm",
          "0 when all welds lie on one line",
          "Add a weld beside that line or a return at its ends.");
    }

    double atNPerMm(double xMm, double yMm) {
      double x = xMm - centreXMm;
      double y = yMm - centreYMm;
      double alongX = evenX - twist * y;
      double alongY = evenY + twist * x;
      double alongZ = evenZ + slopeX * x + slopeY * y;
      return Math.hypot(Math.hypot(alongX, alongY), alongZ);
    }
  }
}
