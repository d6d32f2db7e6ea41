package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * How the frame sits on the stands while it is measured, against how it is to sit on the road. The
 * vehicle is drawn as it is at ride, and measured as it sits here: the frame is turned in side view
 * about the axle mark on the rail's underside and raised.
 *
 * @param undersideOnStandsIn rail's underside at the axle mark above the floor, inches
 * @param undersideAtRideIn the same above the ground at ride, inches
 * @param rakeOnStandsDeg slope of the rail, rear higher, degrees
 * @param rakeAtRideDeg the same at ride, degrees
 */
record Stands(
    double undersideOnStandsIn,
    double undersideAtRideIn,
    double rakeOnStandsDeg,
    double rakeAtRideDeg) {

  static Stands draw(Draw draw, double undersideAtRideIn) {
    double rakeAtRideDeg = Range.stepped(Range.of(-0.3, 1.5).draw(draw), 0.1);
    return new Stands(
        undersideAtRideIn + Range.of(2, 9).onTheTape(draw),
        undersideAtRideIn,
        Range.stepped(rakeAtRideDeg + Range.of(-0.7, 0.7).draw(draw), 0.1),
        rakeAtRideDeg);
  }

  /** How far the nose is higher on the stands than at ride. */
  double noseUpDeg() {
    return rakeAtRideDeg - rakeOnStandsDeg;
  }

  /** Where a point of the frame is met on the stands, forward of the axle mark. */
  double forwardIn(double forwardAtRideIn, double upAtRideIn) {
    double turn = Math.toRadians(noseUpDeg());
    return forwardAtRideIn * Math.cos(turn) - (upAtRideIn - undersideAtRideIn) * Math.sin(turn);
  }

  /** Where a point of the frame is met on the stands, up from the floor. */
  double upIn(double forwardAtRideIn, double upAtRideIn) {
    double turn = Math.toRadians(noseUpDeg());
    return undersideOnStandsIn
        + forwardAtRideIn * Math.sin(turn)
        + (upAtRideIn - undersideAtRideIn) * Math.cos(turn);
  }

  /** What an angle finder reads on the stands for an elevation at ride. */
  double readDeg(double atRideDeg) {
    return atRideDeg + noseUpDeg();
  }
}
