package trammel.planning.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.trade.plates.Arc;
import trammel.trade.plates.BoxingPlate;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.LateralBarRailBracket;
import trammel.trade.plates.MockUpStrut;
import trammel.trade.plates.NotchPlate;
import trammel.trade.plates.Outline;
import trammel.trade.plates.OutriggerGusset;
import trammel.trade.plates.PickUpRow;
import trammel.trade.plates.Placement;
import trammel.trade.plates.Plate;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;
import trammel.trade.plates.SpringSeat;
import trammel.trade.plates.Straight;
import trammel.trade.plates.TubeBracket;

class DxfDrawingTest {
  private static final double JOINT_MM = 1e-5;

  static List<Plate> plates() {
    PickUpRow row = PickUpRow.single(new Point2(20.0, -70.0), 16.0);
    List<PlateShape> shapes =
        List.of(
            TubeBracket.at("axle tab", 6.35, 76.2, 85.0, -1.2, 16.0),
            new LateralBarRailBracket(
                "bar bracket",
                6.35,
                60.0,
                80.0,
                40.0,
                12.0,
                row.row(3, 25.4, -Math.PI / 2.0, 0),
                HoleRules.SHOP),
            new OutriggerGusset("gusset", 6.0, 120.0, 90.0, 1.7, 12.0, 15.0),
            new NotchPlate("notch", 6.0, 100.0, 70.0, 40.0, 90.0, 20.0, 63.5),
            new SpringSeat("seat", 6.35, 150.0, 50.0, 10.0, 110.0, 4, 0.3, HoleRules.SHOP),
            new MockUpStrut("strut", 4.8, 330.0, 13.0, 20.0, HoleRules.SHOP),
            new BoxingPlate(
                "boxing",
                4.8,
                600.0,
                140.0,
                1.5,
                Optional.of(Arc.about(new Point2(500.0, -160.0), 90.0, Math.PI, -Math.PI))));
    return shapes.stream().map(shape -> shape.plate("mild steel")).toList();
  }

  @ParameterizedTest
  @MethodSource("plates")
  void drawingReadBackEnclosesTheSameAreas(Plate plate) {
    List<DxfReader.Entity> entities =
        DxfReader.entities(DxfDrawing.of(plate, DxfUnits.MILLIMETRES).text());
    double outer = DxfReader.closedArea(entities, "CUT_OUTER", JOINT_MM);
    double inner = DxfReader.closedArea(entities, "CUT_INNER", JOINT_MM);
    assertEquals(plate.outline().outer().areaMm2(), outer, 1e-2);
    assertEquals(plate.outline().areaMm2(), outer - inner, 1e-2);
  }

  @Test
  void roundHolesAreCirclesAndArcsStayArcs() {
    Plate seat = plates().get(4);
    List<DxfReader.Entity> entities =
        DxfReader.entities(DxfDrawing.of(seat, DxfUnits.MILLIMETRES).text());
    assertEquals(6, entities.stream().filter(e -> e.kind().equals("CIRCLE")).count());
    assertFalse(entities.stream().anyMatch(e -> e.kind().equals("LINE")));
    Plate strut = plates().get(5);
    List<DxfReader.Entity> obround =
        DxfReader.entities(DxfDrawing.of(strut, DxfUnits.MILLIMETRES).text());
    assertEquals(2, obround.stream().filter(e -> e.kind().equals("ARC")).count());
    assertEquals(2, obround.stream().filter(e -> e.kind().equals("LINE")).count());
  }

  /** $INSUNITS of the DXF Reference: 1 is inches, 4 is millimetres. */
  @Test
  void drawingSaysItsReleaseUnitsAndPart() {
    String metric = DxfDrawing.of(plates().get(0), DxfUnits.MILLIMETRES).text();
    assertTrue(metric.contains("$ACADVER\n1\nAC1015\n"));
    assertTrue(metric.contains("$INSUNITS\n70\n4\n"));
    assertTrue(metric.contains("units: millimetres"));
    assertTrue(metric.contains("thickness 6.35 mm, mild steel"));
    assertTrue(metric.endsWith("0\nEOF\n"));
    String inches = DxfDrawing.of(plates().get(0), DxfUnits.INCHES).text();
    assertTrue(inches.contains("$INSUNITS\n70\n1\n"));
    assertTrue(inches.contains("thickness 0.25 inch, mild steel"));
  }

