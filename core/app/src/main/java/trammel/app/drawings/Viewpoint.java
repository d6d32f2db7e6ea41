package trammel.app.drawings;

import trammel.assembly.view.Eye;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** From where the vehicle is looked at; the front is to the left in side view and plan. */
public enum Viewpoint {
  /** From the left, square to the centre plane. */
  SIDE(
      "Side view",
      "ahead of the axle line",
      "above ground",
      new Vector3(-1, 0, 0),
      new Vector3(0, 0, 1)),
  /** From above. */
  PLAN(
      "Plan, from above",
      "ahead of the axle line",
      "left of the centre line",
      new Vector3(-1, 0, 0),
      new Vector3(0, -1, 0)),
  /** From behind. */
  REAR(
      "Rear view, from behind",
      "left of the centre line",
      "above ground",
      new Vector3(0, -1, 0),
      new Vector3(0, 0, 1));

  private final String title;
  private final String across;
  private final String up;
  private final Eye eye;

  Viewpoint(String title, String across, String up, Vector3 toTheRight, Vector3 upwards) {
    this.title = title;
    this.across = across;
    this.up = up;
    this.eye = new Eye(toTheRight, upwards);
  }

  /** The eye that sees it so. */
  Eye eye() {
    return eye;
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
    return eye.see(point).xMm();
  }

  /** How far above the datum a point is drawn (mm of the vehicle). */
  double y(Point3 point) {
    return eye.see(point).yMm();
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
