package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/**
 * A vehicle as it was really tacked, measured as the floor measures it: points in space, the axle
 * moved and turned as a whole by exact rotations, distances between points. It shares nothing with
 * the model by which the readings are judged.
 */
final class TackedVehicle {
  private final Layout plan;
  private final Chassis chassis;
  private final Vector3 along;
  private final Vector3 square;
  private final Map<Mount, Vector3> moved = new HashMap<>();
  private Vector3 axleMoved = new Vector3(0, 0, 0);
  private double yawRad;
  private double rollRad;
  private double noseUpRad;

  TackedVehicle(Layout plan) {
    this.plan = plan;
    chassis = plan.chassis();
    double runMm = chassis.rails().frontMountsForwardMm();
    double riseMm = chassis.rails().undersideMm(runMm) - chassis.rails().undersideMm(0);
    along = new Vector3(runMm, 0, riseMm).normalized();
    square = new Vector3(-along.z(), 0, along.x());
  }

  /** Moves a bracket, and swings its joint about the bracket's base by a turn about an axis. */
  Vector3 misTack(Mount mount, Vector3 shift, Vector3 base, Vector3 axis, double turnRad) {
    Vector3 arm = base.scaled(-1);
    Vector3 swing = turned(arm, axis.normalized(), turnRad).minus(arm);
    Vector3 off = shift.plus(swing);
    moved.put(mount, off);
    return off;
  }

  void seat(Vector3 shift, double yaw, double roll, double noseUp) {
    axleMoved = shift;
    yawRad = yaw;
    rollRad = roll;
    noseUpRad = noseUp;
  }

  /** Rotation by Rodrigues' formula. */
  private static Vector3 turned(Vector3 vector, Vector3 axis, double angleRad) {
    return vector
        .scaled(Math.cos(angleRad))
        .plus(axis.cross(vector).scaled(Math.sin(angleRad)))
        .plus(axis.scaled(axis.dot(vector) * (1 - Math.cos(angleRad))));
  }

  private Vector3 onAxle(Vector3 fromCentre) {
    Vector3 yawed = turned(fromCentre, square, yawRad);
    Vector3 rolled = turned(yawed, along, rollRad);
    // Nose up turns the front up: about the axis that points to the right.
    return turned(rolled, new Vector3(0, -1, 0), noseUpRad);
  }

  private Point3 point(Mount mount) {
    Point3 planned = mount.point(plan);
    Vector3 off = moved.getOrDefault(mount, new Vector3(0, 0, 0));
    if (mount.end() == End.FRAME) {
      return planned.plus(off);
    }
    Vector3 fromCentre = chassis.axleCentre().to(planned).plus(off);
    return chassis.axleCentre().plus(axleMoved).plus(onAxle(fromCentre));
  }

  /** What a target reads without any noise. */
  double reads(String id) {
    if (id.startsWith("diagonal.")) {
      boolean fromLeft = id.endsWith("left-to-right");
      String from = fromLeft ? "lower-left" : "lower-right";
      String to = fromLeft ? "lower-right" : "lower-left";
      return point(new Mount(from, End.FRAME)).distanceMm(point(new Mount(to, End.AXLE)));
    }
    if (id.endsWith(".length")) {
      String part = id.substring(0, id.length() - ".length".length());
      return point(new Mount(part, End.FRAME)).distanceMm(point(new Mount(part, End.AXLE)));
    }
    if (id.startsWith("wheelbase.") || id.startsWith("axle.") || id.equals("pinion.angle")) {
      return axle(id);
    }
    return place(id);
  }

  /** A bracket on the axle is measured in the axle's own axes, wherever the axle sits. */
  private double place(String id) {
    String key = id.substring(0, id.lastIndexOf('.'));
    String axis = id.substring(id.lastIndexOf('.') + 1);
    boolean frame = key.endsWith(".frame");
    String part = key.substring(0, key.lastIndexOf('.'));
    Mount mount = new Mount(part, frame ? End.FRAME : End.AXLE);
    Point3 datum = frame ? new Point3(0, 0, chassis.rails().undersideMm(0)) : chassis.axleCentre();
    Vector3 off = moved.getOrDefault(mount, new Vector3(0, 0, 0));
    Vector3 from = datum.to(mount.point(plan)).plus(off);
    return switch (axis) {
      case "forward" -> from.dot(along);
      case "left" -> from.y();
      default -> from.dot(square);
    };
  }

  private double axle(String id) {
    double halfMm = chassis.axle().trackMm() / 2;
    double side = id.endsWith("left") ? 1 : -1;
    if (id.startsWith("wheelbase.")) {
      Vector3 wheel = axleMoved.plus(onAxle(new Vector3(0, side * halfMm, 0)));
      return chassis.wheelbaseMm() - wheel.dot(along);
    }
    if (id.startsWith("axle.drop.")) {
      // Where the axle's line passes under the rail.
      double railMm = side * chassis.rails().outerFaceMm(0);
      Vector3 line = onAxle(new Vector3(0, 1, 0));
      Vector3 at = axleMoved.plus(line.scaled((railMm - axleMoved.y()) / line.y()));
      Point3 datum = new Point3(0, 0, chassis.rails().undersideMm(0));
      return -datum.to(chassis.axleCentre().plus(at)).dot(square);
    }
    if (id.startsWith("axle.overhang.")) {
      double flangeMm = chassis.axle().flangeToFlangeMm() / 2;
      Vector3 flange = axleMoved.plus(onAxle(new Vector3(0, side * flangeMm, 0)));
      return side * flange.y() - chassis.rails().outerFaceMm(0);
    }
    return onAxle(
            new Vector3(
                Math.cos(chassis.driveline().pinionAngleRad()),
                0,
                Math.sin(chassis.driveline().pinionAngleRad())))
        .elevationRad();
  }

  /** Every target of a sheet read twice, each time off by up to what its instrument allows. */
  List<TackReading> readings(FitUpSheet sheet, Random random) {
    List<TackReading> readings = new ArrayList<>();
    for (Target target : sheet.targets()) {
      double value = reads(target.id());
      List<Double> twice = new ArrayList<>(2);
      for (int i = 0; i < 2; i++) {
        twice.add(value + target.instrument() * (2 * random.nextDouble() - 1));
      }
      readings.add(new TackReading(target.id(), twice));
    }
    return readings;
  }
}
