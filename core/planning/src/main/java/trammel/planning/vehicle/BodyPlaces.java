package trammel.planning.vehicle;

import java.util.LinkedHashMap;
import java.util.Map;
import trammel.assembly.Assembly;
import trammel.assembly.Place;
import trammel.assembly.Pose;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Where the bodies of the assembly that keep their length have gone at a pose of the axle: the axle
 * and further bodies as the engine has them, bars and the propeller shaft from joint to joint.
 * Springs and shocks, which change their length, are not among them.
 */
public final class BodyPlaces {
  private static final double ALONG = 1e-9;

  private BodyPlaces() {}

  /** The motion of every body that keeps its length, by its name. */
  public static Pose of(Layout layout, AxlePose pose) {
    Placement axle = pose.placement();
    Map<String, Place> moved = new LinkedHashMap<>();
    moved.put(Assembly.AXLE, rigid(axle));
    for (FurtherBody body : layout.guide().bodies()) {
      moved.put(body.name(), rigid(axle.of(body.name())));
    }
    for (Bar bar : layout.bars()) {
      Point3 frame = axle.of(bar.frameEnd().body()).move(bar.frame());
      Point3 end = axle.of(bar.axleEnd().body()).move(bar.axle());
      moved.put(bar.name(), between(bar.frame(), bar.axle(), frame, end));
    }
    Point3 front = layout.chassis().driveline().transmissionJoint();
    Point3 rear = layout.chassis().driveline().pinionJoint();
    moved.put(VehicleParts.SHAFT, turnedAbout(front, rear, axle.move(rear)));
    return new Pose(moved);
  }

  /** The shortest turn about a point after which a second one lies on the way to a third. */
  public static Place turnedAbout(Point3 about, Point3 from, Point3 to) {
    return between(about, from, about, to);
  }

  private static Place rigid(Placement body) {
    return Place.of(
        body.move(new Point3(0, 0, 0)),
        body.turn(new Vector3(1, 0, 0)),
        body.turn(new Vector3(0, 1, 0)));
  }

  /** From one line to another by the shortest turn about its first end. */
  private static Place between(Point3 from, Point3 to, Point3 movedFrom, Point3 movedTo) {
    Vector3 was = from.to(to).normalized();
    Vector3 is = movedFrom.to(movedTo).normalized();
    Vector3 x = turned(new Vector3(1, 0, 0), was, is);
    Vector3 y = turned(new Vector3(0, 1, 0), was, is);
    Vector3 z = turned(new Vector3(0, 0, 1), was, is);
    Vector3 shifted = x.scaled(from.xMm()).plus(y.scaled(from.yMm())).plus(z.scaled(from.zMm()));
    return Place.of(movedFrom.plus(shifted.scaled(-1)), x, y);
  }

  /** The turn that takes one direction to another (Rodrigues' formula). */
  private static Vector3 turned(Vector3 one, Vector3 from, Vector3 to) {
    Vector3 axis = from.cross(to);
    double cos = from.dot(to);
    if (axis.norm() < ALONG) {
      return one;
    }
    return one.scaled(cos).plus(axis.cross(one)).plus(axis.scaled(axis.dot(one) / (1 + cos)));
  }
}
