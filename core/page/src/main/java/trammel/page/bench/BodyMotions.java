package trammel.page.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Assembly;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * How each body of the assembly has moved from ride to a pose, as sixteen numbers column by column:
 * the axle and further bodies as the engine has them, bars from joint to joint, and springs, shocks
 * and the shaft also made longer or shorter along their line.
 */
public final class BodyMotions {
  private static final double ALONG = 1e-9;

  private final Layout layout;
  private final Placement axle;

  private BodyMotions(Layout layout, AxlePose pose) {
    this.layout = layout;
    this.axle = pose.placement();
  }

  /** The motion of every body, by its name. */
  public static Map<String, List<Double>> of(Layout layout, AxlePose pose) {
    return new BodyMotions(layout, pose).all();
  }

  private Map<String, List<Double>> all() {
    Map<String, List<Double>> motions = new LinkedHashMap<>();
    motions.put(Assembly.AXLE, rigid(axle));
    for (FurtherBody body : layout.guide().bodies()) {
      motions.put(body.name(), rigid(axle.of(body.name())));
    }
    for (Bar bar : layout.bars()) {
      Point3 frame = axle.of(bar.frameEnd().body()).move(bar.frame());
      Point3 end = axle.of(bar.axleEnd().body()).move(bar.axle());
      motions.put(bar.name(), between(bar.frame(), bar.axle(), frame, end));
    }
    for (SpringUnit spring : layout.springs()) {
      motions.put(
          spring.name(),
          between(spring.frame(), spring.axle(), spring.frame(), axle.move(spring.axle())));
    }
    for (ShockUnit shock : layout.shocks()) {
      motions.put(
          shock.name(),
          between(shock.frame(), shock.axle(), shock.frame(), axle.move(shock.axle())));
    }
    Point3 front = layout.chassis().driveline().transmissionJoint();
    Point3 rear = layout.chassis().driveline().pinionJoint();
    motions.put(VehicleParts.SHAFT, between(front, rear, front, axle.move(rear)));
    return motions;
  }

  private static List<Double> rigid(Placement body) {
    return columns(
        body.turn(new Vector3(1, 0, 0)),
        body.turn(new Vector3(0, 1, 0)),
        body.turn(new Vector3(0, 0, 1)),
        body.move(new Point3(0, 0, 0)));
  }

  /** From one line to another, by the shortest turn, drawn out along the line. */
  private static List<Double> between(Point3 from, Point3 to, Point3 movedFrom, Point3 movedTo) {
    Vector3 was = from.to(to);
    Vector3 is = movedFrom.to(movedTo);
    double share = is.norm() / was.norm();
    Vector3 along = was.normalized();
    Vector3 now = is.normalized();
    Vector3 x = moved(new Vector3(1, 0, 0), along, now, share);
    Vector3 y = moved(new Vector3(0, 1, 0), along, now, share);
    Vector3 z = moved(new Vector3(0, 0, 1), along, now, share);
    Vector3 shifted = x.scaled(from.xMm()).plus(y.scaled(from.yMm())).plus(z.scaled(from.zMm()));
    return columns(
        x,
        y,
        z,
        new Point3(
            movedFrom.xMm() - shifted.x(),
            movedFrom.yMm() - shifted.y(),
            movedFrom.zMm() - shifted.z()));
  }

  private static Vector3 moved(Vector3 own, Vector3 along, Vector3 now, double share) {
    Vector3 drawn = own.plus(along.scaled((share - 1) * own.dot(along)));
    return turned(drawn, along, now);
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

  private static List<Double> columns(Vector3 x, Vector3 y, Vector3 z, Point3 origin) {
    List<Double> sixteen = new ArrayList<>(16);
    for (Vector3 one : List.of(x, y, z)) {
      sixteen.addAll(List.of(one.x(), one.y(), one.z(), 0.0));
    }
    sixteen.addAll(List.of(origin.xMm(), origin.yMm(), origin.zMm(), 1.0));
    return sixteen;
  }
}
