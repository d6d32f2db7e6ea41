package trammel.planning.vehicle;

import static trammel.engine.quantity.Amount.length;

import java.util.Comparator;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.NotchedRail;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.job.BoxedStretch;
import trammel.planning.options.BarOptions;

/** The stretch over which a job closes its open rails, whatever its mounts ask for. */
public final class ChosenBoxing {
  private ChosenBoxing() {}

  /**
   * Both rails closed over the stretch, and over the whole notch where it would end within one; of
   * the thickest plate with which the mounts close them, or else of the usual one.
   *
   * @param mounts the work of linkage, springs and additions
   */
  public static WorkPlan plan(BoxedStretch chosen, Rails rails, WorkPlan mounts, Catalog catalog) {
    double notchMm = rails.cutDepthMm() > 0 ? NotchedRail.notch(rails).endMm() : 0;
    double behindMm = Math.max(chosen.behindMm(), notchMm);
    double aheadMm = Math.max(chosen.aheadMm(), notchMm);
    BracketStock stock =
        mounts.closings().stream()
            .map(RailClosing::stock)
            .max(Comparator.comparingDouble(BracketStock::thicknessMm))
            .orElseGet(() -> usual(catalog));
    Phrase why =
        Phrase.of(
            "closes the channel from {} behind to {} ahead of the axle, as chosen.boxing asks",
            length(behindMm),
            length(aheadMm));
    WorkPlan.Builder plan = new WorkPlan.Builder();
    for (String side : new String[] {"left", "right"}) {
      plan.add(
          new RailClosing(
              RailClosing.Kind.ALONG,
              side + " rail chosen boxing plate",
              "",
              side.equals("left"),
              -behindMm,
              aheadMm,
              stock,
              "the stretch that the job closes",
              why));
    }
    return plan.build();
  }

  private static BracketStock usual(Catalog catalog) {
    String key = BarOptions.boxingPlate(catalog).defaultValue().orElseThrow();
    return new BracketStock(catalog.plate(key));
  }
}
