package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/**
 * What every reading would be if each bracket were off by so much and the axle sat so much out of
 * place. Everything is in the frame's own axes: along, left, square.
 *
 * <p>The unknowns are three displacements (mm) for each bracket, in the order of {@link Mount#of},
 * then the axle's displacement (mm) and its turns about the three axes (rad).
 */
final class TackModel {
  private static final int AXES = 3;
  private static final int AXLE_UNKNOWNS = 6;

  private final List<Mount> mounts;
  private final Map<Mount, Integer> indexes = new HashMap<>();
  private final Map<Mount, double[]> places = new HashMap<>();
  private final Map<String, Target> targets = new HashMap<>();
  private final Chassis chassis;
  private final Optional<Diagonals> diagonals;
  private final double[] axleCentre;

  TackModel(Layout layout, FitUpSheet sheet) {
    chassis = layout.chassis();
    FrameAxes axes = FrameAxes.of(chassis.rails());
    mounts = Mount.of(layout);
    for (int i = 0; i < mounts.size(); i++) {
      Mount mount = mounts.get(i);
      indexes.put(mount, i);
      places.put(mount, axes.from(FitUpSheet.origin(mount.end(), chassis), mount.point(layout)));
    }
    for (Target target : sheet.targets()) {
      targets.put(target.id(), target);
    }
    diagonals = Diagonals.of(layout);
    axleCentre = axes.from(FitUpSheet.origin(End.FRAME, chassis), chassis.axleCentre());
  }

  List<Mount> mounts() {
    return mounts;
  }

  int unknowns() {
    return AXES * mounts.size() + AXLE_UNKNOWNS;
  }

  /** Index of a bracket's first unknown. */
  int first(Mount mount) {
    return AXES * indexes.get(mount);
  }

  Optional<Target> target(String id) {
    return Optional.ofNullable(targets.get(id));
  }

  /** The targets that say something about a bracket by themselves. */
  List<String> ownReadings(Mount mount) {
    List<String> own = new ArrayList<>(AXES);
    for (Axis axis : Axis.values()) {
      own.add(mount.key() + "." + axis.word());
    }
    return own;
  }

  /** What a target would read. */
  double value(String id, double[] unknowns) {
    Target target = targets.get(id);
    for (AxleReading reading : AxleReading.values()) {
      if (reading.id().equals(id)) {
        return axle(reading, target.plan(), unknowns);
      }
    }
    if (diagonals.isPresent() && id.startsWith("diagonal.")) {
      boolean fromLeft = id.endsWith("left-to-right");
      String from = fromLeft ? diagonals.get().left() : diagonals.get().right();
      String to = fromLeft ? diagonals.get().right() : diagonals.get().left();
      return distance(new Mount(from, End.FRAME), new Mount(to, End.AXLE), unknowns);
    }
    int dot = id.lastIndexOf('.');
    String part = id.substring(0, dot);
    if (id.endsWith(".length")) {
      return distance(new Mount(part, End.FRAME), new Mount(part, End.AXLE), unknowns);
    }
    return target.plan() + unknowns[unknownOf(part, id.substring(dot + 1))];
  }

  private int unknownOf(String mountKey, String axisWord) {
    for (Mount mount : mounts) {
      if (mount.key().equals(mountKey)) {
        for (Axis axis : Axis.values()) {
          if (axis.word().equals(axisWord)) {
            return first(mount) + axis.ordinal();
          }
        }
      }
    }
    throw new IllegalArgumentException("there is no reading " + mountKey + "." + axisWord + ".");
  }

  private double axle(AxleReading reading, double plan, double[] unknowns) {
    int at = AXES * mounts.size();
    double side = reading.left() ? 1 : -1;
    double outMm = side * chassis.axle().trackMm() / 2;
    double railMm = side * chassis.rails().outerFaceMm(0);
    return switch (reading) {
      case WHEELBASE_LEFT, WHEELBASE_RIGHT -> plan - unknowns[at] + unknowns[at + 5] * outMm;
      case DROP_LEFT, DROP_RIGHT -> plan - unknowns[at + 2] - unknowns[at + 3] * railMm;
      case OVERHANG_LEFT, OVERHANG_RIGHT -> plan + side * unknowns[at + 1];
      case PINION_ANGLE -> plan - unknowns[at + 4];
    };
  }

  private double distance(Mount frame, Mount axle, double[] unknowns) {
    double[] one = place(frame, unknowns);
    double[] other = onAxle(place(axle, unknowns), unknowns);
    return Math.hypot(Math.hypot(other[0] - one[0], other[1] - one[1]), other[2] - one[2]);
  }

  private double[] place(Mount mount, double[] unknowns) {
    double[] plan = places.get(mount);
    int at = first(mount);
    return new double[] {
      plan[0] + unknowns[at], plan[1] + unknowns[at + 1], plan[2] + unknowns[at + 2]
    };
  }

  /** A place on the axle as the frame sees it; the turns are small. */
  private double[] onAxle(double[] place, double[] unknowns) {
    int at = AXES * mounts.size();
    double roll = unknowns[at + 3];
    double pitch = unknowns[at + 4];
    double yaw = unknowns[at + 5];
    return new double[] {
      axleCentre[0] + unknowns[at] + place[0] + pitch * place[2] - yaw * place[1],
      axleCentre[1] + unknowns[at + 1] + place[1] + yaw * place[0] - roll * place[2],
      axleCentre[2] + unknowns[at + 2] + place[2] + roll * place[1] - pitch * place[0]
    };
  }

  /** How far each unknown may be off before anything is measured (mm or rad). */
  double[] priors() {
    double[] priors = new double[unknowns()];
    for (int i = 0; i < AXES * mounts.size(); i++) {
      priors[i] = BRACKET_MM;
    }
    int at = AXES * mounts.size();
    for (int i = 0; i < AXES; i++) {
      priors[at + i] = AXLE_MM;
      priors[at + AXES + i] = AXLE_RAD;
    }
    return priors;
  }

  /** A bracket that is held up and tacked lies within an inch or so: common practice. */
  private static final double BRACKET_MM = 25.4;

  private static final double AXLE_MM = 50.8;
  private static final double AXLE_RAD = Math.toRadians(5);
}
