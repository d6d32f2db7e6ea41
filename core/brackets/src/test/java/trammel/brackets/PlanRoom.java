package trammel.brackets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.strength.WeldLine;
import trammel.trade.plates.Bounds;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/**
 * The room in vehicle axes that everything in a plan takes: boxes of rear, front, right, left, low
 * and high (mm).
 */
final class PlanRoom {
  private static final double CHORD_MM = 0.001;
  private static final double SAME_MM = 0.003;

  private final WorkPlan plan;
  private final Map<String, double[]> plates = new HashMap<>();

  /** Plates and tubes. */
  private final Map<String, double[]> boxes = new HashMap<>();

  PlanRoom(WorkPlan plan) {
    this.plan = plan;
    for (PlateNeed need : plan.plates()) {
      for (Held held : need.places()) {
        plates.put(held.id(need.plate().name()), box(need, held.place()));
      }
    }
    boxes.putAll(plates);
    for (TubeNeed need : plan.tubes()) {
      for (Held held : need.places()) {
        boxes.put(held.id(need.name()), box(need, held.place()));
      }
    }
  }

  private static double[] box(PlateNeed need, Place place) {
    Bounds bounds = need.plate().outline().bounds();
    List<Point3> corners = new ArrayList<>(8);
    for (double xMm : new double[] {bounds.minXMm(), bounds.maxXMm()}) {
      for (double yMm : new double[] {bounds.minYMm(), bounds.maxYMm()}) {
        for (double zMm : new double[] {0, need.plate().thicknessMm()}) {
          corners.add(
              place
                  .origin()
                  .plus(place.x().scaled(xMm))
                  .plus(place.y().scaled(yMm))
                  .plus(place.z().scaled(zMm)));
        }
      }
    }
    return box(corners);
  }

  /** A tube of 50 x 50 mm along its place's z. */
  private static double[] box(TubeNeed need, Place place) {
    List<Point3> corners = new ArrayList<>(8);
    for (double xMm : new double[] {-25, 25}) {
      for (double yMm : new double[] {-25, 25}) {
        for (double zMm : new double[] {0, need.cutLengthMm()}) {
          corners.add(
              place
                  .origin()
                  .plus(place.x().scaled(xMm))
                  .plus(place.y().scaled(yMm))
                  .plus(place.z().scaled(zMm)));
        }
      }
    }
    return box(corners);
  }

  double[] tube(String id) {
    assertTrue(boxes.containsKey(id), () -> "no " + id + " among " + boxes.keySet());
    return boxes.get(id);
  }

  static double[] box(Collection<Point3> points) {
    double[] box = {1e9, -1e9, 1e9, -1e9, 1e9, -1e9};
    for (Point3 point : points) {
      double[] at = {point.xMm(), point.yMm(), point.zMm()};
      for (int axis = 0; axis < 3; axis++) {
        box[2 * axis] = Math.min(box[2 * axis], at[axis]);
        box[2 * axis + 1] = Math.max(box[2 * axis + 1], at[axis]);
      }
    }
    return box;
  }

  static double[] box(WeldSeam seam) {
    List<Point3> points = new ArrayList<>();
    seam.runs().forEach(run -> points.addAll(points(run)));
    return box(points);
  }

  private static List<Point3> points(WeldRun run) {
    return ((SeamRun) run).path().points(CHORD_MM);
  }

  double[] plate(String id) {
    assertTrue(plates.containsKey(id), () -> "no " + id + " among " + plates.keySet());
    return plates.get(id);
  }

  static double[] box(WeldedFoot foot) {
    List<Point3> points = new ArrayList<>();
    for (WeldLine line : foot.welds().lines()) {
      points.add(on(foot, line.startXMm(), line.startYMm()));
      points.add(on(foot, line.endXMm(), line.endYMm()));
    }
    return box(points);
  }

  private static Point3 on(WeldedFoot foot, double xMm, double yMm) {
    return foot.origin().plus(foot.along().scaled(xMm)).plus(foot.up().scaled(yMm));
  }

  static void assertBox(double[] expected, double[] found, String what) {
    assertArrayEquals(
        expected,
        found,
        SAME_MM,
        () -> what + " takes " + Arrays.toString(found) + ", not " + Arrays.toString(expected));
  }

  /** Every seam runs along the plates that it names, as far as the plan has them. */
  void assertSeamsRunOnTheirPlates() {
    for (WeldSeam seam : plan.welds()) {
      for (WeldRun run : seam.runs()) {
        SeamRun placed = (SeamRun) run;
        assertOn(seam, placed, placed.parts());
        assertOn(seam, placed, placed.onto());
      }
    }
  }

  private void assertOn(WeldSeam seam, SeamRun run, List<String> parts) {
    if (!boxes.keySet().containsAll(parts)) {
      // What the plan is welded to without having it: rails, the axle, another's crossmember.
      parts.forEach(
          part ->
              assertTrue(
                  boxes.containsKey(part) || part.matches(".* rail|axle tube|crossmember"),
                  () -> seam.name() + " on " + part + ", not one of " + boxes.keySet()));
      return;
    }
    for (Point3 point : run.path().points(CHORD_MM)) {
      boolean on = parts.stream().anyMatch(part -> holds(boxes.get(part), point));
      assertTrue(on, () -> seam.name() + " at " + point + " is off " + parts);
    }
  }

  private static boolean holds(double[] box, Point3 point) {
    double[] at = {point.xMm(), point.yMm(), point.zMm()};
    for (int axis = 0; axis < 3; axis++) {
      if (at[axis] < box[2 * axis] - SAME_MM || at[axis] > box[2 * axis + 1] + SAME_MM) {
        return false;
      }
    }
    return true;
  }

  /**
   * The other plan is this one seen in a mirror.
   *
   * @param axis 0 for front to rear, 1 for left to right, 2 for upside down
   * @param aboutMm where the mirror stands
   */
  void assertMirrored(WorkPlan other, int axis, double aboutMm) {
    List<double[]> mirrored = new ArrayList<>();
    for (double[] box : everything()) {
      double[] turned = box.clone();
      turned[2 * axis] = 2 * aboutMm - box[2 * axis + 1];
      turned[2 * axis + 1] = 2 * aboutMm - box[2 * axis];
      mirrored.add(turned);
    }
    List<double[]> found = new PlanRoom(other).everything();
    assertEquals(mirrored.size(), found.size());
    for (double[] box : mirrored) {
      assertTrue(
          found.stream().anyMatch(one -> same(one, box)),
          () -> "nothing takes " + Arrays.toString(box));
    }
  }

  private static boolean same(double[] one, double[] other) {
    for (int i = 0; i < one.length; i++) {
      if (Math.abs(one[i] - other[i]) > SAME_MM) {
        return false;
      }
    }
    return true;
  }

  private List<double[]> everything() {
    List<double[]> boxes = new ArrayList<>(plates.values());
    plan.welds().forEach(seam -> boxes.add(box(seam)));
    plan.feet().forEach(foot -> boxes.add(box(foot)));
    for (BoltNeed need : plan.bolts()) {
      for (Bolting bolt : need.places()) {
        Point3 head = bolt.held().place().origin();
        boxes.add(box(List.of(head, head.plus(bolt.held().place().z().scaled(need.gripMm())))));
      }
    }
    return boxes;
  }
}
