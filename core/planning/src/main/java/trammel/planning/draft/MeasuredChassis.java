package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Shape;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.Payload;
import trammel.engine.layout.Rails;
import trammel.engine.layout.StandDatum;
import trammel.engine.layout.Traction;
import trammel.engine.layout.Travel;
import trammel.engine.layout.Tyre;
import trammel.planning.job.CarriedLoad;
import trammel.planning.job.Chosen;
import trammel.planning.job.Driveshaft;
import trammel.planning.job.EngineDrive;
import trammel.planning.job.Hitch;
import trammel.planning.job.Job;
import trammel.planning.job.Measured;
import trammel.planning.job.ObstacleShape;
import trammel.planning.job.RailShape;
import trammel.planning.job.Weights;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.Span;

/** Turns a job's measurements, taken on the stands, into the chassis at ride height. */
final class MeasuredChassis {
  private final Measured measured;
  private final Chosen chosen;
  private final StandDatum datum;

  MeasuredChassis(Job job) {
    measured = job.measured();
    chosen = job.chosen();
    datum =
        new StandDatum(
            measured.rake().onStands().meanRad(),
            measured.rake().atRideRad(),
            measured.rails().undersideAtAxle().meanMm(),
            chosen.ride().railUndersideAtAxleMm());
  }

  Chassis chassis() {
    return new Chassis(
        chosen.wheelbaseMm().orElse(measured.wheelbase().left().meanMm()),
        chosen.wheelbaseMm().orElse(measured.wheelbase().right().meanMm()),
        masses(),
        traction(),
        tyre(),
        axle(),
        rails(),
        driveline(),
        obstacles(),
        new Travel(chosen.ride().bumpMm(), chosen.ride().droopMm()));
  }

  private Masses masses() {
    Weights weights = measured.weights();
    return new Masses(
        weights.frontKg(),
        weights.rearLeft().meanKg(),
        weights.rearRight().meanKg(),
        weights.unsprungRearKg(),
        weights.centreOfGravityHeightMm(),
        weights.frontRollNmmPerDegree().isPresent()
            ? OptionalDouble.of(weights.frontRollNmmPerDegree().get() * 180 / Math.PI)
            : OptionalDouble.empty(),
        weights.frontWheelNPerMm().isPresent()
            ? OptionalDouble.of(weights.frontWheelNPerMm().get())
            : OptionalDouble.empty(),
        payload());
  }

  private Payload payload() {
    Payload payload = Payload.NONE;
    for (CarriedLoad load : measured.loads()) {
      payload =
          payload.plus(Payload.at(load.massKg(), load.aheadMm(), measured.wheelbase().meanMm()));
    }
    Optional<Hitch> hitch = measured.hitch();
    if (hitch.isPresent()) {
      payload =
          payload.plus(
              Payload.at(
                  hitch.get().tongueKg(), -hitch.get().behindMm(), measured.wheelbase().meanMm()));
    }
    return payload;
  }

  private Traction traction() {
    OptionalDouble grip =
        measured.tyreGrip().isPresent()
            ? OptionalDouble.of(measured.tyreGrip().get())
            : OptionalDouble.empty();
    if (measured.engine().isEmpty()) {
      OptionalDouble unknown = OptionalDouble.empty();
      return new Traction(unknown, unknown, unknown, grip, measured.frontBrakeShare());
    }
    EngineDrive engine = measured.engine().get();
    return new Traction(
        OptionalDouble.of(engine.torqueNmm()),
        OptionalDouble.of(engine.firstGear()),
        engine.stallRatio(),
        engine.lowRange(),
        OptionalDouble.of(engine.finalDrive()),
        grip,
        measured.frontBrakeShare());
  }

  private Tyre tyre() {
    return new Tyre(
        measured.tyre().diameterMm() / 2,
        measured.tyre().loadedRadius().meanMm(),
        measured.tyre().widthMm());
  }

  private AxleHousing axle() {
    trammel.planning.job.Axle axle = measured.axle();
    double flangeToFlangeMm = axle.flangeToFlange().meanMm();
    return new AxleHousing(
        axle.tubeDiameterMm(),
        axle.tubeWallMm(),
        flangeToFlangeMm,
        axle.innerLimit().meanMm(),
        axle.outerLimit().meanMm(),
        flangeToFlangeMm - 2 * measured.tyre().wheelOffsetMm(),
        axle.housingRadius().isPresent()
            ? OptionalDouble.of(axle.housingRadius().get().meanMm())
            : OptionalDouble.empty());
  }

  private Rails rails() {
    trammel.planning.job.Rails rails = measured.rails();
    Point3 front =
        datum.toRide(
            new Point3(
                rails.frontMountsForward().meanMm(), 0, rails.undersideAtFrontMounts().meanMm()));
    return new Rails(
        rails.shape() == RailShape.BOX,
        rails.outsideAtAxle().meanMm(),
        rails.outsideAtFrontMounts().meanMm(),
        chosen.ride().railUndersideAtAxleMm(),
        front.zMm(),
        front.xMm(),
        rails.depth().meanMm(),
        rails.flange().meanMm(),
        rails.wallMm(),
        0);
  }

