package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * How much metal a bolt hole must keep about it.
 *
 * @param edgeFactor least distance from the hole's centre to the plate's edge, in hole diameters
 * @param ligamentFactor least metal between two holes, in diameters of the larger one
 */
public record HoleRules(double edgeFactor, double ligamentFactor) {
  /**
   * Edge 1.5 diameters, metal between holes half a diameter: common practice, no source. Only one
   * hole of an adjustment row carries load at a time.
   */
  public static final HoleRules SHOP = new HoleRules(1.5, 0.5);

  private static final double ROUNDING_MM = 1e-6;

  public HoleRules {
    if (!(edgeFactor > 0.5) || Double.isInfinite(edgeFactor)) {
      throw Dimension.refuse(
          "edge distance in hole diameters",
          Double.toString(edgeFactor),
          "more than 0.5",
          "Give 1.5 unless there is a reason for another.");
    }
    if (!(ligamentFactor > 0.0) || Double.isInfinite(ligamentFactor)) {
      throw Dimension.refuse(
          "metal between holes in hole diameters",
          Double.toString(ligamentFactor),
          "more than 0",
          "Give 0.5 unless there is a reason for another.");
    }
  }

  /**
   * Returns the outline when all its round holes and slots keep the rules.
   *
   * @throws IllegalArgumentException naming the hole, what it has, what it needs, what to change
   */
  public Outline check(String name, Outline outline) {
    for (int i = 0; i < outline.holes().size(); i++) {
      Hole hole = outline.holes().get(i);
      double widthMm = widthMm(hole);
      requireEdge(name, outline, hole, widthMm, i);
      for (int j = 0; j < i; j++) {
        requireLigament(name, outline.holes().get(j), hole, j, i);
      }
    }
    return outline;
  }

  private void requireEdge(String name, Outline outline, Hole hole, double widthMm, int index) {
    double edgeMm = outline.outer().distanceMm(hole.loop()) + widthMm / 2.0;
    double needMm = edgeFactor * widthMm;
    if (edgeMm < needMm - ROUNDING_MM) {
      throw Dimension.refuse(
          "distance from the centre of hole " + (index + 1) + " to the edge of " + name,
          Dimension.lengthText(edgeMm),
          Dimension.lengthText(needMm) + " or more",
          "Make the plate larger about the hole by "
              + Dimension.lengthText(needMm - edgeMm)
              + ", or the hole smaller.");
    }
  }

  private void requireLigament(String name, Hole one, Hole other, int oneIndex, int otherIndex) {
    double gapMm = one.loop().distanceMm(other.loop());
    double needMm = ligamentFactor * Math.max(widthMm(one), widthMm(other));
    if (gapMm < needMm - ROUNDING_MM) {
      throw Dimension.refuse(
          "metal between holes " + (oneIndex + 1) + " and " + (otherIndex + 1) + " of " + name,
          Dimension.lengthText(gapMm),
          Dimension.lengthText(needMm) + " or more",
          "Make the pitch larger by " + Dimension.lengthText(needMm - gapMm) + ".");
    }
  }

  /** A window carries no bolt, so it asks for no metal of its own. */
  private static double widthMm(Hole hole) {
    if (hole instanceof RoundHole round) {
      return round.diameterMm();
    }
    return hole instanceof SlotHole slot ? slot.widthMm() : 0.0;
  }
}
