package example.threelink;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.CopedTube;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.assembly.Turned;
import trammel.brackets.material.EndFitting;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;
import trammel.trade.steel.RoundTube;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** Two lower bars, one upper bar beside the centre, and a lateral bar: a plugin from outside. */
public final class ThreeLink implements AxleLinkage {
  private static final Field<Double> LOWER_LENGTH =
      Field.lengthMm("lower_length", "Lower bar, joint to joint.", 300, 1200).withDefault(609.6);

  @Override
  public String id() {
    return "three-link";
  }

  @Override
  public String title() {
    return "Three links and a lateral bar";
  }

  @Override
  public String summary() {
    return "Two lower bars and one upper bar hold the axle fore and aft, a lateral bar sideways.";
  }

  @Override
  public List<Field<?>> options(Catalog catalog) {
    return List.of(LOWER_LENGTH);
  }

  @Override
  public AxleGuide propose(Site site) {
    Chassis chassis = site.chassis();
    double up = chassis.tyre().loadedRadiusMm();
    double side = chassis.rails().innerFaceMm(0) - 60;
    double lower = site.options().get(LOWER_LENGTH);
    List<Bar> bars = new ArrayList<>();
    bars.add(bar(site, "lower-left", Duty.DRIVE_AND_BRAKING.only(), lower, side, up - 70, 0, side, up - 76));
    bars.add(bar(site, "lower-right", Duty.DRIVE_AND_BRAKING.only(), lower, -side, up - 70, 0, -side, up - 76));
    bars.add(
        bar(site, "upper", Duty.DRIVE_AND_BRAKING.only(), 0.75 * lower, 150, up + 108, 0, 150, up + 115));
    bars.add(
        bar(site, "lateral-bar", Duty.SIDEWAYS.only(), -150, side, up + 50, -150, -side, up + 50));
    return AxleGuide.of(bars);
  }

  private static Bar bar(
      Site site,
      String name,
      Set<Duty> duties,
      double frameX,
      double frameY,
      double frameZ,
      double axleX,
      double axleY,
      double axleZ) {
    Catalog catalog = site.catalog();
    EndFitting end = catalog.ends().values().iterator().next();
    return new Bar(
        name,
        duties,
        new Point3(frameX, frameY, frameZ),
        new Point3(axleX, axleY, axleZ),
        end.joint(),
        end.joint(),
        catalog.bar("TUBE").tube());
  }

  @Override
  public WorkPlan plan(Commission commission) {
    Catalog catalog = commission.site().catalog();
    EndFitting end = catalog.ends().values().iterator().next();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    for (Bar bar : commission.layout().bars()) {
      Vector3 along = bar.axle().to(bar.frame()).normalized();
      double cutMm = bar.lengthMm() - 2 * end.shankMm();
      Place place = Place.along(bar.axle().plus(along.scaled(end.shankMm())), along);
      RoundTube tube = new RoundTube(bar.tube().outsideDiameterMm(), bar.tube().wallMm());
      plan.add(
          new TubeNeed(
              bar.name(),
              "TUBE",
              cutMm,
              CopedTube.square(tube, cutMm),
              List.of(new Held(bar.name(), place)),
              Phrase.of("square"),
              Phrase.of("bar {}", bar.name())));
      List<BoughtPiece> joints = new ArrayList<>();
      List<Bolting> bolts = new ArrayList<>();
      List<SeamRun> welds = new ArrayList<>();
      for (End which : End.values()) {
        boolean onFrame = which == End.FRAME;
        Point3 centre = bar.point(which);
        Vector3 in = onFrame ? along.scaled(-1) : along;
        String joint = bar.name() + (onFrame ? " frame joint" : " axle joint");
        joints.add(
            new BoughtPiece(
                joint,
                bar.name(),
                Place.along(centre, in),
                Turned.bar(end.joint().barrelRadiusMm(), end.shankMm()),
                List.of(bar.name())));
        Held held =
            new Held(
                onFrame ? "frame" : "axle",
                onFrame ? Assembly.FRAME : Assembly.AXLE,
                Place.along(centre, in));
        bolts.add(new Bolting(held, List.of(joint)));
        Point3 start = centre.plus(in.scaled(end.shankMm()));
        welds.add(
            new SeamRun(
                bar.name(), joint, FlatPath.circle(Place.along(start, in), tube.insideMm() / 2)));
      }
      plan.add(PartNeed.placed(end.key(), joints, Phrase.of("both ends of {}", bar.name())));
      plan.add(
          new BoltNeed(
              "BOLT",
              end.joint().widthMm() + 12.7,
              bolts,
              bar.name(),
              Phrase.of("both ends of {}", bar.name())));
      plan.add(
          WeldSeam.along(
              "joints of " + bar.name(),
              FilletWeld.ofLeg(4.76),
              welds,
              WeldPosition.HORIZONTAL,
              WeldPlace.BENCH,
              Phrase.of("both ends of {}", bar.name())));
    }
    return plan.add(new OperationNeed("make-bar", 4, "4 bars", Phrase.of("four bars"))).build();
  }
}
