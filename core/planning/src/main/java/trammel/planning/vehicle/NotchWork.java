package trammel.planning.vehicle;

import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.percent;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Limit;
import trammel.engine.checks.NotchedRail;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.PlatedNotch;
import trammel.planning.catalog.Catalog;
import trammel.planning.options.MountOptions;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.NotchPlate;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/**
 * The notch in each rail over the axle: an arc about the tube at full bump, lined by a strip, with
 * a side plate on each side of the rail. Side plates that rise above the rail are joined over it by
 * a second strip.
 */
final class NotchWork {
  private static final String NAME = VehicleParts.NOTCH_SIDE_PLATE;
  private static final String STRIP = NAME + " strip";
  private static final String TOP_STRIP = NAME + " top strip";
  private static final double INCH_MM = 25.4;

  /** Plates of notches are 3/16 to 3/8 in thick: common practice, no source. */
  private static final double THINNEST_MM = 3 * INCH_MM / 16;

  private static final double THICKEST_MM = 3 * INCH_MM / 8;
  private static final double ROUNDING_MM = 0.1;

  private static final double LEAST_RING_MM = INCH_MM / 2;

  /** Air between tube and rail at full bump where the catalog has no limit, 1/2 in. */
  private static final double USUAL_AIR_MM = INCH_MM / 2;

  private static final int RAILS = 2;
  private static final boolean[] BOTH = {true, false};

  private final Chassis chassis;
  private final Catalog catalog;

  NotchWork(Layout layout, Catalog catalog) {
    chassis = layout.chassis();
    this.catalog = catalog;
  }

  void addTo(WorkPlan.Builder plan) {
    if (chassis.rails().notchDepthMm() > 0) {
      PlateMaterial plate = plate();
      add(plan, plate, shape(plate.form().thicknessMm()));
    }
  }

  /**
   * The plate that the layout was judged with; where it names none, the thinnest that gives the
   * rail back its section modulus, else the thickest.
   */
  private PlateMaterial plate() {
    if (chassis.rails().notchSidePlateMm() > 0) {
      return MountOptions.nearestPlate(catalog, chassis.rails().notchSidePlateMm());
    }
    PlateMaterial chosen = MountOptions.nearestPlate(catalog, THINNEST_MM);
    for (PlateMaterial plate : byThickness()) {
      double thicknessMm = plate.form().thicknessMm();
      if (thicknessMm > THINNEST_MM - ROUNDING_MM && thicknessMm < THICKEST_MM + ROUNDING_MM) {
        chosen = plate;
        if (modulusRatio(shape(thicknessMm)) >= 1) {
          return chosen;
        }
      }
    }
    return chosen;
  }

  private List<PlateMaterial> byThickness() {
    List<PlateMaterial> plates = new ArrayList<>(catalog.plates().values());
    plates.sort(Comparator.comparingDouble(plate -> plate.form().thicknessMm()));
    return plates;
  }

  private double airMm() {
    Limit limit = catalog.limits().get("axle-to-rail");
    return limit == null ? USUAL_AIR_MM : limit.goodMin();
  }

  /** The shape that the plates are cut to. */
  NotchPlate shape() {
    return shape(plate().form().thicknessMm());
  }

