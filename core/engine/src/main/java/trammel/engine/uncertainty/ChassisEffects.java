package trammel.engine.uncertainty;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.Rails;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Effects of measurements of the vehicle. The mounting points stay where they were designed; what
 * stands round them does not. Lengths in mm, angles in rad, masses in kg.
 */
public final class ChassisEffects {
  private ChassisEffects() {}

  /** The left wheelbase is longer. */
  public static Effect leftWheelbase() {
    return onChassis(
        (chassis, mm) ->
            chassis.withWheelbases(chassis.wheelbaseLeftMm() + mm, chassis.wheelbaseRightMm()));
  }

  /** The right wheelbase is longer. */
  public static Effect rightWheelbase() {
    return onChassis(
        (chassis, mm) ->
            chassis.withWheelbases(chassis.wheelbaseLeftMm(), chassis.wheelbaseRightMm() + mm));
  }

  /** Both front wheels together are heavier. */
  public static Effect frontAxleMass() {
    return onMasses((m, kg) -> masses(m, kg, 0, 0, 0, 0));
  }

  /** The left rear wheel is heavier. */
  public static Effect leftRearMass() {
    return onMasses((m, kg) -> masses(m, 0, kg, 0, 0, 0));
  }

  /** The right rear wheel is heavier. */
  public static Effect rightRearMass() {
    return onMasses((m, kg) -> masses(m, 0, 0, kg, 0, 0));
  }

  /** The axle with its wheels and brakes is heavier. */
  public static Effect rearUnsprungMass() {
    return onMasses((m, kg) -> masses(m, 0, 0, 0, kg, 0));
  }

  /** The centre of gravity is higher. */
  public static Effect centreOfGravityHeight() {
    return onMasses((m, mm) -> masses(m, 0, 0, 0, 0, mm));
  }

  /** The rails' underside over the axle is higher at ride. */
  public static Effect railHeightAtAxle() {
    return onRails((rails, mm) -> rails(rails, 0, 0, mm, 0));
  }

  /** The rails' underside at the front mounts is higher at ride. */
  public static Effect railHeightAtFront() {
    return onRails((rails, mm) -> rails(rails, 0, 0, 0, mm));
  }

  /** The width over both rails at the axle is greater. */
  public static Effect railWidthAtAxle() {
    return onRails((rails, mm) -> rails(rails, mm, 0, 0, 0));
  }

  /** The width over both rails at the front mounts is greater. */
  public static Effect railWidthAtFront() {
    return onRails((rails, mm) -> rails(rails, 0, mm, 0, 0));
  }

  /** What stands under the vehicle is higher at ride. */
  public static Effect obstacleHeight() {
    return onChassis(ChassisEffects::withObstaclesHigher);
  }

  private static Chassis withObstaclesHigher(Chassis chassis, double mm) {
    Placement raised = new AxlePose(mm, 0, 0, 0, 0, 0, 0).placement();
    List<Obstacle> obstacles = new ArrayList<>(chassis.obstacles().size());
    for (Obstacle obstacle : chassis.obstacles()) {
      obstacles.add(new Obstacle(obstacle.name(), obstacle.kind(), obstacle.shape().moved(raised)));
    }
    return chassis.withObstacles(obstacles);
  }

  /** The transmission's joint lies elsewhere; the direction's length counts as one unit. */
  public static Effect transmissionJoint(Vector3 direction) {
    return onDriveline(
        (d, mm) ->
            new Driveline(
                d.pinionJoint(),
                d.pinionAxis(),
                d.transmissionJoint().plus(direction.scaled(mm)),
                d.transmissionAxis(),
                d.shaftDiameterMm(),
                d.shaftWallMm(),
                d.slipEngagementMm(),
                d.slipRoomMm()));
  }

  /** The pinion's joint lies elsewhere; the direction's length counts as one unit. */
  public static Effect pinionJoint(Vector3 direction) {
    return onDriveline(
        (d, mm) ->
            new Driveline(
                d.pinionJoint().plus(direction.scaled(mm)),
                d.pinionAxis(),
                d.transmissionJoint(),
                d.transmissionAxis(),
                d.shaftDiameterMm(),
                d.shaftWallMm(),
                d.slipEngagementMm(),
                d.slipRoomMm()));
  }

  /** The transmission's output rises more to the front. */
  public static Effect transmissionAngle() {
    return onDriveline(Driveline::withTransmissionTilted);
  }

  /** The pinion is set with its nose higher. */
  public static Effect pinionAngle() {
    return onChassis(
        (chassis, rad) ->
            chassis.withDriveline(chassis.driveline().withPinionTurned(chassis.axleCentre(), rad)));
  }

  /** There is more room in front of the slip yoke; none where it is not measured. */
  public static Effect slipRoom() {
    return onDriveline(SlipChange::room);
  }

  /** More of the spline is engaged; none where it is not measured. */
  public static Effect slipEngagement() {
    return onDriveline(SlipChange::engagement);
  }

  private interface Change<T> {
    T apply(T before, double amount);
  }

  private static Effect onChassis(Change<Chassis> change) {
    return (layout, amount) -> layout.withChassis(change.apply(layout.chassis(), amount));
  }

  private static Effect onMasses(Change<Masses> change) {
    return onChassis((c, amount) -> c.withMasses(change.apply(c.masses(), amount)));
  }

  private static Effect onRails(Change<Rails> change) {
    return onChassis((c, amount) -> c.withRails(change.apply(c.rails(), amount)));
  }

  private static Effect onDriveline(Change<Driveline> change) {
    return onChassis((c, amount) -> c.withDriveline(change.apply(c.driveline(), amount)));
  }

  private static Masses masses(
      Masses m, double frontKg, double leftKg, double rightKg, double unsprungKg, double heightMm) {
    return new Masses(
        m.frontAxleKg() + frontKg,
        m.rearLeftKg() + leftKg,
        m.rearRightKg() + rightKg,
        m.rearUnsprungKg() + unsprungKg,
        m.centreOfGravityHeightMm() + heightMm,
        m.frontRollNmmPerRad(),
        m.frontWheelNPerMm(),
        m.payload());
  }

  private static Rails rails(
      Rails rails, double axleWiderMm, double frontWiderMm, double axleUpMm, double frontUpMm) {
    return new Rails(
        rails.boxed(),
        rails.outsideAtAxleMm() + axleWiderMm,
        rails.outsideAtFrontMm() + frontWiderMm,
        rails.undersideAtAxleMm() + axleUpMm,
        rails.undersideAtFrontMm() + frontUpMm,
        rails.frontMountsForwardMm(),
        rails.depthMm(),
        rails.flangeMm(),
        rails.wallMm(),
        rails.notchDepthMm(),
        rails.notchCapMm(),
        rails.notchSidePlateMm(),
        rails.notchRadiusMm(),
        rails.notchRiseMm());
  }
}
