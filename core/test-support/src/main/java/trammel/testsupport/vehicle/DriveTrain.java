package trammel.testsupport.vehicle;

import trammel.testsupport.Draw;

/**
 * Transmission at ride, shaft and engine.
 *
 * @param jointForwardIn front universal joint ahead of the axle, inches
 * @param jointLeftIn the same to the left, inches
 * @param jointUpIn the same above the ground at ride, inches
 * @param angleDeg elevation of the output axis looking forward, at ride, degrees
 * @param shaftDiameterIn outside diameter of the shaft's tube, inches; 0 without a shaft
 * @param shaftWallIn its wall, inches
 * @param slipEngagementIn spline engaged, inches
 * @param slipRoomIn how far the yoke can still move in, inches
 * @param torqueLbFt greatest engine torque, lb-ft; 0 if it is not known
 * @param firstGear ratio of the lowest gear
 * @param finalDrive ratio of the axle
 * @param tyreGrip greatest friction of the tyres; 0 if it is left to the engine's torque
 */
record DriveTrain(
    double jointForwardIn,
    double jointLeftIn,
    double jointUpIn,
    double angleDeg,
    double shaftDiameterIn,
    double shaftWallIn,
    double slipEngagementIn,
    double slipRoomIn,
    double torqueLbFt,
    double firstGear,
    double finalDrive,
    double tyreGrip) {

  static DriveTrain draw(Draw draw, double wheelbaseIn, double axleHeightIn) {
    boolean hasShaft = draw.withChance(0.85);
    boolean knowsTorque = draw.withChance(0.85);
    boolean knowsGrip = !knowsTorque || draw.withChance(0.85);
    return new DriveTrain(
        Range.onTheTape(wheelbaseIn * Range.of(0.44, 0.54).draw(draw)),
        draw.withChance(0.7) ? 0 : Range.of(-1, 1).onTheTape(draw),
        axleHeightIn + Range.of(0.5, 4).onTheTape(draw),
        Range.stepped(Range.of(1, 4).draw(draw), 0.1),
        hasShaft ? draw.oneOf(2.5, 3.0, 3.0, 3.5) : 0,
        draw.oneOf(0.065, 0.083, 0.083, 0.095),
        Range.of(2.5, 4.5).onTheTape(draw),
        Range.of(0.75, 2).onTheTape(draw),
        knowsTorque ? Range.stepped(Range.of(150, 420).draw(draw), 5) : 0,
        Range.stepped(Range.of(2.4, 3.8).draw(draw), 0.01),
        Range.stepped(Range.of(3, 4.3).draw(draw), 0.01),
        knowsGrip ? Range.stepped(Range.of(0.8, 1).draw(draw), 0.05) : 0);
  }
}
