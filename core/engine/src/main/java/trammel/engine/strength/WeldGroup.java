package trammel.engine.strength;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * Welds in one plane that hold one part, treated as lines: force for each mm of weld first, throat
 * afterwards. The force flow from direct force is even, that from torsion in the plane goes with
 * the distance from the centroid, that from moments out of the plane with the distance from the
 * neutral axis; the three are added as vectors at every end of a line and the largest counts. The
 * whole resultant is taken as shear on the throat. Source: Blodgett, Design of Welded Structures,
 * section 7.4, and Shigley, Mechanical Engineering Design, ch. 9, both from memory.
 *
 * @param lines at least one weld
 */
public record WeldGroup(List<WeldLine> lines) {
  /** Corners of the polygon that stands for a weld round a tube. */
  private static final int RING_CORNERS = 72;

  /** A second moment smaller than this share of the larger one is none at all. */
  private static final double NO_STIFFNESS = 1e-9;

  /** A moment smaller than this about an axis without stiffness is rounding, Nmm. */
  private static final double NO_MOMENT_NMM = 1e-3;

  /**
   * Checks the group.
   *
   * @throws IllegalArgumentException if there is no weld
   */
  public WeldGroup {
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw Given.refusal("weld group", "0 welds", "at least 1 weld", "Give the weld lines.");
    }
  }

  /**
   * A weld all round a tube, as a polygon with 72 corners and the tube's circumference: its length
   * is exact and its second moments are within 0.1 %.
   *
   * @param diameterMm outer diameter of the tube, mm, 25 to 1000
   * @return the group, centred on the origin
   * @throws IllegalArgumentException if the diameter is outside its range
   */
  public static WeldGroup roundTube(double diameterMm) {
    Given.within("tube diameter", diameterMm, 25, 1000, "mm", "Measure the tube across.");
    double step = 2.0 * Math.PI / RING_CORNERS;
    double corner = diameterMm / 2.0 * (step / 2.0) / Math.sin(step / 2.0);
    List<WeldLine> ring = new ArrayList<>(RING_CORNERS);
    for (int side = 0; side < RING_CORNERS; side++) {
      double from = side * step;
      double to = (side + 1) * step;
      ring.add(
          new WeldLine(
              corner * Math.cos(from),
              corner * Math.sin(from),
              corner * Math.cos(to),
              corner * Math.sin(to)));
    }
    return new WeldGroup(ring);
  }

  /**
   * A weld all round a rectangle.
   *
   * @param widthMm width along X, mm, 1 to 10000
   * @param heightMm height along Y, mm, 1 to 10000
   * @return the group, centred on the origin
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public static WeldGroup rectangle(double widthMm, double heightMm) {
    Given.within("rectangle width", widthMm, 1, 10_000, "mm", "Measure the part.");
    Given.within("rectangle height", heightMm, 1, 10_000, "mm", "Measure the part.");
    double x = widthMm / 2.0;
    double y = heightMm / 2.0;
    return new WeldGroup(
        List.of(
            new WeldLine(-x, -y, x, -y),
            new WeldLine(x, -y, x, y),
            new WeldLine(x, y, -x, y),
            new WeldLine(-x, y, -x, -y)));
  }

  /**
   * Two equal upright welds side by side.
   *
   * @param apartMm distance between them along X, mm, 1 to 10000
   * @param heightMm length of each along Y, mm, 1 to 10000
   * @return the group, centred on the origin
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public static WeldGroup pair(double apartMm, double heightMm) {
    Given.within("distance between the welds", apartMm, 1, 10_000, "mm", "Measure the part.");
    Given.within("weld height", heightMm, 1, 10_000, "mm", "Measure the part.");
    double x = apartMm / 2.0;
    double y = heightMm / 2.0;
    return new WeldGroup(List.of(new WeldLine(-x, -y, -x, y), new WeldLine(x, -y, x, y)));
  }

  /**
   * Length of all welds.
   *
   * @return length, mm
   */
  public double lengthMm() {
    double sum = 0;
    for (WeldLine line : lines) {
      sum += line.lengthMm();
    }
    return sum;
  }

  /**
   * Centroid along X.
   *
   * @return position, mm
   */
  public double centroidXMm() {
    return centroidXMm(lengthMm());
  }

  private double centroidXMm(double lengthMm) {
    double sum = 0;
    for (WeldLine line : lines) {
      sum += line.lengthMm() * line.middleXMm();
    }
    return sum / lengthMm;
  }

  /**
   * Centroid along Y.
   *
   * @return position, mm
   */
  public double centroidYMm() {
    return centroidYMm(lengthMm());
  }

  private double centroidYMm(double lengthMm) {
    double sum = 0;
    for (WeldLine line : lines) {
      sum += line.lengthMm() * line.middleYMm();
    }
    return sum / lengthMm;
  }

  /**
   * Second moment of the lines about the X axis through the centroid.
   *
   * @return second moment, mm³
   */
  public double secondMomentXMm3() {
    return secondMomentXMm3(centroidYMm());
  }

  private double secondMomentXMm3(double centre) {
    double sum = 0;
    for (WeldLine line : lines) {
      double rise = line.endYMm() - line.startYMm();
      double arm = line.middleYMm() - centre;
      sum += line.lengthMm() * (rise * rise / 12.0 + arm * arm);
    }
    return sum;
  }

  /**
   * Second moment of the lines about the Y axis through the centroid.
   *
   * @return second moment, mm³
   */
  public double secondMomentYMm3() {
    return secondMomentYMm3(centroidXMm());
  }

  private double secondMomentYMm3(double centre) {
    double sum = 0;
    for (WeldLine line : lines) {
      double run = line.endXMm() - line.startXMm();
      double arm = line.middleXMm() - centre;
      sum += line.lengthMm() * (run * run / 12.0 + arm * arm);
    }
    return sum;
  }

  /**
   * Polar second moment of the lines about the centroid.
   *
   * @return second moment, mm³
   */
  public double polarMomentMm3() {
    return secondMomentXMm3() + secondMomentYMm3();
  }

  private double productMomentMm3(double centreX, double centreY) {
    double sum = 0;
    for (WeldLine line : lines) {
      double run = line.endXMm() - line.startXMm();
      double rise = line.endYMm() - line.startYMm();
      double arms = (line.middleXMm() - centreX) * (line.middleYMm() - centreY);
      sum += line.lengthMm() * (run * rise / 12.0 + arms);
    }
    return sum;
  }

  /**
   * Largest force flow anywhere in the welds.
   *
   * @param load the load
   * @return force for each mm of weld, N/mm
   * @throws IllegalArgumentException if all welds lie on one line and the load bends about it,
   *     which they cannot bear
   */
  public double largestFlowNPerMm(WeldLoad load) {
    Flow flow = new Flow(load);
    double largest = 0;
    for (WeldLine line : lines) {
      largest = Math.max(largest, flow.atNPerMm(line.startXMm(), line.startYMm()));
      largest = Math.max(largest, flow.atNPerMm(line.endXMm(), line.endYMm()));
    }
    return largest;
  }

  /**
   * Largest stress on the throat.
   *
   * @param load the load
   * @param legMm leg of the fillets, mm, 0.5 to 50
   * @return stress, MPa
   * @throws IllegalArgumentException if the leg is outside its range, or as {@link
   *     #largestFlowNPerMm}
   */
  public double throatStressMPa(WeldLoad load, double legMm) {
    FilletWeld.checkLeg(legMm);
    return largestFlowNPerMm(load) / (FilletWeld.THROAT_SHARE * legMm);
  }

  /**
   * Leg at which the throat is stressed just as far as allowed.
   *
   * @param load the load
   * @param electrode filler metal
   * @return leg, mm, 0 for no load
   * @throws IllegalArgumentException as {@link #largestFlowNPerMm}
   */
  public double neededLegMm(WeldLoad load, Electrode electrode) {
    return largestFlowNPerMm(load) / (FilletWeld.THROAT_SHARE * electrode.allowableThroatMPa());
  }

  /** Force flow under one load, linear over the plane of the welds. */
  private final class Flow {
    private final double centreX;
    private final double centreY;
    private final double evenX;
    private final double evenY;
    private final double evenZ;
    private final double twist;
    private final double slopeX;
    private final double slopeY;

    Flow(WeldLoad load) {
      double length = lengthMm();
      centreX = centroidXMm(length);
      centreY = centroidYMm(length);
      evenX = load.forceXN() / length;
      evenY = load.forceYN() / length;
      evenZ = load.forceZN() / length;
      double armX = load.atXMm() - centreX;
      double armY = load.atYMm() - centreY;
      double armZ = load.atZMm();
      double momentX = load.momentXNmm() + armY * load.forceZN() - armZ * load.forceYN();
      double momentY = load.momentYNmm() + armZ * load.forceXN() - armX * load.forceZN();
      double momentZ = load.momentZNmm() + armX * load.forceYN() - armY * load.forceXN();
      double secondX = secondMomentXMm3(centreY);
      double secondY = secondMomentYMm3(centreX);
      double product = productMomentMm3(centreX, centreY);
      twist = momentZ / (secondX + secondY);
      // Principal axes of the lines: a moment about each is borne by that axis alone.
      double momentDifference = secondY - secondX;
      double turn = 0.5 * Math.atan2(2.0 * product, momentDifference);
      double cosine = Math.cos(turn);
      double sine = Math.sin(turn);
      double mean = 0.5 * (secondX + secondY);
      double spread = Math.hypot(0.5 * momentDifference, product);
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
      double x = xMm - centreX;
      double y = yMm - centreY;
      double alongX = evenX - twist * y;
      double alongY = evenY + twist * x;
      double alongZ = evenZ + slopeX * x + slopeY * y;
      return Math.hypot(Math.hypot(alongX, alongY), alongZ);
    }
  }
}
