package trammel.planning.estimate;

import trammel.planning.welding.WeldEstimate;
import trammel.planning.work.PartNeed;
import trammel.planning.work.WorkPlan;

/** The wire and the gas that the welds of a plan use up. */
final class WeldingSupplies {
  /** Item key of welding wire, sold by the pound. */
  static final String WIRE = "wire-035";

  /** Item key of shielding gas, sold by the cubic foot. */
  static final String GAS = "welding-gas";

  private static final double POUND_KG = 0.45359237;
  private static final double CUBIC_FOOT_LITRES = 28.316846592;

  private WeldingSupplies() {}

  static WorkPlan of(WeldEstimate welds) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    if (welds.fillerKg() > 0) {
      plan.add(
          new PartNeed(
              WIRE,
              welds.fillerKg() / POUND_KG,
              "deposit of all welds over the deposition efficiency"));
    }
    if (welds.gasLitres() > 0) {
      plan.add(new PartNeed(GAS, welds.gasLitres() / CUBIC_FOOT_LITRES, "flow over the arc time"));
    }
    return plan.build();
  }
}
