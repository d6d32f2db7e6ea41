package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * What the scales say, in pounds, and the height of the centre of gravity.
 *
 * @param frontLeftLb left front wheel
 * @param frontRightLb right front wheel
 * @param rearLeftLb left rear wheel
 * @param rearRightLb right rear wheel
 * @param unsprungRearLb axle, wheels, brakes and half of what joins them to the body: a part of
 *     what the rear wheels carry
 * @param centreOfGravityIn height at ride, inches
 */
record CornerWeights(
    double frontLeftLb,
    double frontRightLb,
    double rearLeftLb,
    double rearRightLb,
    double unsprungRearLb,
    double centreOfGravityIn) {
  /** The two sides of a vehicle seldom weigh the same. */
  private static final Range LEFT_SHARE = Range.of(0.49, 0.51);

  private static final Range UNSPRUNG_SHARE = Range.of(0.17, 0.24);
  private static final double LIGHTEST_AXLE_LB = 260;
  private static final double SCALE_STEP_LB = 5;

  static CornerWeights draw(Draw draw, VehicleKind.Body body) {
    double weightLb = body.weightLb().draw(draw);
    double rearLb = weightLb * body.rearShare().draw(draw);
    double frontLeft = LEFT_SHARE.draw(draw);
    double rearLeft = LEFT_SHARE.draw(draw);
    return new CornerWeights(
        scale((weightLb - rearLb) * frontLeft),
        scale((weightLb - rearLb) * (1 - frontLeft)),
        scale(rearLb * rearLeft),
        scale(rearLb * (1 - rearLeft)),
        scale(Math.max(LIGHTEST_AXLE_LB, rearLb * UNSPRUNG_SHARE.draw(draw))),
        body.centreOfGravityIn().onTheTape(draw));
  }

  private static double scale(double lb) {
    return Range.stepped(lb, SCALE_STEP_LB);
  }
}
