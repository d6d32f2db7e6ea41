package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Held;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Plate;

/** Plates of the left and the right side: one line if both sides are alike, else one each. */
public final class PlatePair {
  /** Sides that differ by less than this are cut alike (mm). */
  private static final double ALIKE_MM = 0.2;

  private static final String LEFT = "left";
  private static final String RIGHT = "right";

  private PlatePair() {}

  public static void add(
      WorkPlan.Builder plan,
      Plate left,
      Plate right,
      String plateKey,
      List<Held> onLeft,
      List<Held> onRight,
      Phrase why) {
    for (PlateNeed need : of(left, right, plateKey, onLeft, onRight, why)) {
      plan.add(need);
    }
  }

  public static List<PlateNeed> of(
      Plate left, Plate right, String plateKey, List<Held> onLeft, List<Held> onRight, Phrase why) {
    if (!alike(left, right)) {
      return List.of(
          new PlateNeed(named(left, LEFT), plateKey, onLeft, why),
          new PlateNeed(named(right, RIGHT), plateKey, onRight, why));
    }
    List<Held> places = new ArrayList<>();
    onLeft.forEach(held -> places.add(marked(held, LEFT)));
    onRight.forEach(held -> places.add(marked(held, RIGHT)));
    return List.of(new PlateNeed(left, plateKey, places, why));
  }

  /** With this its id is the same whether both sides are cut alike or not. */
  private static Held marked(Held held, String side) {
    return new Held(Held.id(side, held.mark()), held.carrier(), held.place());
  }

  /** The name under which the plates of one side have their ids. */
  public static String name(String plate, boolean left) {
    return Held.id(plate, left ? LEFT : RIGHT);
  }

  private static Plate named(Plate plate, String side) {
    return plate.named(Held.id(plate.name(), side));
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
