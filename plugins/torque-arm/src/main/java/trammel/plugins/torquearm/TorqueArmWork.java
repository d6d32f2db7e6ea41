package trammel.plugins.torquearm;

import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.RailSideWork;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.FittedEnd;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;
import trammel.planning.extension.Commission;

/** The work of the lower bars, the arm with its drop link and crossmember, and the lateral bar. */
final class TorqueArmWork {
  private final Layout layout;
  private final TorqueArmOptions options;
  private final BracketBasis basis;

  TorqueArmWork(Commission commission) {
    layout = commission.layout();
    options = new TorqueArmOptions(commission.site());
    basis =
        new BracketBasis(
            layout.chassis(), options.boxing(), commission.site().catalog().boltSizes());
  }

  WorkPlan plan() {
    List<BarMaking> lower =
        layout.lower().stream().map(bar -> BarMaking.along(bar, options.bars())).toList();
    List<BarMaking> across =
        layout.across().stream().map(bar -> BarMaking.across(bar, options.lateral())).toList();
    Bar hanging = layout.bar(TorqueArm.LINK).orElseThrow();
    BarMaking link = BarMaking.along(hanging, options.link());
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(new RailSideWork(layout, lower, across, options.mounting(), basis).plan());
    plan.add(link.plan());
    plan.add(BarOperations.each("make-bar", List.of(link), "bar", "the arm's link: "));
    plan.add(new BoxedArm(link, basis).plan());
    plan.add(
        new OperationNeed(
            "fit-torque-arm",
            1,
            Phrase.of("1 arm"),
            Phrase.of(
                "box the arm, set it square on the axle tube beside the housing, hang"
                    + " its eye on {}",
                hanging.name()),
            List.of(
                new FittedEnd(hanging.name(), End.AXLE),
                new FittedEnd(hanging.name(), End.FRAME))));
    LinkHanger hanger = new LinkHanger(link, options.mountStock(), basis);
    plan.add(hanger.tabs());
    plan.add(BarOperations.counted(plan.build()));
    // A crossmember counts its own cuts.
    plan.add(hanger.carrier());
    return plan.build();
  }
}