  /** 1 in is 25.4 mm: the area in square inches is that in square millimetres over 645.16. */
  @ParameterizedTest
  @MethodSource("plates")
  void aDrawingInInchesEnclosesTheSameAreas(Plate plate) {
    List<DxfReader.Entity> entities =
        DxfReader.entities(DxfDrawing.of(plate, DxfUnits.INCHES).text());
    double outer = DxfReader.closedArea(entities, "CUT_OUTER", JOINT_MM / 25.4);
    double inner = DxfReader.closedArea(entities, "CUT_INNER", JOINT_MM / 25.4);
    assertEquals(plate.outline().areaMm2() / 645.16, outer - inner, 1e-4);
  }

  /** A table that traces every line of its layers must find no letter and no frame on them. */
  @Test
  void nothingButGeometryIsOnTheCutLayers() {
    Plate plate = plates().get(0);
    Straight line = new Straight(new Point2(0.0, 0.0), new Point2(10.0, 0.0));
    DxfDrawing drawing =
        new DxfDrawing(
            List.of(plate.outline()),
            List.of(new Note(new Point2(5.0, 5.0), 4.0, "7")),
            List.of(line),
            List.of(new Note(new Point2(0.0, 0.0), 4.0, "85\u00b0\nup")),
            DxfUnits.MILLIMETRES);
    Map<String, Set<String>> kinds = new TreeMap<>();
    for (DxfReader.Entity entity : DxfReader.entities(drawing.text())) {
      kinds.computeIfAbsent(entity.layer(), layer -> new TreeSet<>()).add(entity.kind());
      if (entity.layer().equals("BORDER") && entity.kind().equals("TEXT")) {
        // A line break would end the group: text is kept to one line of ASCII.
        assertEquals("85? up", entity.groups().get(1));
      }
    }
    assertEquals(Set.of("ARC", "LINE"), kinds.get("CUT_OUTER"));
    assertEquals(Set.of("CIRCLE"), kinds.get("CUT_INNER"));
    assertEquals(Set.of("TEXT"), kinds.get("PART_NUMBERS"));
    assertEquals(Set.of("LINE", "TEXT"), kinds.get("BORDER"));
    assertEquals(4, kinds.size());
  }

  @Test
  void numbersAreNeverWrittenWithAnExponent() {
    Outline far = plates().get(3).outline().placed(new Placement(false, 1e-9, 1e7, 1e-7));
    String text =
        new DxfDrawing(List.of(far), List.of(), List.of(), List.of(), DxfUnits.MILLIMETRES).text();
    for (DxfReader.Entity entity : DxfReader.entities(text)) {
      // Group 5 is a handle, which is hexadecimal.
      entity
          .groups()
          .forEach((code, value) -> assertFalse(code != 5 && value.matches("-?[0-9.]+E.*"), value));
    }
  }

  @Test
  void drawingOfNothingIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new DxfDrawing(List.of(), List.of(), List.of(), List.of(), DxfUnits.MILLIMETRES));
  }

  @ParameterizedTest
  @CsvSource({"MILLIMETRES, 4", "INCHES, 1"})
  void independentLibraryReadsTheDrawingAndItsUnits(
      DxfUnits units, int insertUnits, @TempDir Path folder) throws Exception {
    Optional<String> python = pythonWithLibrary();
    assumeTrue(python.isPresent(), "skipped: no python3 with the ezdxf library here");
    Plate plate = plates().get(1);
    Path file = folder.resolve("plate.dxf");
    Files.writeString(file, DxfDrawing.of(plate, units).text(), StandardCharsets.US_ASCII);
    String script =
        """
        import ezdxf, sys
        doc = ezdxf.readfile(sys.argv[1])
        errors = len(doc.audit().errors)
        counts = {}
        for e in doc.modelspace():
            key = e.dxf.layer + ":" + e.dxftype()
            counts[key] = counts.get(key, 0) + 1
        print(doc.dxfversion, doc.units, errors, sorted(counts.items()))
        """;
    String answer = run(python.get(), "-c", script, file.toString());
    List<DxfReader.Entity> entities = DxfReader.entities(Files.readString(file));
    long lines = entities.stream().filter(e -> e.kind().equals("LINE")).count();
    long arcs = entities.stream().filter(e -> e.kind().equals("ARC")).count();
    assertEquals(
        "AC1015 "
            + insertUnits
            + " 0 [('BORDER:TEXT', 3), ('CUT_INNER:CIRCLE', 3), ('CUT_OUTER:ARC', "
            + arcs
            + "), ('CUT_OUTER:LINE', "
            + lines
            + ")]",
        answer.trim());
  }

  private static Optional<String> pythonWithLibrary() {
    for (String python : List.of("python3", "/usr/bin/python3")) {
      try {
        if (run(python, "-c", "import ezdxf; print('here')").contains("here")) {
          return Optional.of(python);
        }
      } catch (IOException e) {
        // No such interpreter: try the next.
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static String run(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    return answer;
  }
}
