package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.app.json.GltfScene;
import trammel.assembly.Assembly;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.assembly.fit.Interference;
import trammel.assembly.fit.Overlap;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.fitup.RailFoot;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.plugins.airspring.AirSpringMount;
import trammel.plugins.antirollbar.AxleAntiRollBar;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.limitingstraps.LimitingStraps;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * Facts that hold for a finished vehicle whatever is built into it, on the demo jobs with limiting
 * straps added: one a side on the pickup, two a side on the sedan; the pickup has an anti-roll bar.
 */
class AssemblyIT {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog CATALOG = catalog();
  private static final double STEEL_KG_PER_MM3 = 7.85e-6;

  /**
   * A weld fills 1/16 in, and 1/32 more where a leaning plate saddles a level tube or a square one
   * meets a rail that tapers; a rolled corner stands off by its radius, two walls of 3/16.
   */
  private static final double ROOT_MM = 2.5;

  private static final double ROLLED_CORNER_MM = 10;

  /** Surfaces are looked at in points this far apart. */
  private static final double SPACING_MM = 8;

  /**
   * The pickup with a Watt's linkage, on coils: its rear arms take the place of the air springs.
   */
  private static final String ON_COILS = "pickup on watts-linkage";

  private static final Map<String, Finished> FINISHED = new HashMap<>();

  /** A job's plan and what stands there when it is done. */
  private record Finished(WorkPlan plan, Assembly assembly, Rails rails) {}

  private static Catalog catalog() {
    CatalogReader reader = CatalogReader.begin(CATALOGS.resolve("standard"));
    try {
      for (String plugin : List.of("limiting-straps", "anti-roll-bar")) {
        Path own = Path.of("../../plugins", plugin, "src/main/resources", PluginCatalog.FILE);
        assertEquals(
            Optional.empty(), reader.bring(new PluginCatalog(plugin, Files.readString(own))));
      }
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    }
    return reader.finish(List.of());
  }

  /** Both demo jobs, and one of them on each further linkage. */
  static Stream<String> jobs() {
    return Stream.of(
        "pickup", "sedan", "pickup on three-link-lateral", "sedan on torque-arm", ON_COILS);
  }

  private static JobDocument document(String job) {
    String[] words = job.split(" on ");
    String perSide = words[0].equals("sedan") ? "2" : "1";
    JobDocument demo =
        JobDocument.load(CATALOGS.resolve("demo").resolve(words[0] + ".yaml"))
            .withValue("chosen.additions.limiting-straps.per_side", perSide);
    if (job.equals("pickup")) {
      return demo.withValue("chosen.additions.anti-roll-bar", "{}");
    }
    if (words.length == 1) {
      return demo;
    }
    JobDocument other =
        demo.withValue("chosen.linkage", words[1]).withValue("chosen.linkage_options", "{}");
    return job.equals(ON_COILS) ? other.withValue("chosen.spring", "coil-spring") : other;
  }

  private static Finished finished(String job) {
    return FINISHED.computeIfAbsent(job, AssemblyIT::finish);
  }

  private static Finished finish(String job) {
    return finish(document(job));
  }

