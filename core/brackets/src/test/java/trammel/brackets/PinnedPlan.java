package trammel.brackets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.plates.RoundHole;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/** Holds the plates, tubes and seams of a plan to a table, and the plan to nothing else. */
final class PinnedPlan {
  private static final double SAME_MM = 1e-6;
  private static final double SAME_MM2 = 0.01;

  private final WorkPlan plan;
  private final Set<String> seen = new HashSet<>();

  PinnedPlan(WorkPlan plan) {
    this.plan = plan;
  }

  PinnedPlan plate(String name, int quantity, double thicknessMm, Sketch sketch) {
    PlateNeed need =
        plan.plates().stream()
            .filter(one -> one.plate().name().equals(name))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no plate " + name + " in " + plates()));
    assertTrue(seen.add(name), name);
    assertEquals(quantity, need.quantity(), name);
    assertEquals(thicknessMm, need.plate().thicknessMm(), SAME_MM, name);
    Outline outline = need.plate().outline();
    Bounds bounds = outline.bounds();
    assertEquals(sketch.least(0), bounds.minXMm(), SAME_MM, name + ", left");
    assertEquals(sketch.most(0), bounds.maxXMm(), SAME_MM, name + ", right");
    assertEquals(sketch.least(1), bounds.minYMm(), SAME_MM, name + ", bottom");
    assertEquals(sketch.most(1), bounds.maxYMm(), SAME_MM, name + ", top");
    assertEquals(sketch.areaMm2(), outline.areaMm2(), SAME_MM2, name + ", area");
    assertEquals(sketch.holes().size(), outline.holes().size(), name + ", holes");
    for (int i = 0; i < sketch.holes().size(); i++) {
      RoundHole hole = (RoundHole) outline.holes().get(i);
      assertEquals(sketch.holes().get(i)[0], hole.centre().xMm(), SAME_MM, name + ", hole");
      assertEquals(sketch.holes().get(i)[1], hole.centre().yMm(), SAME_MM, name + ", hole");
      assertEquals(sketch.holes().get(i)[2], hole.diameterMm(), SAME_MM, name + ", hole");
    }
    return this;
  }

  private List<String> plates() {
    return plan.plates().stream().map(need -> need.plate().name()).toList();
  }

  PinnedPlan tube(String name, int quantity, double lengthMm) {
    TubeNeed need =
        plan.tubes().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    assertTrue(seen.add(name), name);
    assertEquals(quantity, need.quantity(), name);
    assertEquals(lengthMm, need.cutLengthMm(), SAME_MM, name);
    return this;
  }

  /**
   * A line of fillets.
   *
   * @param runs how many welds
   * @param eachMm length of each
   * @param legMm leg of the fillet
   * @param box the room in vehicle axes within which all of them just run: rear, front, right,
   *     left, low, high (mm)
   */
  PinnedPlan seam(String name, int runs, double eachMm, double legMm, double... box) {
    WeldSeam seam =
        plan.welds().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no seam " + name + " in " + seams()));
    assertTrue(seen.add(name), name);
    assertEquals(runs, seam.count(), name);
    for (WeldRun run : seam.runs()) {
      assertEquals(eachMm, run.lengthMm(), SAME_MM, name);
    }
    assertEquals(FilletWeld.ofLeg(legMm), seam.joint(), name);
    PlanRoom.assertBox(box, PlanRoom.box(seam), name);
    return this;
  }

  private List<String> seams() {
    return plan.welds().stream().map(WeldSeam::name).toList();
  }

  /**
   * The room in vehicle axes that a plate takes, by its id: rear, front, right, left, low, high.
   */
  PinnedPlan stands(String id, double... box) {
    PlanRoom.assertBox(box, new PlanRoom(plan).plate(id), id);
    return this;
  }

  /** The room in vehicle axes that a square tube of 50 mm takes, by its id. */
  PinnedPlan lies(String id, double... box) {
    PlanRoom.assertBox(box, new PlanRoom(plan).tube(id), id);
    return this;
  }

  /** The room in vehicle axes of the welds of a foot, as its check sees them. */
  PinnedPlan foot(String name, double... box) {
    WeldedFoot foot =
        plan.feet().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    PlanRoom.assertBox(box, PlanRoom.box(foot), name);
    return this;
  }

  /** One bolt a joint, of this grip. */
  PinnedPlan bolts(int quantity, double gripMm) {
    assertEquals(quantity, plan.bolts().stream().mapToInt(bolt -> bolt.quantity()).sum());
    plan.bolts().forEach(bolt -> assertEquals(gripMm, bolt.gripMm(), SAME_MM, bolt.where()));
    return this;
  }

  /** Welds of all feet together, each bar's by itself (mm). */
  PinnedPlan feet(int count, double weldMm) {
    assertEquals(count, plan.feet().size());
    double sumMm =
        plan.feet().stream()
            .flatMap(foot -> foot.welds().lines().stream())
            .mapToDouble(
                line ->
                    Math.hypot(line.endXMm() - line.startXMm(), line.endYMm() - line.startYMm()))
            .sum();
    // Saddles are given as straight pieces, which come out short by up to 0.2 %.
    assertEquals(weldMm, sumMm, 2e-3 * weldMm);
    return this;
  }

  /** All plates, tubes and seams of the plan were in the table, and each seam is on its plates. */
  void nothingElse() {
    new PlanRoom(plan).assertSeamsRunOnTheirPlates();
    Set<String> all = new HashSet<>(plates());
    all.addAll(seams());
    plan.tubes().forEach(tube -> all.add(tube.name()));
    assertEquals(seen, all);
  }
}
