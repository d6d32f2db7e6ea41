package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.json.GltfScene;
import trammel.assembly.Assembly;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.planning.fitup.RailFoot;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * Facts that hold for a finished vehicle whatever is built into it.
 *
 * @param plan what the job asks for
 * @param assembly what stands there when it is done
 * @param rails its rails
 * @param fittedMm what parts that are welded to each other may gap or overlap (mm)
 */
record AssemblyFacts(WorkPlan plan, Assembly assembly, Rails rails, double fittedMm) {
  private static final double STEEL_KG_PER_MM3 = 7.85e-6;

  /**
   * A weld fills 1/16 in, and 1/32 more where a leaning plate saddles a level tube or a square one
   * meets a rail that tapers.
   */
  static final double ROOT_MM = 2.5;

  /**
   * Parts joined by fillet welds may be 3/16 in apart at most, the leg then larger by what is over
   * 1/16 in: AWS D1.1, Structural Welding Code - Steel, the clause on assembly of fillet welds,
   * from memory. What overlaps by as much is ground off: common practice, no source.
   */
  static final double FITTED_MM = 3 * 25.4 / 16;

  /** A rolled corner stands off by its radius, two walls of 3/16. */
  private static final double ROLLED_CORNER_MM = 10;

  /** Surfaces are looked at in points this far apart. */
  private static final double SPACING_MM = 8;

  void everythingHangsTogether() {
    List<Set<String>> groups = assembly.groups();
    assertEquals(1, groups.size(), () -> "these do not hold to each other: " + groups);
  }

  /** Read anew from the file that others open: volume, weight, middle and length of seams. */
  void aFileOfTheSceneWeighsWhatTheListsSay() throws IOException {
    GltfScan scan = new GltfScan(GltfScene.text(assembly, new QuantityPrinter(UnitSystem.US)));
    double massKg = 0;
    double[] moment = new double[3];
    for (PlacedPart part : assembly.parts()) {
      GltfScan.Item item = scan.items().get(part.id());
      assertEquals(part.carrier(), item.body());
      double volumeMm3 = part.solid().volumeMm3();
      assertEquals(volumeMm3, 1e9 * item.volumeM3(), Solid.MESH_SHARE * volumeMm3, part.id());
      if (part.kind().added()) {
        massKg += part.massKg();
        for (int i = 0; i < 3; i++) {
          moment[i] += part.massKg() * item.centre()[i];
        }
      }
    }
    assertEquals(assembly.addedKg(), massKg, 1e-9);
    Point3 centre = assembly.addedCentre().orElseThrow();
    // Left, up and forward of the vehicle are the file's x, y and z in metres.
    assertEquals(centre.yMm(), 1000 * moment[0] / massKg, 1);
    assertEquals(centre.zMm(), 1000 * moment[1] / massKg, 1);
    assertEquals(centre.xMm(), 1000 * moment[2] / massKg, 1);
    double listedMm = plan.welds().stream().mapToDouble(w -> w.totalLengthMm()).sum();
    double drawnMm = 0;
    for (PlacedSeam seam : assembly.seams()) {
      drawnMm += 1000 * scan.items().get(seam.id()).lineM();
    }
    assertEquals(listedMm, drawnMm, 1e-3 * listedMm);
  }

  /** Plates by the area of their outlines: the plate list's weight. */
  void platesWeighWhatTheirOutlinesSay() {
    double listedKg = 0;
    for (PlateNeed need : plan.plates()) {
      if (need.stays()) {
        listedKg +=
            need.quantity()
                * need.plate().outline().areaMm2()
                * need.plate().thicknessMm()
                * STEEL_KG_PER_MM3;
      }
    }
    double placedKg =
        assembly.parts().stream()
            .filter(part -> part.kind() == PartKind.PLATE)
            .mapToDouble(PlacedPart::massKg)
            .sum();
    assertEquals(listedKg, placedKg, 1e-3 * listedKg);
  }

  void everyWeldLiesOnWhatItJoins() {
    Map<String, Surface> surfaces = surfaces();
    List<String> off = new ArrayList<>();
    for (PlacedSeam seam : assembly.seams()) {
      addIfOff(off, seam, seam.run().parts(), assembly, surfaces);
      // Over a notch and over the mouth of a channel these are trimmed to what is there.
      if (seam.run().parts().stream().noneMatch(AssemblyFacts::closesTheRail)) {
        addIfOff(off, seam, seam.run().onto(), assembly, surfaces);
      }
    }
    assertTrue(off.isEmpty(), () -> String.join("\n", off));
  }

