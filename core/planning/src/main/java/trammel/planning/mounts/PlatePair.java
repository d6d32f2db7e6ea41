package trammel.planning.mounts;

import java.util.List;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.WorkPlan;
import trammel.trade.plates.Plate;

/** Plates of the left and the right side: one line if both sides are alike, else one each. */
final class PlatePair {
  /** Sides that differ by less than this are cut alike (mm). */
  private static final double ALIKE_MM = 0.2;

  private PlatePair() {}

  static void add(
      WorkPlan.Builder plan, Plate left, Plate right, String plateKey, int aSide, String why) {
    for (PlateNeed need : of(left, right, plateKey, aSide, why)) {
      plan.add(need);
    }
  }

  static List<PlateNeed> of(Plate left, Plate right, String plateKey, int aSide, String why) {
    return alike(left, right)
        ? List.of(new PlateNeed(left, plateKey, 2 * aSide, why))
        : List.of(
            new PlateNeed(named(left, "left"), plateKey, aSide, why),
            new PlateNeed(named(right, "right"), plateKey, aSide, why));
  }

  private static Plate named(Plate plate, String side) {
    return plate.named(plate.name() + ", " + side);
  }

  private static boolean alike(Plate a, Plate b) {
    var one = a.outline().bounds();
    var other = b.outline().bounds();
    return Math.abs(one.minXMm() - other.minXMm()) < ALIKE_MM
        && Math.abs(one.maxXMm() - other.maxXMm()) < ALIKE_MM
        && Math.abs(one.minYMm() - other.minYMm()) < ALIKE_MM
        && Math.abs(one.maxYMm() - other.maxYMm()) < ALIKE_MM;
  }
}
