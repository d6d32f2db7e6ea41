package trammel.plugins.antirollbar;

import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.assembly.Compound;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.mount.MemberStress;
import trammel.brackets.mount.MountWeld;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.RailMount;
import trammel.brackets.work.TabFoot;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.extension.Commission;
import trammel.reading.fields.FieldValues;
import trammel.trade.plates.Belt;
import trammel.trade.plates.Disc;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.TubeBracket;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** The work that the anti-roll bar of a layout asks for. */
final class BarPlan {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 REARWARD = new Vector3(-1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);
  private static final boolean[] SIDES = {true, false};
  private static final String BAR = "anti-roll bar";

  /** Metal about an arm's hole for the bar, 3/8 in: an invented size. */
  private static final double ROUND_SPLINE_MM = 0.375 * 25.4;

  private final BarPlace place;
  private final Chassis chassis;
  private final Catalog catalog;
  private final FieldValues options;
  private final PlateMaterial plate;

  BarPlan(BarPlace place, Commission commission) {
    this.place = place;
    chassis = commission.layout().chassis();
    catalog = commission.site().catalog();
    options = commission.site().options();
    plate = BarOptions.plate(options, catalog);
  }

  WorkPlan work() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addBar(plan);
    addLinks(plan);
    addPlates(plan);
    addBolts(plan);
    addWelds(plan);
    addMembers(plan);
    plan.add(
        new OperationNeed(
            "fit-anti-roll-bar",
            1,
            "1 bar",
            Phrase.of(
                "line both bearings up on the bar before their plates are tacked; links"
                    + " are set with the vehicle level at ride, so that the bar is not twisted"
                    + " there")));
    plan.add(
        new OperationNeed(
            "drill-plate", 2, "2 holes", Phrase.of("bolt holes of the links' rail tabs")));
    plan.add(
        new OperationNeed(
            "dress-plate", 4, "4 plates", Phrase.of("tabs and brackets of the anti-roll bar")));
    return plan.build();
  }

  private static String side(boolean left) {
    return left ? "left" : "right";
  }

  private static String id(String name, boolean left) {
    return Held.id(name, side(left));
  }

  private static String arm(boolean left) {
    return id("anti-roll bar arm", left);
  }

  private static String link(boolean left) {
    return id("anti-roll bar link", left);
  }

  private static String bearing(boolean left) {
    return id("anti-roll bar bearing", left);
  }

  private void addBar(WorkPlan.Builder plan) {
    Item bar = BarOptions.bar(options, catalog);
    double lengthMm = place.lengthMm();
    Point3 end = place.barEnd();
    Point3 right = new Point3(end.xMm(), -lengthMm / 2, end.zMm());
    AntiRollBar spring = place.asSpring();
    plan.add(
        PartNeed.placed(
            bar.key(),
            List.of(
                new BoughtPiece(
                    BAR,
                    Assembly.AXLE,
                    Place.along(right, LEFT),
                    Turned.bar(place.barMm() / 2, lengthMm),
                    List.of(bearing(true), bearing(false)))),
            Phrase.of(
                "{} over both arms, {} behind and {} below the axle's centre at ride; {}"
                    + " for a difference between its arms' ends, bushings and links left out",
                length(lengthMm),
                length(place.behindMm()),
                length(place.belowMm()),
                rate(spring.size().rateNPerMm()))));
    List<BoughtPiece> arms = new ArrayList<>();
    List<BoughtPiece> bearings = new ArrayList<>();
    for (boolean left : SIDES) {
      arms.add(new BoughtPiece(arm(left), Assembly.AXLE, armPlace(left), armForm(), List.of(BAR)));
      Point3 middle = place.bearing().onSide(left);
      Point3 start =
          new Point3(middle.xMm(), middle.yMm() - BarPlace.BEARING_LONG_MM / 2, middle.zMm());
      bearings.add(
          new BoughtPiece(
              bearing(left),
              Assembly.AXLE,
              Place.along(start, LEFT),
              Turned.ring(place.barMm() / 2, place.shellRadiusMm(), BarPlace.BEARING_LONG_MM),
              List.of()));
    }
    plan.add(
        PartNeed.placed(
            armKey(),
            arms,
            Phrase.of("one an end, to the rear and level at ride; its hole takes the link")));
    plan.add(
        PartNeed.placed(
            BarOptions.bearing(bar, catalog).key(),
            bearings,
            Phrase.of(
                "one a side, {} from the centre plane, welded into its plate with the"
                    + " bush out; the collars keep the bar from sliding",
                length(place.bearingMm()))));
  }

  private String armKey() {
    return BarOptions.arms(options, catalog).stream()
        .filter(arm -> Math.abs(arm.lengthMm().orElseThrow() - place.armMm()) < 0.01)
        .findFirst()
        .orElseThrow(
            () ->
                new UnworkableLayoutException(
                    Phrase.of(
                        "the catalog has no arm of {}. Name one in additions.anti-roll-bar",
                        length(place.armMm()))))
        .key();
  }

  private Place armPlace(boolean left) {
    Point3 end = place.barEnd().onSide(left);
    Point3 face = new Point3(end.xMm(), end.yMm() - BarPlace.ARM_THICK_MM / 2, end.zMm());
    return Place.of(face, REARWARD, UP);
  }

  /** The outline's x runs along the arm from the bar's axis. */
  private Solid armForm() {
    Point2 axis = new Point2(0, 0);
    Point2 hole = new Point2(place.armMm(), 0);
    Outline shape =
        new Outline(
            Belt.around(
                List.of(
                    new Disc(axis, place.barMm() / 2 + ROUND_SPLINE_MM),
                    new Disc(hole, BarPlace.ARM_DEEP_MM / 2))),
            List.of(new RoundHole(axis, place.barMm()), new RoundHole(hole, BarPlace.HOLE_MM)));
    return Prism.plate(shape, BarPlace.ARM_THICK_MM);
  }

  private void addLinks(WorkPlan.Builder plan) {
    double lengthMm = place.linkTopUpMm() - place.barUpMm();
    List<BoughtPiece> links = new ArrayList<>();
    for (boolean left : SIDES) {
      links.add(
          new BoughtPiece(
              link(left),
              Assembly.FRAME,
              Place.at(place.linkBottom().onSide(left)),
              linkForm(lengthMm),
              List.of()));
    }
    plan.add(
        PartNeed.placed(
            BarOptions.LINK,
            links,
            Phrase.of(
                "one an arm, {} from eye to eye at ride, upright, up to the tab on the rail",
                length(lengthMm))));
  }

  /** The lower eye across the vehicle, the upper one along it. */
  private Solid linkForm(double lengthMm) {
    double halfMm = BarPlace.EYE_MM / 2;
    Solid eye = Turned.ring(BarPlace.HOLE_MM / 2, BarPlace.EYE_RADIUS_MM, BarPlace.EYE_MM);
    double shankMm = lengthMm - 2 * BarPlace.EYE_RADIUS_MM;
    return new Compound(
        List.of(
            new Compound.Member(Place.along(new Point3(0, -halfMm, 0), LEFT), eye),
            new Compound.Member(
                Place.at(new Point3(0, 0, BarPlace.EYE_RADIUS_MM)),
                Turned.bar(BarPlace.BOLT_MM / 2, shankMm)),
            new Compound.Member(Place.along(new Point3(-halfMm, 0, lengthMm), FORWARD), eye)));
  }

  private void addPlates(WorkPlan.Builder plan) {
    plan.add(
        new PlateNeed(
            place.railTab().plate(plate.title()),
            plate.key(),
            List.of(
                new Held(side(true), Assembly.FRAME, middle(tabPlane(true))),
                new Held(side(false), Assembly.FRAME, middle(tabPlane(false)))),
            Phrase.of(
                "upper eye of each link of the anti-roll bar, {} off the rail's {} face,"
                    + " {} behind the axle and {} above ground at ride",
                length(place.reachMm()),
                place.outside() ? "outer" : "inner",
                length(-place.tabFoot().xMm()),
                length(place.linkTopUpMm()))));
    plan.add(
        new PlateNeed(
            bracketPlate(),
            plate.key(),
            List.of(
                new Held(side(true), Assembly.AXLE, bracketPlane(true)),
                new Held(side(false), Assembly.AXLE, bracketPlane(false))),
            Phrase.of(
                "bearing of the anti-roll bar {} from the centre of the axle tube, {}"
                    + " from the centre plane; the hole takes the bearing's shell of {}",
                length(Math.hypot(place.behindMm(), place.belowMm())),
                length(place.bearingMm()),
                length(2 * place.shellRadiusMm()))));
  }

  private Plate bracketPlate() {
    return place.axleBracket().plate(plate.title());
  }

  private Vector3 away(boolean left) {
    return new Vector3(0, left ? place.away() : -place.away(), 0);
  }

  private Place tabPlane(boolean left) {
    return Place.of(place.tabFoot().onSide(left), UP, away(left));
  }

  /** The thickness goes both ways from the plane. */
  private Place middle(Place plane) {
    return plane.shifted(0, 0, -place.plateMm() / 2);
  }

  /** About the tube's centre as seen from the left; the thickness goes to the right. */
  private Place bracketPlane(boolean left) {
    double acrossMm = (left ? 1 : -1) * place.bearingMm() + place.plateMm() / 2;
    return Place.sideView(new Point3(0, acrossMm, chassis.axleCentre().zMm()));
  }

  private void addBolts(WorkPlan.Builder plan) {
    List<Bolting> upper = new ArrayList<>();
    List<Bolting> lower = new ArrayList<>();
    for (boolean left : SIDES) {
      Point3 top = place.linkTop().onSide(left);
      upper.add(
          new Bolting(
              new Held(
                  side(left) + " upper",
                  Assembly.FRAME,
                  Place.along(top.plus(REARWARD.scaled(BarPlace.EYE_MM / 2)), FORWARD)),
              List.of(link(left), Held.id(place.railTab().name(), side(left)))));
      Vector3 outward = new Vector3(0, left ? 1 : -1, 0);
      Point3 armEnd = place.armEnd().onSide(left);
      lower.add(
          new Bolting(
              new Held(
                  side(left) + " lower",
                  Assembly.AXLE,
                  Place.along(armEnd.plus(outward.scaled(-BarPlace.ARM_THICK_MM / 2)), outward)),
              List.of(arm(left), link(left))));
    }
    String size = BoltSizes.of(catalog.bolts().values()).of(BarPlace.BOLT_MM).key();
    plan.add(
        new BoltNeed(
            size,
            BarPlace.EYE_MM + place.plateMm(),
            upper,
            "upper ends of the anti-roll bar's links",
            Phrase.of(
                "one a link through its eye of {} and the tab of {}",
                length(BarPlace.EYE_MM),
                length(place.plateMm()))));
    plan.add(
        new BoltNeed(
            size,
            BarPlace.EYE_MM + BarPlace.ARM_THICK_MM,
            lower,
            "lower ends of the anti-roll bar's links",
            Phrase.of(
                "one a link through the arm of {} and its eye of {}",
                length(BarPlace.ARM_THICK_MM),
                length(BarPlace.EYE_MM))));
  }

  private List<SeamRun> onRail(boolean left) {
    return TabFoot.runs(
        Held.id(place.railTab().name(), side(left)),
        VehicleParts.rail(left),
        tabPlane(left),
        BarPlace.FOOT_MM,
        place.plateMm());
  }

  private List<SeamRun> onTube(boolean left) {
    List<SeamRun> runs = new ArrayList<>();
    double middleRad = Math.atan2(-place.belowMm(), -place.behindMm());
    for (boolean near : SIDES) {
      runs.add(
          new SeamRun(
              Held.id(place.axleBracket().name(), side(left)),
              VehicleParts.AXLE_TUBE,
              FlatPath.arc(
                  bracketPlane(left).shifted(0, 0, near ? 0 : place.plateMm()),
                  chassis.axle().tubeRadiusMm(),
                  middleRad,
                  TubeBracket.USUAL_WRAP_RAD)));
    }
    return runs;
  }

  private List<SeamRun> shells(boolean left) {
    List<SeamRun> runs = new ArrayList<>();
    Place shell = bracketPlane(left).shifted(-place.behindMm(), -place.belowMm(), 0);
    for (boolean near : SIDES) {
      runs.add(
          new SeamRun(
              bearing(left),
              Held.id(place.axleBracket().name(), side(left)),
              FlatPath.circle(
                  shell.shifted(0, 0, near ? 0 : place.plateMm()), place.shellRadiusMm())));
    }
    return runs;
  }

  private static List<SeamRun> both(Function<Boolean, List<SeamRun>> runs) {
    return Stream.of(true, false).flatMap(left -> runs.apply(left).stream()).toList();
  }

  private FilletWeld fillet(double otherMm) {
    return FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(place.plateMm(), otherMm)));
  }

  private void addWelds(WorkPlan.Builder plan) {
    plan.add(
        seam(
            place.railTab().name() + " to rail",
            chassis.rails().wallMm(),
            WeldPosition.VERTICAL,
            WeldPlace.VEHICLE,
            both(this::onRail),
            Phrase.of("foot of two tabs, both faces")));
    plan.add(
        seam(
            place.axleBracket().name() + " to tube",
            chassis.axle().tubeWallMm(),
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            both(this::onTube),
            Phrase.of("saddle of two plates, both faces")));
    plan.add(
        seam(
            "anti-roll bar bearing to its bracket",
            BarPlace.SHELL_MM,
            WeldPosition.FLAT,
            WeldPlace.BENCH,
            both(this::shells),
            Phrase.of("shell of each bearing, once round on both faces, its bush taken out")));
  }

  private WeldSeam seam(
      String name,
      double otherMm,
      WeldPosition position,
      WeldPlace where,
      List<SeamRun> runs,
      Phrase why) {
    return WeldSeam.along(name, fillet(otherMm), runs, position, where, why);
  }

  /** The tab is bent by the upright link, the bracket by what the bearing carries. */
  private void addMembers(WorkPlan.Builder plan) {
    double yieldMPa = plate.yieldMPa();
    for (boolean left : new boolean[] {true, false}) {
      plan.add(new RailMount(place.railTab().name(), AntiRollBar.NAME, left));
      addLoadedWelds(plan, left);
    }
    plan.add(
        new LoadedMember(
            place.railTab().name(),
            Map.of(
                AntiRollBar.NAME,
                MemberStress.plate(place.reachMm(), place.plateMm(), BarPlace.FOOT_MM)),
            yieldMPa,
            "bent at the rail's face"));
    double tubeMm = chassis.axle().tubeDiameterMm();
    double rootMm = tubeMm * Math.sin(TubeBracket.USUAL_WRAP_RAD / 2);
    double leverMm = Math.max(0, place.behindMm() - tubeMm / 2);
    plan.add(
        new LoadedMember(
            place.axleBracket().name(),
            Map.of(
                AntiRollBar.NAME,
                place.asSpring().bearingShare()
                    * MemberStress.plate(leverMm, place.plateMm(), rootMm)),
            yieldMPa,
            "bent at the axle tube"));
  }

  /** A link pushes its tab upright, and a bearing its bracket by more than that. */
  private void addLoadedWelds(WorkPlan.Builder plan, boolean left) {
    plan.add(
        new MountWeld(
                "weld of " + Held.id(place.railTab().name(), side(left)),
                onRail(left),
                fillet(chassis.rails().wallMm()))
            .under(AntiRollBar.NAME, UP, place.linkTop().onSide(left))
            .member("the foot of a tab on the rail"));
    plan.add(
        new MountWeld(
                "weld of " + Held.id(place.axleBracket().name(), side(left)),
                onTube(left),
                fillet(chassis.axle().tubeWallMm()))
            .under(
                AntiRollBar.NAME,
                UP.scaled(place.asSpring().bearingShare()),
                place.bearing().onSide(left))
            .member("the saddle of a plate on the axle tube"));
  }
}