  private void addIfOff(
      List<String> off,
      PlacedSeam seam,
      List<String> parts,
      Assembly assembly,
      Map<String, Surface> surfaces) {
    boolean rolled =
        parts.stream()
            .anyMatch(
                id -> {
                  PlacedPart part = assembly.part(id).orElseThrow();
                  return part.kind() == PartKind.TUBE && part.solid() instanceof Prism;
                });
    double worstMm = 0;
    for (Point3 point : seam.run().path().points(0.1)) {
      double leastMm = Double.POSITIVE_INFINITY;
      for (String part : parts) {
        leastMm = Math.min(leastMm, surfaces.get(part).distanceMm(point));
      }
      worstMm = Math.max(worstMm, leastMm);
    }
    if (worstMm > (rolled ? ROLLED_CORNER_MM : fittedMm)) {
      off.add(seam.id() + " runs " + worstMm + " mm off " + parts);
    }
  }

  private Map<String, Surface> surfaces() {
    Map<String, Surface> surfaces = new HashMap<>();
    assembly.parts().forEach(part -> surfaces.put(part.id(), new Surface(part)));
    return surfaces;
  }

  /**
   * Edges by which a part is set are those between which its own welds on the rail run, measured
   * along the rail's outer face from over the axle.
   */
  void edgesOnTheRailSheetAreThoseOfTheWelds() {
    int looked = 0;
    for (boolean left : new boolean[] {true, false}) {
      double side = left ? 1 : -1;
      Point3 mark = new Point3(0, side * rails.outerFaceMm(0), rails.undersideMm(0));
      Point3 ahead = new Point3(100, side * rails.outerFaceMm(100), rails.undersideMm(100));
      Vector3 along = mark.to(ahead).normalized();
      for (RailFoot foot : RailFoot.of(assembly, rails, left)) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (PlacedSeam seam : assembly.seams()) {
          boolean onlyThis = seam.run().parts().equals(List.of(foot.part()));
          if (onlyThis && seam.run().onto().contains(foot.on())) {
            for (Point3 point : seam.run().path().points(0.1)) {
              least = Math.min(least, mark.to(point).dot(along));
              most = Math.max(most, mark.to(point).dot(along));
            }
          }
        }
        if (least <= most && !closesTheRail(foot.part())) {
          looked++;
          assertEquals(least, foot.rearMm(), ROLLED_CORNER_MM / 2, foot.part());
          assertEquals(most, foot.frontMm(), ROLLED_CORNER_MM / 2, foot.part());
        }
      }
    }
    assertTrue(looked > 1, "parts looked at: " + looked);
  }

  /** Each plate that a bolt goes through has a round hole about its axis, within the clearance. */
  void holesOfOneBoltLineUp() {
    List<String> off = new ArrayList<>();
    for (BoltNeed need : plan.bolts()) {
      for (Bolting bolting : need.places()) {
        double platesMm = 0;
        for (String id : bolting.through()) {
          PlacedPart part = assembly.part(id).orElseThrow();
          if (part.kind() == PartKind.PLATE) {
            Prism plate = (Prism) part.solid();
            platesMm += plate.lengthMm();
            double missMm = missMm(part.place(), plate, bolting.held().place());
            if (missMm > 0.2) {
              off.add("the hole of " + id + " is " + missMm + " mm off its bolt");
            }
          }
        }
        if (platesMm > need.gripMm() + 1e-6) {
          off.add("the plates at " + need.where() + " are thicker than their bolt's grip");
        }
      }
    }
    assertTrue(off.isEmpty(), () -> String.join("\n", off));
  }

  /** Distance of the nearest hole's axis from a bolt's, where it passes the plate's two faces. */
  private static double missMm(Place plate, Prism solid, Place bolt) {
    double least = Double.POSITIVE_INFINITY;
    for (Hole hole : solid.section().holes()) {
      if (hole instanceof RoundHole round) {
        double worst = 0;
        for (double z : new double[] {0, solid.lengthMm()}) {
          Point3 middle = plate.point(round.centre().xMm(), round.centre().yMm(), z);
          Point3 seen = bolt.own(middle);
          worst = Math.max(worst, Math.hypot(seen.xMm(), seen.yMm()));
        }
        least = Math.min(least, worst);
      }
    }
    return least;
  }

  /**
   * What is not looked at: tools, which come off again; exhaust, tank and floor, which are moved
   * where they are in the way; and the plates on the sides of a notch, to which whatever stands on
   * the rail there is trimmed on the vehicle.
   */
  private static boolean fittedOnTheVehicle(PlacedPart part) {
    boolean movedAway =
        part.kind() == PartKind.VEHICLE
            && part.carrier().equals(Assembly.FRAME)
            && !part.id().endsWith(" rail");
    boolean besideTheNotch = part.id().startsWith(VehicleParts.NOTCH_SIDE_PLATE + ",");
    return part.kind() == PartKind.TOOL || movedAway || besideTheNotch;
  }

  private static boolean closesTheRail(String id) {
    return id.startsWith("notch ") || id.contains("boxing");
  }

  /**
   * Pairs that a mate holds, and what one bolt clamps together: how near to its eye a shock's body
   * begins, between the plates of its mount, the catalog does not say.
   */
  private static Set<List<String>> held(Assembly assembly) {
    Set<List<String>> held = new HashSet<>();
    Map<String, List<String>> clamped = new HashMap<>();
    for (Mate mate : assembly.mates()) {
      held.add(List.of(mate.part(), mate.onto()));
      held.add(List.of(mate.onto(), mate.part()));
      if (mate.kind() == Mate.Kind.BOLTED) {
        clamped.computeIfAbsent(mate.part(), bolt -> new ArrayList<>()).add(mate.onto());
      }
    }
    for (List<String> stack : clamped.values()) {
      for (String one : stack) {
        stack.forEach(other -> held.add(List.of(one, other)));
      }
    }
    return held;
  }

  /**
   * Nothing stands in the same place as something else, but for what a bolt or press fit holds, by
   * points all over the surfaces.
   */
  Set<Set<String>> cuts() {
    Map<String, Surface> surfaces = surfaces();
    Set<List<String>> held = held(assembly);
    Set<Set<String>> cuts = new HashSet<>();
    List<PlacedPart> parts = assembly.parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = 0; j < i; j++) {
        PlacedPart a = parts.get(i);
        PlacedPart b = parts.get(j);
        boolean ofTheVehicle = a.kind() == PartKind.VEHICLE && b.kind() == PartKind.VEHICLE;
        if (ofTheVehicle
            || fittedOnTheVehicle(a)
            || fittedOnTheVehicle(b)
            || held.contains(List.of(a.id(), b.id()))) {
          continue;
        }
        Surface one = surfaces.get(a.id());
        Surface other = surfaces.get(b.id());
        double allowedMm = isWelded(a.id(), b.id()) ? fittedMm : ROOT_MM;
        if (one.near(other, allowedMm)
            && Math.max(one.depthIn(other, SPACING_MM), other.depthIn(one, SPACING_MM))
                > allowedMm) {
          cuts.add(Set.of(a.id(), b.id()));
        }
      }
    }
    return cuts;
  }

  private boolean isWelded(String one, String other) {
    return assembly.seams().stream()
        .map(PlacedSeam::run)
        .anyMatch(
            run ->
                run.parts().contains(one) && run.onto().contains(other)
                    || run.parts().contains(other) && run.onto().contains(one));
  }

  /** Plates that close one rail stand side by side: where they would meet there is one. */
  void platesThatCloseARailDoNotOverlap() {
    List<PlacedPart> plates =
        assembly.parts().stream().filter(part -> part.id().contains("boxing")).toList();
    for (PlacedPart one : plates) {
      for (PlacedPart other : plates) {
        boolean sameRail = one.place().origin().yMm() * other.place().origin().yMm() > 0;
        if (one != other && sameRail) {
          double apartMm = Math.abs(one.centre().xMm() - other.centre().xMm());
          double halvesMm = (runMm(one) + runMm(other)) / 2;
          assertTrue(apartMm > halvesMm, () -> one.id() + " and " + other.id());
        }
      }
    }
  }

  private static double runMm(PlacedPart plate) {
    return ((Prism) plate.solid()).section().bounds().widthMm();
  }
}
