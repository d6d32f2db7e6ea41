package trammel.plugins.airspring;

import static trammel.engine.quantity.Amount.force;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.pressure;

import java.util.List;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockMounting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.AirSpring;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Commission;
import trammel.planning.options.BoughtShocks;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.FieldValues;

/** The work that the air springs and shocks of a layout ask for. */
final class AirPlan {
  private static final int SPRINGS = 2;

  private final Layout layout;
  private final Catalog catalog;
  private final FieldValues options;
  private final AxleTravel travel;
  private final MountStock stock;

  AirPlan(Commission commission) {
    layout = commission.layout();
    catalog = commission.site().catalog();
    options = commission.site().options();
    travel = new AxleTravel(layout.chassis(), layout.guide());
    stock = new AirStock(commission.site(), travel).under(layout.springs().get(0));
  }

  WorkPlan work() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    SpringUnit left = layout.springs().get(0);
    SpringUnit right = layout.springs().get(1);
    AirSpring spring = BoughtAirSpring.of(left, catalog);
    AirSpringMounting mounting =
        new AirSpringMounting(layout.chassis(), left, right, spring, stock);
    addSprings(plan, left, spring, mounting.springs());
    mounting.addTo(plan);
    addAir(plan);
    ShockUnit shock = layout.shocks().get(0);
    ShockMounting shocks =
        new ShockMounting(
            "shock",
            layout.chassis(),
            shock,
            layout.shocks().get(1),
            new BoughtShocks(catalog).of(shock, false),
            shock.bodyRadiusMm(),
            stock);
    shocks.on(MountOptions.legs(options, layout, shocks.crossmember())).addTo(plan);
    return plan.build();
  }

  private void addSprings(
      WorkPlan.Builder plan, SpringUnit left, AirSpring spring, List<BoughtPiece> pieces) {
    List<Double> loadsN = travel.loadsN(left.frame(), left.axle());
    double heightMm = left.lengthMm();
    plan.add(
        PartNeed.placed(
            spring.key(),
            pieces,
            Phrase.of(
                "{} carries {} on the left, {} carries {} on the right, at a height of"
                    + " {}; its highest is {}",
                pressure(spring.size().gaugeForLoadMPa(heightMm, loadsN.get(0))),
                force(loadsN.get(0)),
                pressure(spring.size().gaugeForLoadMPa(heightMm, loadsN.get(1))),
                force(loadsN.get(1)),
                length(heightMm),
                pressure(spring.highestGaugeMPa()))));
  }

  private void addAir(WorkPlan.Builder plan) {
    Phrase why =
        Phrase.of("two air springs hold the ride height by pressure, each with a line of its own");
    plan.add(PartNeed.withoutPlace("air-supply-kit", 1, why));
    plan.add(PartNeed.withoutPlace("air-line-kit", 1, why));
    plan.add(
        PartNeed.withoutPlace("air-fitting-kit", SPRINGS, Phrase.of("one for each air spring")));
    plan.add(
        new OperationNeed(
            "plumb-air", 1, "1 air supply, 2 lines", Phrase.of("{}; leak test included", why)));
  }
}
