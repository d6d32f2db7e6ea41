package trammel.planning.vehicle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.SeamRun;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.material.BoltSize;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.BoughtPiece;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.trade.steel.Steel;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/**
 * The vehicle with all its work done, read off the finished plan and the layout: the same plates,
 * tubes, parts and welds that the lists count, each where its place says.
 */
public final class FinishedVehicle {
  /** A hexagon's corners are 0.87 bolt diameters from its middle, about (ASME B18.2.1, 1.5 d). */
  private static final double HEAD_RADIUS = 0.8;

  private static final double HEAD_HEIGHT = 0.63;
  private static final double WASHER_RADIUS = 1.0;

  /** Bodies that touch by rounding are not apart (mm). */
  private static final double TOUCH_MM = 0.5;

  private final Layout layout;
  private final Catalog catalog;
  private final List<PlacedPart> parts = new ArrayList<>();
  private final List<PlacedSeam> seams = new ArrayList<>();
  private final Set<String> takenBySeams = new HashSet<>();
  private final List<Mate> mates = new ArrayList<>();

  private FinishedVehicle(Layout layout, Catalog catalog) {
    this.layout = layout;
    this.catalog = catalog;
  }

  /**
   * The assembly of a job.
   *
   * @param layout the finished layout
   * @param catalog what the plan's keys stand for
   * @param plan all of its work
   * @throws IllegalArgumentException if the plan names a part that it does not place
   */
  public static Assembly of(Layout layout, Catalog catalog, WorkPlan plan) {
    FinishedVehicle finished = new FinishedVehicle(layout, catalog);
    VehicleBodies vehicle = new VehicleBodies(layout, catalog);
    finished.parts.addAll(vehicle.parts());
    finished.mates.addAll(vehicle.mates());
    plan.plates().forEach(finished::add);
    plan.tubes().forEach(finished::add);
    plan.parts().forEach(finished::add);
    plan.bolts().forEach(finished::add);
    plan.welds().forEach(finished::add);
    return new Assembly(bodies(layout), finished.parts, finished.seams, finished.mates);
  }

  /** The frame, the axle, each further body, bar, spring and shock by its name, and the shaft. */
  private static List<String> bodies(Layout layout) {
    List<String> bodies = new ArrayList<>(List.of(Assembly.FRAME, Assembly.AXLE));
    layout.guide().bodies().stream().map(FurtherBody::name).forEach(bodies::add);
    layout.bars().stream().map(Bar::name).forEach(bodies::add);
    layout.springs().stream().map(SpringUnit::name).forEach(bodies::add);
    layout.shocks().stream().map(ShockUnit::name).forEach(bodies::add);
    bodies.add(VehicleParts.SHAFT);
    return bodies;
  }

  private void add(PlateNeed need) {
    Solid solid = need.solid();
    double massKg = solid.volumeMm3() * Steel.KG_PER_MM3;
    PartKind kind = need.stays() ? PartKind.PLATE : PartKind.TOOL;
    for (Held held : need.places()) {
      String name = need.plate().name();
      parts.add(placed(held.id(name), name, kind, held, solid, massKg, need.why()));
      if (!need.stays()) {
        mates.add(new Mate(Mate.Kind.OF_THE_VEHICLE, held.id(name), VehicleParts.rail(true), 0));
      }
    }
  }

  private static PlacedPart placed(
      String id, String name, PartKind kind, Held held, Solid solid, double massKg, Phrase why) {
    return new PlacedPart(id, name, kind, held.carrier(), held.place(), solid, massKg, why);
  }

  private void add(TubeNeed need) {
    double massKg = need.solid().volumeMm3() * Steel.KG_PER_MM3;
    for (Held held : need.places()) {
      String id = held.id(need.name());
      parts.add(placed(id, need.name(), PartKind.TUBE, held, need.solid(), massKg, need.why()));
    }
  }

  private void add(PartNeed need) {
    for (BoughtPiece piece : need.pieces()) {
      parts.add(
          new PlacedPart(
              piece.id(),
              catalog.items().get(need.itemKey()).title(),
              PartKind.BOUGHT,
              piece.carrier(),
              piece.place(),
              piece.solid(),
              catalog.items().get(need.itemKey()).massKg(),
              need.why()));
      for (String onto : piece.holdsTo()) {
        mates.add(new Mate(Mate.Kind.IN_CONTACT, piece.id(), onto, TOUCH_MM));
      }
    }
  }

  private void add(BoltNeed need) {
    BoltSize size = catalog.bolt(need.boltKey());
    Solid solid = bolt(size, need.gripMm());
    double massKg = solid.volumeMm3() * Steel.KG_PER_MM3;
    for (Bolting bolting : need.places()) {
      String id = bolting.held().id("bolt of " + need.where());
      parts.add(placed(id, size.title(), PartKind.BOLT, bolting.held(), solid, massKg, need.why()));
      for (String through : bolting.through()) {
        mates.add(new Mate(Mate.Kind.BOLTED, id, through, size.diameterMm()));
      }
    }
  }

  /** Head, washer, shank, washer and nut; the grip from z = 0 on. */
  private static Solid bolt(BoltSize size, double gripMm) {
    double d = size.diameterMm();
    double washerMm = size.washerMm();
    double headMm = -washerMm - HEAD_HEIGHT * d;
    double nutMm = gripMm + washerMm + size.nutHeightMm();
    double endMm = Math.max(size.choose(gripMm).lengthMm() - washerMm, nutMm + 0.1);
    return Turned.through(
        0,
        headMm,
        HEAD_RADIUS * d,
        headMm,
        HEAD_RADIUS * d,
        -washerMm,
        WASHER_RADIUS * d,
        -washerMm,
        WASHER_RADIUS * d,
        0,
        d / 2,
        0,
        d / 2,
        gripMm,
        WASHER_RADIUS * d,
        gripMm,
        WASHER_RADIUS * d,
        gripMm + washerMm,
        HEAD_RADIUS * d,
        gripMm + washerMm,
        HEAD_RADIUS * d,
        nutMm,
        d / 2,
        nutMm,
        d / 2,
        endMm,
        0,
        endMm);
  }

  private void add(WeldSeam seam) {
    int number = 0;
    for (WeldRun run : seam.runs()) {
      if (!(run instanceof SeamRun placed)) {
        throw new IllegalArgumentException(
            "The weld '" + seam.name() + "' has no place. Give the path that it runs along.");
      }
      String id;
      do {
        number++;
        id = seam.name() + (seam.count() > 1 || number > 1 ? " " + number : "");
      } while (!takenBySeams.add(id));
      seams.add(
          new PlacedSeam(id, seam.name(), placed, seam.joint().sizeMm(), seam.position().title()));
    }
  }
}
