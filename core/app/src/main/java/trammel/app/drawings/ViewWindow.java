package trammel.app.drawings;

import trammel.engine.geometry.Point3;

/**
 * A part of a view and where it lies on the paper.
 *
 * @param viewpoint from where it is seen
 * @param left its left edge in the view (mm of the vehicle, right of the datum)
 * @param right its right edge
 * @param bottom its lower edge (mm of the vehicle, above the datum)
 * @param top its upper edge
 * @param scale millimetres of the paper to one of the vehicle
 * @param paperX where its left edge lies on the paper (mm)
 * @param paperY where its upper edge lies on the paper (mm)
 */
record ViewWindow(
    Viewpoint viewpoint,
    double left,
    double right,
    double bottom,
    double top,
    double scale,
    double paperX,
    double paperY) {

  /** Its width on the paper (mm). */
  double widthMm() {
    return (right - left) * scale;
  }

  /** Its height on the paper (mm). */
  double heightMm() {
    return (top - bottom) * scale;
  }

  /** True for a place of the view that lies in it. */
  boolean holds(double viewX, double viewY) {
    return viewX >= left && viewX <= right && viewY >= bottom && viewY <= top;
  }

  /** Where a point lies across the paper (mm). */
  double x(Point3 point) {
    return acrossPaper(viewpoint.x(point));
  }

  /** Where a point lies down the paper (mm). */
  double y(Point3 point) {
    return downPaper(viewpoint.y(point));
  }

  /** Where a place of the view lies across the paper (mm). */
  double acrossPaper(double viewX) {
    return paperX + (viewX - left) * scale;
  }

  /** Where a height in the view lies down the paper (mm). */
  double downPaper(double viewY) {
    return paperY + (top - viewY) * scale;
  }
}