  /** The rail is cut deeper than the notch that the tube sees by the strip's thickness. */
  NotchPlate shape(double thicknessMm) {
    Rails rails = chassis.rails();
    double cutMm = rails.notchDepthMm() + thicknessMm;
    double leftMm = rails.depthMm() - cutMm;
    if (leftMm < LEAST_RING_MM) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the notch for {} of bump is cut {} into a rail of {} and leaves {}; it"
                  + " must leave {} or more. Raise the frame at ride or ask for less bump.",
              length(chassis.travel().bumpMm()),
              length(cutMm),
              length(rails.depthMm()),
              length(leftMm),
              length(LEAST_RING_MM)));
    }
    PlatedNotch notch = NotchedRail.notch(plated(thicknessMm));
    return new NotchPlate(
        NAME,
        thicknessMm,
        notch.radiusMm(),
        notch.cutDepthMm(),
        notch.ringMm(),
        notch.flatMm(),
        notch.rootMm(),
        notch.stripWidthMm());
  }

  /** The rails with their notch as these plates line it. */
  private Rails plated(double thicknessMm) {
    Rails rails = chassis.rails();
    double radiusMm = chassis.axle().tubeRadiusMm() + airMm() + thicknessMm;
    return rails
        .withNotch(rails.notchDepthMm(), thicknessMm, thicknessMm, radiusMm)
        .withNotchRise(rails.notchRiseMm());
  }

  private void add(WorkPlan.Builder plan, PlateMaterial plate, NotchPlate shape) {
    Phrase why = reason(shape);
    plan.add(
        new PlateNeed(
            shape.plate(plate.title()),
            plate.key(),
            sidePlaces(shape),
            Phrase.of("{}; both sides of each rail", why)));
    plan.add(
        new PlateNeed(
                shape.strip(plate.title()),
                plate.key(),
                List.of(stripPlace(shape, true), stripPlace(shape, false)),
                Phrase.of(
                    "lines the cut, rolled to {} outside radius, as wide as the rail",
                    length(shape.cutRadiusMm())))
            .formedTo(Prism.plate(shape.rolledStrip(), shape.stripWidthMm())));
    double wallMm = chassis.rails().wallMm();
    FilletWeld fillet =
        FilletWeld.ofLeg(FilletLegs.smallestMm(Math.min(wallMm, shape.thicknessMm())));
    weld(
        plan,
        "notch strip to side plates",
        fillet,
        toSides(STRIP, shape.cut()),
        Phrase.of("both edges of the strip along the arc of each rail"));
    weld(
        plan,
        "notch strip to flange",
        fillet,
        endsToRail(shape, STRIP, shape.openingMm() / 2, 0),
        Phrase.of("both ends of the strip across the lower flange of each rail"));
    weld(
        plan,
        "notch side plate to rail",
        fillet,
        sideToRail(shape),
        isRaised()
            ? Phrase.of(
                "outer edge and flats of each side plate, and the rail's top where it rises above it")
            : Phrase.of("outer edge and flats of each side plate"));
    plan.add(new OperationNeed("notch-rail", RAILS, "2 rails", why));
    int plates = isRaised() ? 4 : 3;
    plan.add(
        new OperationNeed(
            "dress-plate",
            plates * RAILS,
            plates * RAILS + " plates",
            Phrase.of("side plates and strips of notches")));
    if (isRaised()) {
      addTopStrips(plan, plate, shape, fillet);
    }
  }

  private boolean isRaised() {
    return chassis.rails().notchRiseMm() > 0;
  }

  private void addTopStrips(
      WorkPlan.Builder plan, PlateMaterial plate, NotchPlate shape, FilletWeld fillet) {
    double depthMm = chassis.rails().depthMm();
    Phrase why =
        Phrase.of(
            "joins the side plates {} above the rail's top", length(chassis.rails().notchRiseMm()));
    plan.add(
        new PlateNeed(
                shape.topStrip(plate.title(), depthMm),
                plate.key(),
                List.of(stripPlace(shape, true), stripPlace(shape, false)),
                Phrase.of(
                    "{}, rolled to {} outside radius, as wide as the rail",
                    why,
                    length(shape.topStrip(depthMm).radiusMm())))
            .formedTo(Prism.plate(shape.rolledTopStrip(depthMm), shape.stripWidthMm())));
    weld(
        plan,
        "notch top strip to side plates",
        fillet,
        toSides(TOP_STRIP, shape.topStrip(depthMm)),
        Phrase.of("both edges of the strip along the side plates' upper edge"),
        WeldPosition.FLAT);
    weld(
        plan,
        "notch top strip to rail",
        fillet,
        endsToRail(shape, TOP_STRIP, shape.halfUnderTopStripMm(depthMm), depthMm),
        Phrase.of("both ends of the strip across the top of each rail"),
        WeldPosition.FLAT);
    plan.add(new OperationNeed("raise-notch", RAILS, "2 rails", why));
  }

  /** The rail's outer or inner face over the axle: x along the rail, y up, from its underside. */
  private Place face(boolean left, boolean outer) {
    double side = left ? 1 : -1;
    Point3 rear = faceAt(-1, side);
    Point3 front = faceAt(1, side);
    Vector3 along = rear.to(front).normalized();
    Vector3 up = new Vector3(0, 0, 1);
    Place face = Place.of(faceAt(0, side), along, up.minus(along.scaled(up.dot(along))));
    // Square across the rail, as its plates are.
    return outer ? face : face.shifted(0, 0, side * chassis.rails().flangeMm());
  }

  private Point3 faceAt(double forwardMm, double side) {
    Rails rails = chassis.rails();
    return new Point3(forwardMm, side * rails.outerFaceMm(forwardMm), rails.undersideMm(forwardMm));
  }

  private static String mark(boolean left, boolean outer) {
    return (left ? "left" : "right") + (outer ? " outer" : " inner");
  }

  private List<Held> sidePlaces(NotchPlate shape) {
    List<Held> places = new ArrayList<>(2 * RAILS);
    for (boolean left : BOTH) {
      for (boolean outer : BOTH) {
        Place face = face(left, outer);
        Vector3 away = new Vector3(0, left == outer ? 1 : -1, 0);
        places.add(
            new Held(
                mark(left, outer),
                Assembly.FRAME,
                Place.lying(face.origin(), face.x(), face.y(), away, shape.thicknessMm())));
      }
    }
    return places;
  }

  private Held stripPlace(NotchPlate shape, boolean left) {
    Place face = face(left, true);
    Vector3 inward = face.z().scaled(left ? 1 : -1);
    return new Held(
        left ? "left" : "right",
        Assembly.FRAME,
        Place.lying(face.origin(), face.x(), face.y(), inward, shape.stripWidthMm()));
  }

  private static String sideId(boolean left, boolean outer) {
    return VehicleParts.notchSidePlate(left, outer);
  }

  private static String stripId(String strip, boolean left) {
    return Held.id(strip, left ? "left" : "right");
  }

  /** Id of what is over the axle tube: the strip that lines a notch, or the rail. */
  static String over(Rails rails, boolean left) {
    return rails.notchDepthMm() > 0 ? stripId(STRIP, left) : VehicleParts.rail(left);
  }

  /** The strip's outer round meets the side plates' edge: the root runs there. */
  private List<SeamRun> toSides(String strip, Arc meets) {
    List<SeamRun> runs = new ArrayList<>(2 * RAILS);
    for (boolean left : BOTH) {
      for (boolean outer : BOTH) {
        runs.add(
            new SeamRun(
                stripId(strip, left),
                sideId(left, outer),
                new FlatPath(face(left, outer), List.of(meets))));
      }
    }
    return runs;
  }

  /** Both ends of a strip across the rail, at a height above its underside. */
  private List<SeamRun> endsToRail(
      NotchPlate shape, String strip, double halfLengthMm, double upMm) {
    List<SeamRun> runs = new ArrayList<>(2 * RAILS);
    for (boolean left : BOTH) {
      Place face = face(left, true);
      Vector3 across = face.z().scaled((left ? 1 : -1) * shape.stripWidthMm());
      for (double halfMm : new double[] {-halfLengthMm, halfLengthMm}) {
        Point3 start = face.point(halfMm, upMm, 0);
        runs.add(
            new SeamRun(
                stripId(strip, left),
                VehicleParts.rail(left),
                FlatPath.between(start, start.plus(across))));
      }
    }
    return runs;
  }

  private List<SeamRun> sideToRail(NotchPlate shape) {
    List<Edge> edges = shape.weldedTo(chassis.rails().depthMm());
    List<SeamRun> runs = new ArrayList<>(2 * RAILS);
    for (boolean left : BOTH) {
      for (boolean outer : BOTH) {
        runs.add(
            new SeamRun(
                sideId(left, outer),
                VehicleParts.rail(left),
                new FlatPath(face(left, outer), edges)));
      }
    }
    return runs;
  }

  private static void weld(
      WorkPlan.Builder plan, String name, FilletWeld fillet, List<SeamRun> runs, Phrase why) {
    weld(plan, name, fillet, runs, why, WeldPosition.OVERHEAD);
  }

  private static void weld(
      WorkPlan.Builder plan,
      String name,
      FilletWeld fillet,
      List<SeamRun> runs,
      Phrase why,
      WeldPosition position) {
    plan.add(WeldSeam.along(name, fillet, runs, position, WeldPlace.VEHICLE, why));
  }

  /** The notch that the plates line; empty where there is none. */
  Optional<NotchPlate> notch() {
    return chassis.rails().notchDepthMm() > 0
        ? Optional.of(shape(plate().form().thicknessMm()))
        : Optional.empty();
  }

  private Phrase reason(NotchPlate shape) {
    Rails rails = chassis.rails();
    double openMm =
        rails.undersideMm(0) - chassis.axleCentre().zMm() - chassis.axle().tubeRadiusMm();
    return Phrase.of(
        "{} over the axle tube at ride, {} of bump and {} of air ask for a notch"
            + " {} deep in the clear; the rail is cut {} deep and {} long on a radius"
            + " of {} and keeps {} of its {}{}, with the plates {} of its section"
            + " modulus where it is least",
        length(openMm),
        length(chassis.travel().bumpMm()),
        length(airMm()),
        length(rails.notchDepthMm()),
        length(shape.depthMm()),
        length(shape.openingMm()),
        length(shape.cutRadiusMm()),
        length(rails.depthMm() - shape.depthMm()),
        length(rails.depthMm()),
        isRaised()
            ? Phrase.of("; the side plates rise {} above its top", length(rails.notchRiseMm()))
            : "",
        percent(modulusRatio(shape)));
  }

  /**
   * Section modulus of the rail where it is least along the notch over that of the rail as it was.
   */
  double modulusRatio(NotchPlate shape) {
    Rails rails = plated(shape.thicknessMm());
    return Math.rint(1000 * NotchedRail.weakest(rails, NotchedRail.Load.BENDING).share()) / 1000;
  }
}