  private Driveline driveline() {
    double transmissionRad = datum.toRideRad(fromLevelOnStands(measured.transmission().angle()));
    double readRad = fromLevelOnStands(measured.axle().pinionAngle());
    Position pinion = measured.axle().pinion().mean();
    Point3 axleCentre = new Point3(0, 0, measured.tyre().loadedRadius().meanMm());
    Point3 asRead =
        axleCentre.plus(new Vector3(pinion.forwardMm(), pinion.leftMm(), pinion.upMm()));
    Optional<Driveshaft> shaft = measured.driveshaft();
    Optional<FrontShaft> front = frontShaft();
    Point3 joint = datum.toRide(point(measured.transmission().joint().mean()));
    if (front.isPresent()) {
      // Of two pieces the rear one is judged between the centre bearing's joint and the pinion.
      transmissionRad = front.get().axis().sideViewRad();
      joint = front.get().centreJoint();
    }
    Driveline attitudeAsRead =
        new Driveline(
            asRead,
            inSideView(readRad),
            joint,
            front.isPresent() ? front.get().axis() : inSideView(transmissionRad),
            shaft.isPresent()
                ? OptionalDouble.of(shaft.get().tubeDiameterMm())
                : OptionalDouble.empty(),
            shaft.isPresent()
                ? OptionalDouble.of(shaft.get().tubeWallMm())
                : OptionalDouble.empty(),
            shaft.isPresent()
                ? OptionalDouble.of(shaft.get().slipEngagementMm())
                : OptionalDouble.empty(),
            shaft.isPresent()
                ? OptionalDouble.of(shaft.get().slipRoomMm())
                : OptionalDouble.empty());
    double shimmedRad = chosen.transmissionAngleRad().orElse(transmissionRad);
    double wantedRad = chosen.pinionAngleRad().orElse(shimmedRad);
    return attitudeAsRead
        .withTransmissionTilted(shimmedRad - transmissionRad)
        .withPinionTurned(axleCentre, wantedRad - readRad)
        .withShaftLengthened(chosen.shaftLongerMm());
  }

  /** The front piece of a shaft of two; empty for a shaft of one. */
  Optional<FrontShaft> frontShaft() {
    Optional<MeasuredPosition> centre = measured.driveshaft().flatMap(Driveshaft::centreJoint);
    if (centre.isEmpty()) {
      return Optional.empty();
    }
    double outputRad = datum.toRideRad(fromLevelOnStands(measured.transmission().angle()));
    return Optional.of(
        new FrontShaft(
            datum.toRide(point(measured.transmission().joint().mean())),
            inSideView(outputRad),
            datum.toRide(point(centre.get().mean()))));
  }

  /** Where a hose is held on the frame, at ride. */
  Point3 atRide(Position onFrame) {
    return datum.toRide(point(onFrame));
  }

  private double fromLevelOnStands(MeasuredAngle angle) {
    return angle.from() == Datum.FRAME ? datum.fromFrameRad(angle.meanRad()) : angle.meanRad();
  }

  private List<Obstacle> obstacles() {
    List<Obstacle> obstacles = new ArrayList<>(measured.obstacles().size());
    for (trammel.planning.job.Obstacle obstacle : measured.obstacles()) {
      if (!chosen.movedAway().contains(obstacle.name())) {
        obstacles.add(new Obstacle(obstacle.name(), kind(obstacle), shape(obstacle.shape())));
      }
    }
    return obstacles;
  }

  private static ObstacleKind kind(trammel.planning.job.Obstacle obstacle) {
    return switch (obstacle.kind()) {
      case TANK -> ObstacleKind.TANK;
      case FUEL_LINE -> ObstacleKind.FUEL_LINE;
      case EXHAUST -> ObstacleKind.EXHAUST;
      case RUNNING_BOARD_SUPPORT -> ObstacleKind.RUNNING_BOARD_SUPPORT;
      case BED_FLOOR -> ObstacleKind.BED_FLOOR;
      case OTHER -> ObstacleKind.OTHER;
    };
  }

  private Shape shape(ObstacleShape shape) {
    if (shape instanceof ObstacleShape.Cylinder cylinder) {
      return new Cylinder(
          datum.toRide(point(cylinder.from())),
          datum.toRide(point(cylinder.to())),
          cylinder.diameterMm() / 2);
    }
    ObstacleShape.Box box = (ObstacleShape.Box) shape;
    Point3 centre = new Point3(middle(box.forward()), middle(box.left()), middle(box.up()));
    Vector3 lengthwise = inSideView(-datum.noseDownRad());
    Vector3 crosswise = new Vector3(0, 1, 0);
    return new Box(
        datum.toRide(centre),
        half(box.forward()),
        half(box.left()),
        half(box.up()),
        lengthwise,
        crosswise,
        lengthwise.cross(crosswise));
  }

  private static double middle(Span span) {
    return (span.fromMm() + span.toMm()) / 2;
  }

  private static double half(Span span) {
    return Math.abs(span.toMm() - span.fromMm()) / 2;
  }

  private static Point3 point(Position position) {
    return new Point3(position.forwardMm(), position.leftMm(), position.upMm());
  }

  /** Forward direction with a side-view elevation. */
  private static Vector3 inSideView(double elevationRad) {
    return new Vector3(Math.cos(elevationRad), 0, Math.sin(elevationRad));
  }
}
