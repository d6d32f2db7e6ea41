package trammel.plugins.coilspring;

import static trammel.engine.quantity.Amount.force;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trammel.assembly.Solid;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockForm;
import trammel.brackets.mount.ShockMounting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.quantity.Gravity;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CoilOverSpring;
import trammel.planning.extension.Commission;
import trammel.planning.options.BoughtShocks;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.FieldValues;

/** The work that the coil-overs of a layout ask for. */
final class CoilPlan {
  private static final int SPRINGS = 2;

  private final Layout layout;
  private final Catalog catalog;
  private final FieldValues options;
  private final MountStock stock;

  CoilPlan(Commission commission) {
    layout = commission.layout();
    catalog = commission.site().catalog();
    options = commission.site().options();
    stock = MountOptions.stockUnderSprings(commission.site());
  }

  WorkPlan work() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    ShockUnit left = layout.shocks().get(0);
    ShockUnit right = layout.shocks().get(1);
    SpringUnit spring = layout.springs().get(0);
    ShockMounting mounting =
        new ShockMounting(
            "coil-over", layout.chassis(), left, right, bought(left), spring.radiusMm(), stock);
    mounting.on(MountOptions.legs(options, layout, mounting.crossmember())).addTo(plan);
    addSprings(plan, spring, BoughtCoil.of(spring, catalog));
    return plan.build();
  }

  private void addSprings(WorkPlan.Builder plan, SpringUnit spring, CoilOverSpring coil) {
    AxleTravel travel = new AxleTravel(layout.chassis(), layout.guide());
    double ratio = travel.motionRatio(spring.frame(), spring.axle());
    double loadN =
        layout.chassis().masses().sprungPerRearCornerKg() * Gravity.MM_PER_S2 / 1000 / ratio;
    double squeezedMm = loadN / coil.rateNPerMm();
    double lengthMm = coil.freeLengthMm() - squeezedMm;
    plan.add(
        PartNeed.placed(
            coil.key(),
            onBoth("spring", shock -> CoilForm.coil(shock, bought(shock), coil, lengthMm)),
            Phrase.of(
                "{} under {} at ride (corner weight over a motion ratio of {}): set the"
                    + " collar for a spring {} long",
                rate(coil.rateNPerMm()),
                force(loadN),
                Double.toString(Math.round(ratio * 1000) / 1000.0),
                length(lengthMm))));
    plan.add(
        PartNeed.placed(
            "coil-over-hardware",
            onBoth("spring seats", shock -> CoilForm.seats(shock, bought(shock), coil, lengthMm)),
            Phrase.of("seats and collar for each coil-over shock")));
    double droopMm =
        travel.path(spring.axle()).from(spring.frame()).mostMm()
            - spring.frame().distanceMm(spring.axle());
    if (droopMm > squeezedMm) {
      plan.add(
          PartNeed.placed(
              "spring-retainer",
              onBoth("spring retainer", shock -> CoilForm.retainer(shock, bought(shock), coil)),
              Phrase.of(
                  "at full droop the shock is {} longer than the free spring, so the"
                      + " spring would come off its seat",
                  length(droopMm - squeezedMm))));
    }
    plan.add(
        new OperationNeed(
            "set-coil-over",
            SPRINGS,
            "2 coil-overs",
            Phrase.of(
                "spring {} long between its seats at ride, shock {} eye to eye",
                length(lengthMm),
                length(spring.frame().distanceMm(spring.axle())))));
  }

  private Shock bought(ShockUnit shock) {
    return new BoughtShocks(catalog).of(shock, true);
  }

  /** What sits on each of the two shocks, with it. */
  private List<BoughtPiece> onBoth(String what, Function<ShockUnit, Solid> form) {
    List<BoughtPiece> pieces = new ArrayList<>(SPRINGS);
    for (ShockUnit shock : layout.shocks()) {
      pieces.add(
          new BoughtPiece(
              what + " of " + shock.name(),
              shock.name(),
              ShockForm.place(shock, shock.axle().to(shock.frame()).cross(new Vector3(1, 0, 0))),
              form.apply(shock),
              List.of(shock.name())));
    }
    return pieces;
  }
}
