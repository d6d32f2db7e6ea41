package trammel.planning.estimate;

import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.trade.welding.WeldEstimate;

/** The wire and the gas that the welds of a plan use up, in the units in which they are sold. */
final class WeldingSupplies {
  private static final double POUND_KG = 0.45359237;
  private static final double CUBIC_FOOT_LITRES = 28.316846592;
  private static final double CUBIC_METRE_LITRES = 1000;

  private WeldingSupplies() {}

  /**
   * @throws IllegalArgumentException if wire is not sold by weight or gas not by volume
   */
  static WorkPlan of(WeldEstimate welds, Catalog catalog) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    if (welds.fillerKg() > 0) {
      Item wire = catalog.item(welds.practice().fillerItem());
      plan.add(
          PartNeed.withoutPlace(
              wire.key(),
              welds.fillerKg() / unitKg(wire),
              Phrase.of("deposit of all welds over the deposition efficiency")));
    }
    if (welds.gasLitres() > 0) {
      Item gas = catalog.item(welds.practice().gasItem());
      plan.add(
          PartNeed.withoutPlace(
              gas.key(), welds.gasLitres() / unitLitres(gas), Phrase.of("flow over the arc time")));
    }
    return plan.build();
  }

  private static double unitKg(Item wire) {
    return switch (wire.unit()) {
      case "lb" -> POUND_KG;
      case "kg" -> 1;
      default -> throw wrongUnit(wire, "lb or kg");
    };
  }

  private static double unitLitres(Item gas) {
    return switch (gas.unit()) {
      case "ft3" -> CUBIC_FOOT_LITRES;
      case "L" -> 1;
      case "m3" -> CUBIC_METRE_LITRES;
      default -> throw wrongUnit(gas, "ft3, L or m3");
    };
  }

  private static IllegalArgumentException wrongUnit(Item item, String allowed) {
    return new IllegalArgumentException(
        "the unit of item '"
            + item.key()
            + "' is '"
            + item.unit()
            + "'; to be used in welding it must be "
            + allowed
            + ". Price it so in the catalog, or name another item in welding.");
  }
}
