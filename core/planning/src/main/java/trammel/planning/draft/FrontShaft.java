package trammel.planning.draft;

import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * The front piece of a driveshaft of two, which stands still between transmission and centre
 * bearing.
 *
 * @param transmissionJoint its front joint at ride (mm)
 * @param outputAxis direction of the transmission's output, forward
 * @param centreJoint the joint behind the centre bearing (mm)
 */
record FrontShaft(Point3 transmissionJoint, Vector3 outputAxis, Point3 centreJoint) {
  /** What a check of it reads where there is none. */
  static final Reading OF_ONE_PIECE = new Reading.NotApplicable("the driveshaft is of one piece");

  FrontShaft {
    if (!(transmissionJoint.xMm() > centreJoint.xMm())) {
      throw new IllegalArgumentException(
          "the driveshaft's centre joint is "
              + centreJoint.xMm()
              + " mm ahead of the axle and the transmission's "
              + transmissionJoint.xMm()
              + " mm; the centre joint must lie between transmission and pinion. Measure it again.");
    }
  }

  /** Direction of the piece, forward. */
  Vector3 axis() {
    return centreJoint.to(transmissionJoint).normalized();
  }

  /** Working angle of the front joint, which no other evens out (rad). */
  double angleRad() {
    return axis().angleToLineRad(outputAxis);
  }

  /** From joint to joint (mm). */
  double lengthMm() {
    return centreJoint.distanceMm(transmissionJoint);
  }
}
