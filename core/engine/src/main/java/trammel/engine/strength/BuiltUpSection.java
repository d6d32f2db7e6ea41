package trammel.engine.strength;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A section put together from upright rectangles: rails, boxed rails, notched rails with their
 * plates. The parts are taken as fully joined. Bending is taken about the horizontal axis through
 * the common centroid, which holds where cross members keep the rail from twisting sideways.
 * Source: parallel-axis theorem.
 *
 * @param parts at least one rectangle; they may touch, not overlap
 */
public record BuiltUpSection(List<PlateRectangle> parts) implements Section {
  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if there is no part or two parts overlap
   */
  public BuiltUpSection {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw Given.refusal(
          "built-up section", "0 parts", "at least 1 part", "Give the plates it is made of.");
    }
    for (int first = 0; first < parts.size(); first++) {
      for (int second = first + 1; second < parts.size(); second++) {
        refuseOverlap(parts.get(first), parts.get(second));
      }
    }
  }

  private static void refuseOverlap(PlateRectangle first, PlateRectangle second) {
    if (first.overlaps(second)) {
      throw Given.refusal(
          "built-up section",
          first + " over " + second,
          "made of parts that do not overlap",
          "Steel cannot be counted twice: move or cut one of the two.");
    }
  }

  @Override
  public double areaMm2() {
    double sum = 0;
    for (PlateRectangle part : parts) {
      sum += part.areaMm2();
    }
    return sum;
  }

  /**
   * Height of the centroid in the coordinates of the parts.
   *
   * @return height, mm
   */
  public double centroidYMm() {
    double sum = 0;
    for (PlateRectangle part : parts) {
      sum += part.areaMm2() * part.centreYMm();
    }
    return sum / areaMm2();
  }

  /**
   * Position of the centroid across, in the coordinates of the parts.
   *
   * @return position, mm
   */
  public double centroidXMm() {
    double sum = 0;
    for (PlateRectangle part : parts) {
      sum += part.areaMm2() * part.centreXMm();
    }
    return sum / areaMm2();
  }

  @Override
  public double secondMomentXMm4() {
    double centre = centroidYMm();
    double sum = 0;
    for (PlateRectangle part : parts) {
      double arm = part.centreYMm() - centre;
      sum += part.areaMm2() * (part.heightMm() * part.heightMm() / 12.0 + arm * arm);
    }
    return sum;
  }

  @Override
  public double secondMomentYMm4() {
    double centre = centroidXMm();
    double sum = 0;
    for (PlateRectangle part : parts) {
      double arm = part.centreXMm() - centre;
      sum += part.areaMm2() * (part.widthMm() * part.widthMm() / 12.0 + arm * arm);
    }
    return sum;
  }

  @Override
  public double toTopMm() {
    double top = Double.NEGATIVE_INFINITY;
    for (PlateRectangle part : parts) {
      top = Math.max(top, part.topMm());
    }
    return top - centroidYMm();
  }

  @Override
  public double toBottomMm() {
    double bottom = Double.POSITIVE_INFINITY;
    for (PlateRectangle part : parts) {
      bottom = Math.min(bottom, part.bottomMm());
    }
    return centroidYMm() - bottom;
  }
}
