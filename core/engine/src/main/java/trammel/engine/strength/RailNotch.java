package trammel.engine.strength;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A notch cut up into the underside of a rail above the axle, with its plates. The notch is
 * symmetric about its middle. A cap plate lines the cut edge from below and runs over the width of
 * the rail; side plates lie on the outside of the web from the cut edge up.
 *
 * @param shape outline of the cut
 * @param depthMm depth of the cut at its middle, mm, over 0, up to 900
 * @param lengthMm length of the cut along the underside, mm, over 0, up to 3000; a circular cut is
 *     at least twice as long as deep
 * @param capPlateMm thickness of the cap plate, mm, 0 for none, up to 50 and under the depth
 * @param sidePlateMm thickness of a plate on the outside of the web, mm, 0 for none, up to 50
 */
public record RailNotch(
    Shape shape, double depthMm, double lengthMm, double capPlateMm, double sidePlateMm) {
  /** Outline of the cut as seen from the side. */
  public enum Shape {
    /** An arc of a circle. */
    CIRCULAR,
    /** Straight up, along, and down. */
    RECTANGULAR
  }

  /**
   * Checks the notch.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public RailNotch {
    Given.within("notch depth", depthMm, 0.1, 900, "mm", "Measure up from the underside.");
    Given.within("notch length", lengthMm, 1, 3000, "mm", "Measure along the underside.");
    Given.within(
        "cap plate of the notch",
        capPlateMm,
        0,
        Math.min(50, 0.99 * depthMm),
        "mm",
        "It has to fit inside the cut; give 0 for none.");
    Given.within("side plate of the notch", sidePlateMm, 0, 50, "mm", "Give 0 for none.");
    if (shape == Shape.CIRCULAR && lengthMm < 2.0 * depthMm * (1.0 - 1e-9)) {
      throw Given.refusal(
          "length of the circular notch",
          Given.text(lengthMm) + " mm",
          "at least twice its depth, " + Given.text(2.0 * depthMm) + " mm",
          "Cut it longer, or use the rectangular shape.");
    }
  }

  /**
   * Room the notch gives at its middle, under the cap plate.
   *
   * @return height from the underside of the rail to the underside of the cap plate, mm
   */
  public double clearDepthMm() {
    return depthMm - capPlateMm;
  }

  /**
   * Depth of the cut at a distance along the rail.
   *
   * @param alongMm distance from the middle of the notch, mm, either direction
   * @return depth, mm, 0 outside the notch
   * @throws IllegalArgumentException if the distance is not a number
   */
  public double depthAtMm(double alongMm) {
    Given.finite("distance along the rail", alongMm, "mm");
    double half = lengthMm / 2.0;
    double along = Math.abs(alongMm);
    if (along >= half) {
      return 0;
    }
    if (shape == Shape.RECTANGULAR) {
      return depthMm;
    }
    double radius = (half * half + depthMm * depthMm) / (2.0 * depthMm);
    double centreBelow = radius - depthMm;
    return Math.max(0, Math.sqrt(radius * radius - along * along) - centreBelow);
  }

  /**
   * The rail's section at a distance along it. Beside the notch this is the whole rail.
   *
   * @param rail the rail
   * @param alongMm distance from the middle of the notch, mm, either direction
   * @return the section
   * @throws IllegalArgumentException if the notch leaves no web or its plates do not fit
   */
  public BuiltUpSection sectionAt(FrameRail rail, double alongMm) {
    double cutMm = depthAtMm(alongMm);
    double mostMm = rail.channel().depthMm() - rail.channel().flangeMm();
    if (depthMm >= mostMm) {
      throw Given.refusal(
          "notch depth",
          Given.text(depthMm) + " mm",
          "under the depth of the rail less its top flange, " + Given.text(mostMm) + " mm",
          "Cut less, or step the frame instead.");
    }
    if (cutMm <= 0) {
      return rail.section();
    }
    List<PlateRectangle> parts = new ArrayList<>(rail.partsAbove(cutMm));
    if (capPlateMm > 0) {
      parts.add(new PlateRectangle(0, cutMm - capPlateMm, rail.widthMm(), capPlateMm));
    }
    if (sidePlateMm > 0) {
      double height = rail.channel().depthMm() - cutMm;
      parts.add(new PlateRectangle(-sidePlateMm, cutMm, sidePlateMm, height));
    }
    return new BuiltUpSection(parts);
  }

  /**
   * Section modulus at the middle of the notch over that of the rail it was cut from, the smaller
   * of top and bottom in both.
   *
   * @param original the rail as it was before any work
   * @param worked the rail that is notched, boxed or not
   * @return ratio; 1 or more means nothing was lost
   * @throws IllegalArgumentException if the notch does not fit the rail
   */
  public double modulusRatio(FrameRail original, FrameRail worked) {
    return sectionAt(worked, 0).leastModulusMm3() / original.section().leastModulusMm3();
  }
}
