package trammel.trade.plates;

import trammel.trade.given.Dimension;

/**
 * A gusset in the corner between two members, such as a rail and an outrigger. One leg lies along
 * x, the other at the corner's angle; the tips are cut off square to their legs, and a radius about
 * the corner clears the weld that is already there. Axes: the corner of the two members at the
 * origin.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param legMm length along x
 * @param otherLegMm length along the other member
 * @param cornerRad angle between the two members
 * @param tipMm width left at both tips
 * @param cornerRadiusMm radius cut out about the corner
 */
public record OutriggerGusset(
    String name,
    double thicknessMm,
    double legMm,
    double otherLegMm,
    double cornerRad,
    double tipMm,
    double cornerRadiusMm)
    implements PlateShape {
  private static final Point2 CORNER = new Point2(0.0, 0.0);
  private static final double LEAST_CORNER_RAD = Math.toRadians(30.0);
  private static final double MOST_CORNER_RAD = Math.toRadians(150.0);

  public OutriggerGusset {
    Dimension.text("gusset name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("leg of " + name, legMm);
    Dimension.positiveMm("other leg of " + name, otherLegMm);
    Dimension.angleRad(
        "corner of " + name,
        cornerRad,
        LEAST_CORNER_RAD,
        MOST_CORNER_RAD,
        "A gusset does little in a flatter or sharper corner: brace it another way.");
    double shorterMm = Math.min(legMm, otherLegMm);
    Dimension.positiveMm("corner radius of " + name, cornerRadiusMm);
    Dimension.atMostMm(
        "corner radius of " + name, cornerRadiusMm, shorterMm / 3.0, "Use longer legs.");
    Dimension.atLeastMm(
        "tip of " + name,
        tipMm,
        thicknessMm,
        "Leave at least the plate thickness: a sharp tip burns away when welded.");
    Dimension.atMostMm("tip of " + name, tipMm, shorterMm / 2.0, "Use longer legs.");
    draw(name, legMm, otherLegMm, cornerRad, tipMm, cornerRadiusMm);
  }

  /** Length of the weld line along one face: both legs less the cut-out corner. */
  public double weldLineMm() {
    return legMm + otherLegMm - 2.0 * cornerRadiusMm;
  }

  @Override
  public Outline outline() {
    return draw(name, legMm, otherLegMm, cornerRad, tipMm, cornerRadiusMm);
  }

  private static Outline draw(
      String name, double legMm, double otherMm, double cornerRad, double tipMm, double radiusMm) {
    Point2 legEnd = new Point2(legMm, 0.0);
    Point2 otherEnd = Point2.polar(CORNER, otherMm, cornerRad);
    Point2 legTip = new Point2(legMm, tipMm);
    Point2 otherTip = Point2.polar(otherEnd, tipMm, cornerRad - Math.PI / 2.0);
    Straight free = new Straight(legTip, otherTip);
    double throatMm = free.distanceMm(CORNER) - radiusMm;
    Dimension.atLeastMm(
        "width of " + name + " from its cut-out corner to its free edge",
        throatMm,
        tipMm,
        "Use longer legs or a smaller corner radius.");
    Point2 arcStart = Point2.polar(CORNER, radiusMm, cornerRad);
    Point2 arcEnd = new Point2(radiusMm, 0.0);
    return Outline.solid(
        Path.from(arcEnd)
            .lineTo(legEnd)
            .lineTo(legTip)
            .lineTo(otherTip)
            .lineTo(otherEnd)
            .lineTo(arcStart)
            .arcTo(arcEnd, CORNER, false)
            .close());
  }
}
