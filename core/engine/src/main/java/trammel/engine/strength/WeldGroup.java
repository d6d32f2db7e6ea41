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
    return new WeldFlow(this).centreXMm();
  }

  /**
   * Centroid along Y.
   *
   * @return position, mm
   */
  public double centroidYMm() {
    return new WeldFlow(this).centreYMm();
  }

  /**
   * Second moment of the lines about the X axis through the centroid.
   *
   * @return second moment, mm³
   */
  public double secondMomentXMm3() {
    return new WeldFlow(this).secondXMm3();
  }

  /**
   * Second moment of the lines about the Y axis through the centroid.
   *
   * @return second moment, mm³
   */
  public double secondMomentYMm3() {
    return new WeldFlow(this).secondYMm3();
  }

  /**
   * Polar second moment of the lines about the centroid.
   *
   * @return second moment, mm³
   */
  public double polarMomentMm3() {
    return secondMomentXMm3() + secondMomentYMm3();
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
    return new WeldFlow(this).largestNPerMm(load);
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
    return new WeldFlow(this).throatStressMPa(load, legMm);
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
    return largestFlowNPerMm(load) / (FilletSeam.THROAT_SHARE * electrode.allowableThroatMPa());
  }
}
