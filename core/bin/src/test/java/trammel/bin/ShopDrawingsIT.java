package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.app.drawings.ArrangementSheet;
import trammel.app.drawings.Drawing;
import trammel.app.drawings.ShopDrawings;
import trammel.app.drawings.ShopJob;
import trammel.app.drawings.TitleBlock;
import trammel.app.drawings.VehicleScene;
import trammel.app.paper.PdfSheets;
import trammel.assembly.Assembly;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.Prism;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.planning.vehicle.NotchCut;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * The shop drawings as a stranger reads them: from the numbers in their PDF alone, with the plates
 * in hand, everything is where the finished vehicle has it.
 */
class ShopDrawingsIT {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog CATALOG = CatalogReader.read(List.of(CATALOGS.resolve("standard")));
  private static final double INCH_MM = 25.4;

  /** To what a tape reads: 1/32 in. */
  private static final double TAPE_MM = INCH_MM / 32;

  /** To what an angle finder reads. */
  private static final double FINDER_RAD = Math.toRadians(0.25);

  private static final Drafting DRAFTING = new Drafting(OwnPlugins.extensions(), CATALOG);

  private static final Map<String, Drawn> DRAWN = new HashMap<>();

  /** A job's sheets as a file and what its texts say, beside the finished vehicle itself. */
  private record Drawn(
      Draft draft,
      Assembly assembly,
      ArrangementSheet arrangement,
      List<SheetTexts.Text> texts,
      List<SheetLines> sheets,
      UnitSystem units) {
    Rails rails() {
      return draft.layout().chassis().rails();
    }
  }

  private static Drawn drawn(Draft draft, UnitSystem units) throws IOException {
    WorkPlan plan = draft.work();
    QuantityPrinter print = new QuantityPrinter(units);
    Assembly assembly = FinishedVehicle.of(draft.layout(), CATALOG, plan);
    ShopJob job =
        ShopJob.of(
            assembly,
            draft.layout(),
            plan,
            List.of(),
            NotchCut.of(draft.layout(), draft.linkageSite()),
            print);
    TitleBlock block =
        new TitleBlock(
            "Shop of a Very Long Name & Sons, Chassis and Frame Works at the Old Mill, Upper Yard",
            "D-101-2026-REVISED-FOR-THE-SECOND-OWNER",
            "Three-quarter-ton pickup, crew cab, long bed, ladder frame with open channel rails, "
                + "second axle, and whatever else a vehicle may be called",
            "arrangement of",
            "2026-11-25",
            units == UnitSystem.US ? "inches" : "millimetres",
            1,
            1);
    ArrangementSheet arrangement =
        new ArrangementSheet(draft.layout(), new VehicleScene(assembly), print, block, "");
    List<Drawing> sheets = ShopDrawings.of(job, arrangement);
    return new Drawn(
        draft,
        assembly,
        arrangement,
        SheetTexts.of(PdfSheets.of(sheets)),
        sheets.stream().map(sheet -> new SheetLines(sheet.svg())).toList(),
        units);
  }

  private static Drawn demo(String job, UnitSystem units) {
    return DRAWN.computeIfAbsent(
        job + units,
        key -> {
          try {
            Path file = CATALOGS.resolve("demo").resolve(job + ".yaml");
            JobDocument document = JobDocument.load(file);
            return drawn(DRAFTING.draft(JobReader.read(document), units), units);
          } catch (IOException unread) {
            throw new java.io.UncheckedIOException(unread);
          }
        });
  }

