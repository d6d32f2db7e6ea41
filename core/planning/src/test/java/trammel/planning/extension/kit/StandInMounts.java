package trammel.planning.extension.kit;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.FittedEnd;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.ShockUnit;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.WeldGroup;
import trammel.engine.strength.WeldLine;
import trammel.planning.catalog.Catalog;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.ShockTab;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** A tab, a bolt, a weld, a foot and an hour's work for every end: all that the kit asks for. */
final class StandInMounts {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);
  private static final double GRIP_MM = 60;

  private final Catalog catalog;
  private final WorkPlan.Builder plan = new WorkPlan.Builder();

  private StandInMounts(Catalog catalog) {
    this.catalog = catalog;
  }

  static WorkPlan ofBars(List<Bar> bars, Catalog catalog) {
    StandInMounts mounts = new StandInMounts(catalog);
    for (Bar bar : bars) {
      List<FittedEnd> fits = new ArrayList<>();
      for (End end : End.values()) {
        mounts.add(bar.name() + " " + end, bar.point(end));
        mounts.plan.add(
            new WeldedFoot(
                bar.name() + " " + end + " to steel",
                List.of(bar.name()),
                end,
                new WeldGroup(List.of(new WeldLine(0, 0, 50, 0), new WeldLine(0, 6, 50, 6))),
                bar.point(end),
                FORWARD,
                UP,
                5));
        fits.add(new FittedEnd(bar.name(), end));
      }
      mounts.plan.add(
          new OperationNeed(
              "fit-lateral-bar",
              1,
              Phrase.text("1 bar"),
              Phrase.of("both brackets of {}", bar.name()),
              fits));
    }
    return mounts.plan.build();
  }

  static WorkPlan ofShocks(List<ShockUnit> shocks, Catalog catalog) {
    StandInMounts mounts = new StandInMounts(catalog);
    for (ShockUnit shock : shocks) {
      for (End end : End.values()) {
        mounts.add(shock.name() + " " + end, shock.point(end));
      }
    }
    return mounts.plan.build();
  }

  private void add(String end, Point3 joint) {
    String tab = end + " tab";
    String plate = catalog.plates().keySet().iterator().next();
    String bolt = catalog.bolts().keySet().iterator().next();
    plan.add(
        new PlateNeed(
            new ShockTab(tab, 6, 60, 40, 13, 20, HoleRules.SHOP).plate("steel"),
            plate,
            List.of(new Held(Assembly.FRAME, Place.at(joint))),
            Phrase.of("holds the {} end", end)));
    plan.add(
        new BoltNeed(
            bolt,
            GRIP_MM,
            List.of(
                new Bolting(
                    new Held(
                        Assembly.FRAME, Place.along(joint.plus(LEFT.scaled(-GRIP_MM / 2)), LEFT)),
                    List.of(tab, "joint"))),
            end,
            Phrase.of("through the joint of the {} end", end)));
    plan.add(
        WeldSeam.along(
            tab + " to rail",
            FilletWeld.ofLeg(5),
            List.of(
                new SeamRun(
                    tab,
                    VehicleParts.rail(true),
                    FlatPath.between(joint, joint.plus(FORWARD.scaled(50))))),
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            Phrase.of("foot of the {}", tab)));
  }
}