  private static Finished finish(JobDocument document) {
    Extensions extensions =
        new Extensions(
            OwnPlugins.linkages(),
            List.of(new AirSpringMount(), new CoilSpringMount()),
            List.of(new LimitingStraps(), new AxleAntiRollBar()));
    Draft draft = new Drafting(extensions, CATALOG).draft(JobReader.read(document), UnitSystem.US);
    WorkPlan plan = draft.work();
    QuantityPrinter print = new QuantityPrinter(UnitSystem.US);
    return new Finished(
        plan,
        FinishedVehicle.of(draft.layout(), CATALOG, plan, print),
        draft.layout().chassis().rails());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everythingHangsTogether(String job) {
    List<Set<String>> groups = finished(job).assembly().groups();
    assertEquals(1, groups.size(), () -> "these do not hold to each other: " + groups);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aFileOfTheSceneWeighsWhatTheListsSay(String job) throws IOException {
    Finished finished = finished(job);
    GltfScan scan = new GltfScan(GltfScene.text(finished.assembly()));
    double massKg = 0;
    double[] moment = new double[3];
    for (PlacedPart part : finished.assembly().parts()) {
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
    assertEquals(finished.assembly().addedKg(), massKg, 1e-9);
    Point3 centre = finished.assembly().addedCentre().orElseThrow();
    // Left, up and forward of the vehicle are the file's x, y and z in metres.
    assertEquals(centre.yMm(), 1000 * moment[0] / massKg, 1);
    assertEquals(centre.zMm(), 1000 * moment[1] / massKg, 1);
    assertEquals(centre.xMm(), 1000 * moment[2] / massKg, 1);
    double listedMm = finished.plan().welds().stream().mapToDouble(w -> w.totalLengthMm()).sum();
    double drawnMm = 0;
    for (PlacedSeam seam : finished.assembly().seams()) {
      drawnMm += 1000 * scan.items().get(seam.id()).lineM();
    }
    assertEquals(listedMm, drawnMm, 1e-3 * listedMm);
  }

  /** Plates by the area of their outlines: the plate list's weight. */
  @ParameterizedTest
  @MethodSource("jobs")
  void platesWeighWhatTheirOutlinesSay(String job) {
    Finished finished = finished(job);
    double listedKg = 0;
    for (PlateNeed need : finished.plan().plates()) {
      if (need.stays()) {
        listedKg +=
            need.quantity()
                * need.plate().outline().areaMm2()
                * need.plate().thicknessMm()
                * STEEL_KG_PER_MM3;
      }
    }
    double placedKg =
        finished.assembly().parts().stream()
            .filter(part -> part.kind() == PartKind.PLATE)
            .mapToDouble(PlacedPart::massKg)
            .sum();
    assertEquals(listedKg, placedKg, 1e-3 * listedKg);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyWeldLiesOnWhatItJoins(String job) {
    Assembly assembly = finished(job).assembly();
    Map<String, Surface> surfaces = surfaces(assembly);
    List<String> off = new ArrayList<>();
    for (PlacedSeam seam : assembly.seams()) {
      addIfOff(off, seam, seam.run().parts(), assembly, surfaces);
      // Over a notch and over the mouth of a channel these are trimmed to what is there.
      if (seam.run().parts().stream().noneMatch(AssemblyIT::closesTheRail)) {
        addIfOff(off, seam, seam.run().onto(), assembly, surfaces);
      }
    }
    assertTrue(off.isEmpty(), () -> String.join("\n", off));
  }

  private static void addIfOff(
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
    if (worstMm > (rolled ? ROLLED_CORNER_MM : ROOT_MM)) {
      off.add(seam.id() + " runs " + worstMm + " mm off " + parts);
    }
  }

  private static Map<String, Surface> surfaces(Assembly assembly) {
    Map<String, Surface> surfaces = new HashMap<>();
    assembly.parts().forEach(part -> surfaces.put(part.id(), new Surface(part)));
    return surfaces;
  }

  /**
   * Edges by which a part is set are those between which its own welds on the rail run, measured
   * along the rail's outer face from over the axle.
   */
  @ParameterizedTest
  @MethodSource("jobs")
  void edgesOnTheRailSheetAreThoseOfTheWelds(String job) {
    Finished finished = finished(job);
    Assembly assembly = finished.assembly();
    Rails rails = finished.rails();
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
  @ParameterizedTest
  @MethodSource("jobs")
  void holesOfOneBoltLineUp(String job) {
    Finished finished = finished(job);
    List<String> off = new ArrayList<>();
    for (BoltNeed need : finished.plan().bolts()) {
      for (Bolting bolting : need.places()) {
        double platesMm = 0;
        for (String id : bolting.through()) {
          PlacedPart part = finished.assembly().part(id).orElseThrow();
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

  /** Nothing stands in the same place as something else, but for what a bolt or press fit holds. */
  @ParameterizedTest
  @MethodSource("jobs")
  void nothingCutsIntoAnything(String job) {
    Assembly assembly = finished(job).assembly();
    Set<Set<String>> cuts = cuts(assembly);
    assertTrue(cuts.isEmpty(), cuts::toString);
    assertEquals(List.of(), Interference.of(assembly));
  }

  /** What points all over the surfaces of parts find, the check of them finds too. */
  @Test
  void partsThatCutIntoEachOtherAreFoundByTheCheck() {
    JobDocument inboard =
        JobDocument.load(CATALOGS.resolve("demo/pickup.yaml"))
            .withValue("chosen.spring_options", "{across: inboard}");
    Assembly assembly = finish(inboard).assembly();
    Set<Set<String>> found = new HashSet<>();
    for (Overlap overlap : Interference.of(assembly)) {
      found.add(Set.of(overlap.one(), overlap.other()));
    }
    Set<Set<String>> cuts = cuts(assembly);
    assertFalse(cuts.isEmpty());
    assertTrue(found.containsAll(cuts), () -> cuts + " and only " + found);
  }

  private static Set<Set<String>> cuts(Assembly assembly) {
    Map<String, Surface> surfaces = surfaces(assembly);
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
        if (one.near(other, ROOT_MM)
            && Math.max(one.depthIn(other, SPACING_MM), other.depthIn(one, SPACING_MM)) > ROOT_MM) {
          cuts.add(Set.of(a.id(), b.id()));
        }
      }
    }
    return cuts;
  }

  /** Plates that close one rail stand side by side: where they would meet there is one. */
  @ParameterizedTest
  @MethodSource("jobs")
  void platesThatCloseARailDoNotOverlap(String job) {
    List<PlacedPart> plates =
        finished(job).assembly().parts().stream()
            .filter(part -> part.id().contains("boxing"))
            .toList();
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