  /** A length of the sheets (mm): whole inches and a fraction, or millimetres. */
  private static double mm(String text, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return Double.parseDouble(text);
    }
    double sign = text.startsWith("-") ? -1 : 1;
    double inches = 0;
    for (String word : text.replace("-", "").split(" ")) {
      String[] fraction = word.split("/");
      inches +=
          fraction.length == 1
              ? Double.parseDouble(word)
              : Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]);
    }
    return sign * inches * INCH_MM;
  }

  /** Where a tape is held: a mark and the ways along, up and out, in vehicle axes. */
  private record Tape(Point3 mark, Vector3 along, Vector3 up, Vector3 out) {
    /**
     * A rail's as the sheet says: the axle mark at the outer face and the underside; along that
     * face, square up from the underside, square out from the face.
     */
    static Tape ofRail(Rails rails, boolean left) {
      double side = left ? 1 : -1;
      Point3 mark = new Point3(0, side * rails.outerFaceMm(0), rails.undersideMm(0));
      Point3 ahead = new Point3(100, side * rails.outerFaceMm(100), rails.undersideMm(100));
      Vector3 along = mark.to(ahead).normalized();
      Vector3 out = new Vector3(0, 0, 1).cross(along).normalized().scaled(side);
      return new Tape(mark, along, out.cross(along).scaled(-side), out);
    }

    /** The axle tube's middle; out is to the left or to the right. */
    static Tape ofAxle(Draft draft, boolean left) {
      return level(draft.layout().chassis().axleCentre(), left);
    }

    /** The vehicle's own: axle line, centre line, underside of the rails over the axle. */
    static Tape ofFrame(Rails rails) {
      return level(new Point3(0, 0, rails.undersideMm(0)), true);
    }

    private static Tape level(Point3 mark, boolean left) {
      Vector3 out = new Vector3(0, left ? 1 : -1, 0);
      return new Tape(mark, new Vector3(1, 0, 0), new Vector3(0, 0, 1), out);
    }

    Tape at(Vector3 zero, double turnRad) {
      Vector3 ahead = along.scaled(Math.cos(turnRad)).plus(out.scaled(Math.sin(turnRad)));
      Vector3 outwards = out.scaled(Math.cos(turnRad)).minus(along.scaled(Math.sin(turnRad)));
      return new Tape(mark.plus(way(zero)), ahead, up, outwards);
    }

    Vector3 way(Vector3 read) {
      return along.scaled(read.x()).plus(up.scaled(read.y())).plus(out.scaled(read.z()));
    }

    Vector3 read(Point3 point) {
      Vector3 from = mark.to(point);
      return new Vector3(from.dot(along), from.dot(up), from.dot(out));
    }

    /** The way that words name: {@code up 12.0° inward}. */
    Vector3 named(String words) {
      String[] word = words.split(" ");
      Vector3 way = word(word[0]);
      for (int i = 1; i + 1 < word.length; i += 2) {
        double leanRad = Math.toRadians(Double.parseDouble(word[i].replace("°", "")));
        way = way.plus(word(word[i + 1]).scaled(Math.tan(leanRad)));
      }
      return way(way.normalized());
    }

    private static Vector3 word(String word) {
      return switch (word) {
        case "front" -> new Vector3(1, 0, 0);
        case "rear" -> new Vector3(-1, 0, 0);
        case "up" -> new Vector3(0, 1, 0);
        case "down" -> new Vector3(0, -1, 0);
        case "outward", "left" -> new Vector3(0, 0, 1);
        case "inward", "right" -> new Vector3(0, 0, -1);
        default -> throw new AssertionError("no such way: " + word);
      };
    }
  }

  /**
   * Puts a plate where a row of a table says, and says how far that is from where it stands; its
   * own outline and thickness are known, since it is in hand.
   */
  private static List<String> misplaced(
      SheetTexts.Row row, PlacedPart plate, Tape tape, boolean turnedOver, UnitSystem units) {
    String topHead = row.heads().contains("top of its") ? "top of its" : "top of its drawing";
    Vector3 top = tape.named(row.cell(topHead));
    Vector3 face = tape.named(row.cell("drawn face")).scaled(turnedOver ? -1 : 1);
    boolean sides = row.heads().contains("inner");
    Vector3 square = top.minus(face.scaled(top.dot(face))).normalized();
    Place turned = Place.of(new Point3(0, 0, 0), square.cross(face), square);
    List<Point3> corners = plate.solid().mesh().corners();
    Tape fromNothing = new Tape(new Point3(0, 0, 0), tape.along, tape.up, tape.out);
    List<Vector3> reach = corners.stream().map(turned::apply).map(fromNothing::read).toList();
    double x = middle(row, "rear", "front", units) - middle(reach, Vector3::x);
    double y = middle(row, "lower", "upper", units) - middle(reach, Vector3::y);
    double z =
        middle(row, sides ? "inner" : "right", sides ? "outer" : "left", units)
            - middle(reach, Vector3::z);
    Place set = Place.of(tape.mark.plus(tape.way(new Vector3(x, y, z))), turned.x(), turned.y());
    double worstMm = 0;
    Point3 middle = plate.solid().centre();
    worstMm = plate.place().apply(middle).distanceMm(set.apply(middle));
    Vector3 off = tape.read(tape.mark.plus(plate.place().apply(middle).to(set.apply(middle))));
    List<String> misplaced = new ArrayList<>();
    if (Math.abs(off.x()) > TAPE_MM || Math.abs(off.y()) > TAPE_MM || Math.abs(off.z()) > TAPE_MM) {
      misplaced.add(plate.id() + " is " + worstMm + " mm off by " + row);
    }
    double turnRad =
        Math.max(plate.place().y().angleToRad(set.y()), plate.place().z().angleToRad(set.z()));
    if (turnRad > FINDER_RAD) {
      misplaced.add(plate.id() + " is " + Math.toDegrees(turnRad) + " deg off by " + row);
    }
    return misplaced;
  }

  private static double middle(SheetTexts.Row row, String from, String to, UnitSystem units) {
    return (mm(row.cell(from), units) + mm(row.cell(to), units)) / 2;
  }

  private static double middle(List<Vector3> reach, Function<Vector3, Double> axis) {
    double least = reach.stream().map(axis).min(Double::compare).orElseThrow();
    double most = reach.stream().map(axis).max(Double::compare).orElseThrow();
    return (least + most) / 2;
  }

  private static String withoutSide(String id) {
    return id.replaceAll("-(left|right)\\b", "").replaceAll("^(left|right) ", "");
  }

  /** The plate of a side that a row names. */
  private static PlacedPart plate(Assembly assembly, String name, boolean left) {
    List<PlacedPart> named =
        assembly.parts().stream()
            .filter(part -> part.kind() == PartKind.PLATE && withoutSide(part.id()).equals(name))
            .filter(part -> part.centre().yMm() > 0 == left)
            .toList();
    assertEquals(1, named.size(), () -> "plates called " + name + ": " + named);
    return named.get(0);
  }

  private static boolean isOfTheLeft(Drawn drawn, int page) {
    return drawn.texts.stream()
        .anyMatch(text -> text.page() == page && text.text().endsWith("left rail of"));
  }

  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void noTextLiesOnAnother(String job, UnitSystem units) {
    assertEquals(List.of(), SheetTexts.overwritten(demo(job, units).texts));
  }

  /** Of the longest names too, of which the title block has the beginning. */
  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void noDimensionLineCrossesAnotherOrATextAndNoSymbolTouchesOne(String job, UnitSystem units) {
    theLinesKeepClear(demo(job, units));
  }

  private static void theLinesKeepClear(Drawn drawn) {
    int dimensions = 0;
    List<String> wrong = new ArrayList<>();
    for (SheetLines lines : drawn.sheets) {
      String where = "sheet " + (drawn.sheets.indexOf(lines) + 1) + ": ";
      lines.crossings().forEach(crossing -> wrong.add(where + crossing));
      lines.struck().forEach(struck -> wrong.add(where + struck));
      lines.ringed().forEach(ringed -> wrong.add(where + ringed));
      dimensions += lines.count();
    }
    assertEquals(List.of(), wrong);
    assertTrue(dimensions > 50, "dimension lines found: " + dimensions);
  }

  /** The other two of both jobs and both units. */
  @Tag("long")
  @ParameterizedTest
  @CsvSource({"pickup, METRIC", "sedan, US"})
  void theOtherSheetsOfTheDemosHoldToo(String job, UnitSystem units) {
    noTextLiesOnAnother(job, units);
    theLinesKeepClear(demo(job, units));
    everyPlateIsSetByTheSheets(demo(job, units));
    theNotchIsCutByItsSheet(demo(job, units));
  }

  /** Where the zero of a bracket is, by the sheets of rails and axle. */
  private record Zero(boolean left, Tape tape) {}

  private static List<Zero> zeros(Drawn drawn, String letter) {
    List<Zero> zeros = new ArrayList<>();
    for (SheetTexts.Row row : SheetTexts.rows(drawn.texts, "ZERO OF EVERY BRACKET ON THIS RAIL")) {
      if (row.cell("").equals(letter)) {
        boolean left = isOfTheLeft(drawn, row.page());
        Tape rail = Tape.ofRail(drawn.rails(), left);
        zeros.add(new Zero(left, zero(row, rail, "along", drawn.units)));
      }
    }
    for (SheetTexts.Row row : SheetTexts.rows(drawn.texts, "ZERO OF EVERY BRACKET ON THE AXLE")) {
      if (row.cell("").equals(letter)) {
        boolean left = !row.cell("half").equals("right");
        zeros.add(new Zero(left, zero(row, Tape.ofAxle(drawn.draft, left), "ahead", drawn.units)));
      }
    }
    for (SheetTexts.Row row : SheetTexts.rows(drawn.texts, "ITS ZERO ON THE FRAME")) {
      if (row.cell("").equals(letter)) {
        zeros.add(new Zero(true, zero(row, Tape.ofFrame(drawn.rails()), "ahead", drawn.units)));
      }
    }
    return zeros;
  }

  private static Tape zero(SheetTexts.Row row, Tape tape, String ahead, UnitSystem units) {
    Vector3 read =
        new Vector3(
            mm(row.cell(ahead), units),
            mm(row.cell("up"), units),
            mm(row.cell(row.heads().contains("out") ? "out" : "left"), units));
    double turnRad = Math.toRadians(Double.parseDouble(row.cell("turned").replace("°", "")));
    return tape.at(read, turnRad);
  }

  /** The plates of one bracket's table, on one side, and how far each is off. */
  private static void set(
      Drawn drawn,
      SheetTexts.Row row,
      Zero zero,
      boolean mirrored,
      boolean turnedOver,
      Map<String, List<String>> placed) {
    String name = row.cell("part");
    String here = mirrored ? otherSide(name) : name;
    boolean sides = row.heads().contains("inner");
    PlacedPart part =
        sides
            ? plate(drawn.assembly, here, zero.left)
            : drawn.assembly.part(here).orElseThrow(() -> new AssertionError("no part " + here));
    List<String> off = misplaced(row, part, zero.tape, mirrored && turnedOver, drawn.units);
    List<String> before = placed.put(part.id(), off);
    assertTrue(before == null, () -> part.id() + " is set twice");
  }

  private static String otherSide(String name) {
    return name.matches(".*\\bleft\\b.*")
        ? name.replaceAll("\\bleft\\b", "right")
        : name.replaceAll("\\bright\\b", "left");
  }

  private static Map<String, List<String>> setByTheSheets(Drawn drawn) {
    Map<String, List<String>> placed = new TreeMap<>();
    for (SheetTexts.Row row : SheetTexts.rows(drawn.texts, "PLATES OF THIS RAIL")) {
      boolean left = isOfTheLeft(drawn, row.page());
      PlacedPart plate = plate(drawn.assembly, row.cell("plate"), left);
      placed.put(
          plate.id(), misplaced(row, plate, Tape.ofRail(drawn.rails(), left), false, drawn.units));
    }
    for (SheetTexts.Text title : drawn.texts) {
      if (!title.text().matches("PARTS OF BRACKET .* FROM ITS ZERO")) {
        continue;
      }
      String letter = title.text().split(" ")[3];
      String words = words(drawn, letter);
      boolean turnedOver = words.contains("every plate turned over");
      for (Zero zero : zeros(drawn, letter)) {
        boolean mirrored = words.contains("mirror image on the " + (zero.left ? "left" : "right"));
        for (SheetTexts.Row row : SheetTexts.rows(drawn.texts, title.text())) {
          if (!row.cell("thick").equals("tube") && row.page() == title.page()) {
            set(drawn, row, zero, mirrored, turnedOver, placed);
          }
        }
      }
    }
    return placed;
  }

  /** All that the sheets of a bracket say, a table that goes on elsewhere included. */
  private static String words(Drawn drawn, String letter) {
    return drawn.texts.stream()
        .filter(
            text ->
                drawn.texts.stream()
                    .anyMatch(
                        other ->
                            other.page() == text.page()
                                && other.text().equals("bracket " + letter + " of")))
        .map(SheetTexts.Text::text)
        .collect(Collectors.joining(" "));
  }

  private static void everyPlateIsSetByTheSheets(Drawn drawn) {
    Map<String, List<String>> placed = setByTheSheets(drawn);
    assertEquals(List.of(), placed.values().stream().flatMap(List::stream).toList());
    Set<String> plates =
        drawn.assembly.parts().stream()
            .filter(part -> part.kind() == PartKind.PLATE)
            .map(PlacedPart::id)
            .collect(Collectors.toSet());
    assertEquals(plates, placed.keySet());
  }

  /** Nothing but the numbers on rail sheets, axle sheet and bracket sheets, and the plates. */
  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void everyPlateIsWhereItsSheetsSay(String job, UnitSystem units) {
    everyPlateIsSetByTheSheets(demo(job, units));
  }

  /**
   * A straightedge from the tube's middle at the angle of a row of the axle's sheet, so long as it
   * says, ends in the middle of that very plate's hole, half way through it; on a bolt that leans
   * the two plates differ.
   */
  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void everyHoleOnTheAxleIsWhereItsRowSays(String job, UnitSystem units) {
    Drawn drawn = demo(job, units);
    Point3 middle = drawn.draft.layout().chassis().axleCentre();
    int holes = 0;
    for (SheetTexts.Row row :
        SheetTexts.rows(drawn.texts, "EDGES OF EVERY FOOT ON THE AXLE TUBE")) {
      if (!row.cell("to its").equals("hole")) {
        continue;
      }
      PlacedPart part = drawn.assembly.part(row.cell("part")).orElseThrow();
      Prism plate = (Prism) part.solid();
      double turnRad = Math.toRadians(Double.parseDouble(row.cell("turned").replace("°", "")));
      double outMm = mm(row.cell("out"), units);
      double aheadMm = middle.xMm() + outMm * Math.sin(turnRad);
      double upMm = middle.zMm() + outMm * Math.cos(turnRad);
      double missMm = Double.MAX_VALUE;
      for (Hole hole : plate.section().holes()) {
        if (hole instanceof RoundHole round) {
          Point3 at =
              part.place().point(round.centre().xMm(), round.centre().yMm(), plate.lengthMm() / 2);
          missMm = Math.min(missMm, Math.hypot(at.xMm() - aheadMm, at.zMm() - upMm));
        }
      }
      assertTrue(missMm < TAPE_MM, part.id() + " misses its hole by " + missMm + " mm: " + row);
      holes++;
    }
    assertTrue(holes >= 8, "rows with a hole: " + holes);
  }

  /**
   * What the job's file says of the vehicle; the track is 65 in less twice the offset of 1/4 in.
   */
  @Test
  void theFirstSheetSaysHowTheVehicleStands() {
    String first =
        demo("pickup", UnitSystem.US).texts.stream()
            .filter(text -> text.page() == 0)
            .map(SheetTexts.Text::text)
            .collect(Collectors.joining("\n"));
    for (String said :
        List.of(
            "pinion 3.0 deg from level, nose up",
            "rails' underside over the axle 17 1/2 in up",
            "rails 37 in outside, 32 1/2 in between over the axle,",
            "35 in outside, 30 1/2 in between at 26 in ahead",
            "track 64 1/2 in",
            "wheel flanges 65 in apart",
            "bump 3 1/2 in, droop 3 in")) {
      assertTrue(first.contains(said), said + " is not on sheet 1: " + first);
    }
  }

  /** What lies on the underside and runs up the inner face is said to hold on both. */
  @Test
  void aBracketThatWrapsTheRailIsSaidToLieOnBothFaces() {
    Set<String> on =
        SheetTexts.rows(demo("pickup", UnitSystem.US).texts, "EDGES OF EVERY FOOT ON THIS RAIL")
            .stream()
            .filter(row -> row.cell("part").startsWith("lateral-bar frame bracket"))
            .map(row -> row.cell("on its"))
            .collect(Collectors.toSet());
    assertEquals(Set.of("under, inner"), on);
  }

  /**
   * The notch as cut: an arc of depth d and radius r is 2 √(d (2 r − d)) long at the underside
   * (chord of a circle); in the clear it is shallower by the strip.
   */
  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void theNotchIsCutByItsSheet(String job, UnitSystem units) {
    theNotchIsCutByItsSheet(demo(job, units));
  }

  private static void theNotchIsCutByItsSheet(Drawn drawn) {
    UnitSystem units = drawn.units;
    Map<String, Double> sizes =
        SheetTexts.rows(drawn.texts, "THE NOTCH").stream()
            .collect(
                Collectors.toMap(
                    row -> row.cell("of the cut"),
                    row -> mm(row.cell("size"), units),
                    (a, b) -> a));
    assertEquals(drawn.rails().notchDepthMm() > 0, !sizes.isEmpty());
    if (sizes.isEmpty()) {
      return;
    }
    double depth = sizes.get("depth, up from the underside");
    double radius = sizes.get("radius");
    assertEquals(
        drawn.rails().notchDepthMm(), sizes.get("deep in the clear, strip in place"), TAPE_MM);
    assertEquals(
        drawn.rails().depthMm() - depth, sizes.get("rail that stays above the cut"), TAPE_MM);
    assertEquals(
        2 * Math.sqrt(depth * (2 * radius - depth)),
        sizes.get("length along the underside"),
        4 * TAPE_MM);
    assertEquals(
        depth, sizes.get("deep in the clear, strip in place") + sizes.get("strip, thick"), TAPE_MM);
    assertTrue(radius >= depth - TAPE_MM);
  }

  @Seeds(2)
  void everyPlateOfAnyVehicleIsWhereItsSheetsSay(Draw draw) throws IOException {
    theSheetsHold(draw);
  }

  /** The long run; docs/reliability.md has its command. */
  @Tag("long")
  @Seeds(126)
  void everyPlateOfAHundredVehiclesIsWhereItsSheetsSay(Draw draw) throws IOException {
    theSheetsHold(draw);
  }

  private static void theSheetsHold(Draw draw) throws IOException {
    String linkage =
        draw.oneOf(
            "four-link-lateral",
            "three-link-lateral",
            "torque-arm",
            "triangulated",
            "watts-linkage");
    String spring = draw.oneOf("coil-spring", "air-spring");
    String mounting = draw.oneOf("inboard", "outboard");
    UnitSystem units = draw.either() ? UnitSystem.US : UnitSystem.METRIC;
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    String text = JobText.of(vehicle, "R-" + draw.seed(), linkage, spring, mounting);
    Drawn drawn;
    try {
      drawn = drawn(DRAFTING.draft(JobReader.read("drawn.yaml", text), units), units);
    } catch (UnworkableLayoutException refused) {
      // Said by check as well; there is nothing to draw.
      return;
    }
    assertEquals(List.of(), SheetTexts.overwritten(drawn.texts));
    theLinesKeepClear(drawn);
    everyPlateIsSetByTheSheets(drawn);
    theNotchIsCutByItsSheet(drawn);
  }

  /** 200 points of the lines that are drawn, of all three views. */
  @ParameterizedTest
  @CsvSource({"pickup, US", "sedan, METRIC"})
  void theViewsShowWhatRaysThroughTheFinishedVehicleMeet(String job, UnitSystem units) {
    Drawn drawn = demo(job, units);
    List<String> wrong = new DrawnEdges(drawn.assembly, drawn.arrangement.svg()).wrong(200);
    assertEquals(List.of(), wrong);
  }
}
