package trammel.planning.extension.kit;

import java.util.Map;
import trammel.assembly.SeamRun;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/**
 * What every plan must keep to: each line known to the catalog, each with a reason of its own and a
 * place.
 */
final class PlanPromises {
  private static final int LEAST_REASON = 8;

  private final String plugin;
  private final Catalog catalog;

  PlanPromises(String plugin, Catalog catalog) {
    this.plugin = plugin;
    this.catalog = catalog;
  }

  void verify(WorkPlan plan) {
    Promise.kept(!plan.operations().isEmpty(), "The plan of " + plugin + " has no work in it.");
    for (PartNeed part : plan.parts()) {
      known(catalog.items(), part.itemKey(), "item");
      reason(part.itemKey(), part.why());
      placed(part);
    }
    for (BoltNeed bolt : plan.bolts()) {
      known(catalog.bolts(), bolt.boltKey(), "bolt size");
      reason(bolt.boltKey(), bolt.why());
    }
    for (PlateNeed plate : plan.plates()) {
      known(catalog.plates(), plate.plateKey(), "plate");
      reason(plate.plate().name(), plate.why());
    }
    for (TubeNeed tube : plan.tubes()) {
      known(catalog.bars(), tube.barKey(), "section");
      reason(tube.name(), tube.why());
    }
    plan.welds().forEach(this::placed);
    for (OperationNeed operation : plan.operations()) {
      known(catalog.operations(), operation.operationKey(), "operation");
      reason(operation.operationKey(), operation.why());
    }
  }

  /** A kit is laid as it fits, a service is nowhere; what has a weight and is one piece stands. */
  private void placed(PartNeed part) {
    Item item = catalog.items().get(part.itemKey());
    boolean aThing =
        item.bought() == BoughtAs.PART && item.unit().equals("each") && item.massKg() > 0;
    Promise.kept(
        !aThing || !part.pieces().isEmpty(),
        "The plan of " + plugin + " does not say where '" + part.itemKey() + "' stands.");
  }

  private void placed(WeldSeam weld) {
    for (WeldRun run : weld.runs()) {
      Promise.kept(
          run instanceof SeamRun,
          "The plan of "
              + plugin
              + " does not say where the weld '"
              + weld.name()
              + "' runs; give each run its path.");
    }
  }

  private void known(Map<String, ?> entries, String key, String kind) {
    Promise.kept(
        entries.containsKey(key),
        "The plan of " + plugin + " asks for " + kind + " '" + key + "'; the catalog has none.");
  }

  private void reason(String line, Phrase why) {
    Promise.kept(
        why.toString().strip().length() >= LEAST_REASON,
        "The plan of "
            + plugin
            + " gives '"
            + why
            + "' as the reason for "
            + line
            + "; say which"
            + " point, joint or obstacle asks for it.");
  }

  /** Two plans for two vehicles must differ. */
  void verifyFollows(WorkPlan before, WorkPlan after, String change) {
    Promise.kept(
        !before.equals(after),
        "The plan of " + plugin + " stays the same when " + change + "; it must follow.");
  }
}
