package trammel.app.drawings;

import trammel.engine.geometry.Point3;

/** From where the vehicle is looked at; the front is to the left in side view and plan. */
public enum Viewpoint {
  /** From the left, square to the centre plane. */
  SIDE("Side view", "ahead of the axle line", "above ground"),
  /** From above. */
  PLAN("Plan, from above", "ahead of the axle line", "left of the centre line"),
  /** From behind. */
  REAR("Rear view, from behind", "left of the centre line", "above ground");

  private final String title;
  private final String across;
  private final String up;

  Viewpoint(String title, String across, String up) {
    this.title = title;
    this.across = across;
    this.up = up;
  }

  /** Its name on a drawing. */
  public String title() {
    return title;
  }

  /** What the values along the lower edge are measured from. */
  String acrossFrom() {
    return across;
  }

  /** What the values along the right edge are measured from. */
  String upFrom() {
    return up;
  }

  /** How far to the right of the datum a point is drawn (mm of the vehicle). */
  double x(Point3 point) {
    return this == REAR ? -point.yMm() : -point.xMm();
  }

  /** How far above the datum a point is drawn (mm of the vehicle). */
  double y(Point3 point) {
    return this == PLAN ? -point.yMm() : point.zMm();
  }

  /** The value that belongs to a point along the lower edge (mm). */
  double acrossMm(Point3 point) {
    return this == REAR ? point.yMm() : point.xMm();
  }

  /** The value that belongs to a point along the right edge (mm). */
  double upMm(Point3 point) {
    return this == PLAN ? point.yMm() : point.zMm();
  }
}
