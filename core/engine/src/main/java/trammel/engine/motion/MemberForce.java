package trammel.engine.motion;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Force along a link or spring.
 *
 * @param name name of the link or spring
 * @param tensionN pull positive, push negative (N)
 * @param axlePivot where it holds the axle, as the axle stands (mm)
 * @param axleToFrame unit vector from the axle pivot to the frame pivot
 */
public record MemberForce(String name, double tensionN, Point3 axlePivot, Vector3 axleToFrame) {

  /** Force on the axle (N); the frame feels the opposite. */
  public Vector3 onAxleN() {
    return axleToFrame.scaled(tensionN);
  }
}
