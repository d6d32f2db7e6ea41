package trammel.plugins.limitingstraps;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TabFoot;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Commission;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.ShockTab;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** The work that the straps of a layout ask for. */
final class StrapPlan {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);
  private static final boolean[] SIDES = {true, false};

  private final StrapFit fit;
  private final StrapPlace place;
  private final Layout layout;
  private final Catalog catalog;
  private final PlateMaterial plate;

  StrapPlan(StrapFit fit, Commission commission) {
    this.fit = fit;
    place = fit.place();
    layout = commission.layout();
    catalog = commission.site().catalog();
    plate = StrapOptions.plate(commission.site().options(), catalog);
  }

  WorkPlan work() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addStraps(plan);
    addTabs(plan);
    addBolts(plan);
    addWelds(plan);
    plan.add(
        new OperationNeed(
            "fit-limiting-strap",
            2,
            "2 sides",
            Phrase.of(
                "tabs on rail and axle tube; let the axle hang and see that the straps"
                    + " are tight before a shock is")));
    plan.add(
        new OperationNeed(
            "drill-plate", 4, "4 holes", Phrase.of("bolt holes of the limiting straps' tabs")));
    plan.add(
        new OperationNeed("dress-plate", 4, "4 plates", Phrase.of("tabs of the limiting straps")));
    return plan.build();
  }

  private static String side(boolean left) {
    return left ? "left" : "right";
  }

  /** Away from the rail. */
  private Vector3 away(boolean left) {
    return new Vector3(0, left ? place.away() : -place.away(), 0);
  }

  private String strapId(boolean left, boolean front) {
    String id = "limiting strap, " + side(left);
    return fit.perSide() == 1 ? id : id + (front ? " front" : " rear");
  }

  private void addStraps(WorkPlan.Builder plan) {
    List<BoughtPiece> pieces = new ArrayList<>();
    for (boolean left : SIDES) {
      for (int i = 0; i < fit.perSide(); i++) {
        boolean front = i == 0;
        pieces.add(
            new BoughtPiece(
                strapId(left, front), Assembly.FRAME, strapAt(left, front), strap(), List.of()));
      }
    }
    plan.add(
        PartNeed.placed(
            fit.strap().key(),
            pieces,
            Phrase.of(
                "{} from eye to eye, tight at the end of {} of droop and {} long under"
                    + " load; {} between the eyes at ride, where it hangs slack",
                length(fit.lengthMm()),
                length(layout.chassis().travel().droopMm()),
                length(fit.stretchedMm()),
                length(place.apartMm()))));
  }

  /** Drawn straight from eye to eye, as it lies at ride. */
  private Solid strap() {
    double apartMm = place.apartMm();
    double lengthMm = apartMm + 2 * StrapPlace.PAST_EYE_MM;
    Outline webbing = Prism.rectangle(lengthMm, StrapPlace.WIDTH_MM);
    List<RoundHole> eyes =
        List.of(
            new RoundHole(new Point2(-apartMm / 2, 0), StrapPlace.HOLE_MM),
            new RoundHole(new Point2(apartMm / 2, 0), StrapPlace.HOLE_MM));
    return Prism.plate(new Outline(webbing.outer(), List.copyOf(eyes)), StrapPlace.THICKNESS_MM);
  }

  /** Flat on the front or the rear face of both tabs. */
  private Place strapAt(boolean left, boolean front) {
    Point3 upper = place.upper().onSide(left);
    Point3 lower = place.lower().onSide(left);
    Vector3 along = lower.to(upper).normalized();
    double faceMm = (front ? 1 : -1) * place.plateMm() / 2;
    return Place.lying(
        lower.midpoint(upper).plus(FORWARD.scaled(faceMm)),
        along,
        FORWARD.cross(along),
        FORWARD.scaled(front ? 1 : -1),
        StrapPlace.THICKNESS_MM);
  }

  private void addTabs(WorkPlan.Builder plan) {
    plan.add(
        new PlateNeed(
            place.railTab().plate(plate.title()),
            plate.key(),
            List.of(railHeld(true), railHeld(false)),
            Phrase.of(
                "upper eye of each limiting strap, {} off {}{}{} and {} above ground at ride",
                length(place.reachMm()),
                place.onNotchPlate() ? "the notch's " : "the rail's ",
                place.outside() ? "outer " : "inner ",
                place.onNotchPlate() ? "plate" : "face",
                length(place.upper().zMm()))));
    plan.add(
        new PlateNeed(
            place.tubeTab().plate(plate.title()),
            plate.key(),
            List.of(tubeHeld(true), tubeHeld(false)),
            Phrase.of(
                "lower eye of each limiting strap, {} above the axle tube and {} from"
                    + " the centre plane; so far off the rail that it passes the upper tab in"
                    + " bump",
                length(place.tubeHoleMm()),
                length(place.lower().yMm()))));
  }

  private Held railHeld(boolean left) {
    return new Held(side(left), Assembly.FRAME, middle(railPlane(left)));
  }

  private Held tubeHeld(boolean left) {
    return new Held(side(left), Assembly.AXLE, middle(tubePlane(left)));
  }

  /** The thickness goes both ways from the plane. */
  private Place middle(Place plane) {
    return plane.shifted(0, 0, -place.plateMm() / 2);
  }

  private Place railPlane(boolean left) {
    return Place.of(place.railFoot().onSide(left), UP, away(left));
  }

  private Place tubePlane(boolean left) {
    return Place.of(place.tubeFoot().onSide(left), new Vector3(0, 1, 0), UP);
  }

  private static String tabId(ShockTab tab, boolean left) {
    return Held.id(tab.name(), side(left));
  }

  private void addBolts(WorkPlan.Builder plan) {
    List<Bolting> boltings = new ArrayList<>();
    double frontMm = place.plateMm() / 2 + StrapPlace.THICKNESS_MM;
    for (boolean left : SIDES) {
      for (boolean upper : new boolean[] {true, false}) {
        Point3 eye = (upper ? place.upper() : place.lower()).onSide(left);
        List<String> through = new ArrayList<>();
        through.add(strapId(left, true));
        through.add(tabId(upper ? place.railTab() : place.tubeTab(), left));
        if (fit.perSide() == 2) {
          through.add(strapId(left, false));
        }
        boltings.add(
            new Bolting(
                new Held(
                    side(left) + (upper ? " upper" : " lower"),
                    upper ? Assembly.FRAME : Assembly.AXLE,
                    Place.along(eye.plus(FORWARD.scaled(frontMm)), FORWARD.scaled(-1))),
                through));
      }
    }
    plan.add(
        new BoltNeed(
            BoltSizes.of(catalog.bolts().values()).of(StrapPlace.BOLT_MM).key(),
            place.plateMm() + fit.perSide() * StrapPlace.THICKNESS_MM,
            boltings,
            "limiting strap eyes",
            Phrase.of(
                "one an eye through {} of {} and a tab of {}",
                fit.perSide() == 1 ? "the strap's end" : "the ends of both straps",
                length(StrapPlace.THICKNESS_MM),
                length(place.plateMm()))));
  }

  private void addWelds(WorkPlan.Builder plan) {
    List<SeamRun> onRail = new ArrayList<>();
    List<SeamRun> onTube = new ArrayList<>();
    for (boolean left : SIDES) {
      String rail =
          place.onNotchPlate()
              ? VehicleParts.notchSidePlate(left, place.outside())
              : VehicleParts.rail(left);
      onRail.addAll(foot(place.railTab(), left, rail, railPlane(left)));
      onTube.addAll(foot(place.tubeTab(), left, VehicleParts.AXLE_TUBE, tubePlane(left)));
    }
    double tubeWallMm = layout.chassis().axle().tubeWallMm();
    weld(plan, place.railTab(), "rail", place.railWallMm(), WeldPosition.VERTICAL, onRail);
    weld(plan, place.tubeTab(), "axle tube", tubeWallMm, WeldPosition.HORIZONTAL, onTube);
  }

  private List<SeamRun> foot(ShockTab tab, boolean left, String onto, Place plane) {
    return TabFoot.runs(tabId(tab, left), onto, plane, StrapPlace.FOOT_MM, place.plateMm());
  }

  private void weld(
      WorkPlan.Builder plan,
      ShockTab tab,
      String onto,
      double wallMm,
      WeldPosition position,
      List<SeamRun> runs) {
    plan.add(
        WeldSeam.along(
            tab.name() + " to " + onto,
            FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(place.plateMm(), wallMm))),
            runs,
            position,
            WeldPlace.VEHICLE,
            Phrase.of("foot of two tabs, both faces")));
  }
}
