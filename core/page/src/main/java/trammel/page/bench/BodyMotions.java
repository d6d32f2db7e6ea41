package trammel.page.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Place;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;
import trammel.planning.vehicle.BodyPlaces;

/**
 * How each body of the assembly has moved from ride to a pose, as sixteen numbers column by column.
 * Springs, shocks and the shaft are also made longer or shorter along their line.
 */
public final class BodyMotions {
  private BodyMotions() {}

  /** The motion of every body, by its name. */
  public static Map<String, List<Double>> of(Layout layout, AxlePose pose) {
    Map<String, List<Double>> motions = new LinkedHashMap<>();
    BodyPlaces.of(layout, pose).moved().forEach((body, place) -> motions.put(body, columns(place)));
    Placement axle = pose.placement();
    for (SpringUnit spring : layout.springs()) {
      motions.put(spring.name(), drawnOut(spring.frame(), spring.axle(), axle));
    }
    for (ShockUnit shock : layout.shocks()) {
      motions.put(shock.name(), drawnOut(shock.frame(), shock.axle(), axle));
    }
    Driveline driveline = layout.chassis().driveline();
    motions.put(
        VehicleParts.SHAFT, drawnOut(driveline.transmissionJoint(), driveline.pinionJoint(), axle));
    return motions;
  }

  /** Turned about its end on the frame and made as long as it is from there to the axle. */
  private static List<Double> drawnOut(Point3 frame, Point3 onAxle, Placement axle) {
    Point3 moved = axle.move(onAxle);
    double share = frame.distanceMm(moved) / frame.distanceMm(onAxle);
    Place turn = BodyPlaces.turnedAbout(frame, onAxle, moved);
    Vector3 along = frame.to(onAxle).normalized();
    Vector3 x = turn.turn(drawn(new Vector3(1, 0, 0), along, share));
    Vector3 y = turn.turn(drawn(new Vector3(0, 1, 0), along, share));
    Vector3 z = turn.turn(drawn(new Vector3(0, 0, 1), along, share));
    Vector3 stays = x.scaled(frame.xMm()).plus(y.scaled(frame.yMm())).plus(z.scaled(frame.zMm()));
    return columns(x, y, z, frame.plus(stays.scaled(-1)));
  }

  private static Vector3 drawn(Vector3 own, Vector3 along, double share) {
    return own.plus(along.scaled((share - 1) * own.dot(along)));
  }

  private static List<Double> columns(Place place) {
    return columns(place.x(), place.y(), place.z(), place.origin());
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
