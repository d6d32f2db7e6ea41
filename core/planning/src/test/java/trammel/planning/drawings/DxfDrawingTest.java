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
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
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
    List<DxfReader.Entity> entities = DxfReader.entities(DxfDrawing.of(plate).text());
    double outer = DxfReader.closedArea(entities, "CUT_OUTER", JOINT_MM);
    double inner = DxfReader.closedArea(entities, "CUT_INNER", JOINT_MM);
    assertEquals(plate.outline().outer().areaMm2(), outer, 1e-2);
    assertEquals(plate.outline().areaMm2(), outer - inner, 1e-2);
  }

  @Test
  void roundHolesAreCirclesAndArcsStayArcs() {
    Plate seat = plates().get(4);
    List<DxfReader.Entity> entities = DxfReader.entities(DxfDrawing.of(seat).text());
    assertEquals(6, entities.stream().filter(e -> e.kind().equals("CIRCLE")).count());
    assertFalse(entities.stream().anyMatch(e -> e.kind().equals("LINE")));
    Plate strut = plates().get(5);
    List<DxfReader.Entity> obround = DxfReader.entities(DxfDrawing.of(strut).text());
    assertEquals(2, obround.stream().filter(e -> e.kind().equals("ARC")).count());
    assertEquals(2, obround.stream().filter(e -> e.kind().equals("LINE")).count());
  }

  @Test
  void drawingSaysItsReleaseUnitsAndPart() {
    String text = DxfDrawing.of(plates().get(0)).text();
    assertTrue(text.contains("$ACADVER\n1\nAC1009\n"));
    // The release has no variable for units.
    assertFalse(text.contains("INSUNITS"));
    assertTrue(text.startsWith("999\nall lengths in millimetres\n"));
    assertTrue(text.contains("units: millimetres"));
    assertTrue(text.contains("thickness 6.35 mm, mild steel"));
    assertTrue(text.endsWith("0\nEOF\n"));
  }

  @Test
  void marksAndNotesAreKeptOffTheCutLayers() {
    Plate plate = plates().get(0);
    Straight line = new Straight(new Point2(0.0, 0.0), new Point2(10.0, 0.0));
    DxfDrawing drawing =
        new DxfDrawing(
            List.of(plate.outline()),
            List.of(line),
            List.of(new Note(new Point2(0.0, 0.0), 4.0, "85\u00b0\nup")));
    List<DxfReader.Entity> marked =
        DxfReader.entities(drawing.text()).stream().filter(e -> e.layer().equals("MARK")).toList();
    assertEquals(2, marked.size());
    // A line break would end the group: text is kept to one line of ASCII.
    assertEquals("85? up", marked.get(1).groups().get(1));
  }

  @Test
  void numbersAreNeverWrittenWithAnExponent() {
    Outline far = plates().get(3).outline().placed(new Placement(false, 1e-9, 1e7, 1e-7));
    String text = new DxfDrawing(List.of(far), List.of(), List.of()).text();
    for (DxfReader.Entity entity : DxfReader.entities(text)) {
      for (String value : entity.groups().values()) {
        assertFalse(value.matches("-?[0-9.]+E.*"), value);
      }
    }
  }

  @Test
  void drawingOfNothingIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new DxfDrawing(List.of(), List.of(), List.of()));
  }

  @Test
  void independentLibraryReadsTheDrawing(@TempDir Path folder) throws Exception {
    Optional<String> python = pythonWithLibrary();
    assumeTrue(python.isPresent(), "skipped: no python3 with the ezdxf library here");
    Plate plate = plates().get(1);
    Path file = folder.resolve("plate.dxf");
    Files.writeString(file, DxfDrawing.of(plate).text(), StandardCharsets.US_ASCII);
    String script =
        """
        import ezdxf, sys
        doc = ezdxf.readfile(sys.argv[1])
        errors = len(doc.audit().errors)
        counts = {}
        for e in doc.modelspace():
            key = e.dxf.layer + ":" + e.dxftype()
            counts[key] = counts.get(key, 0) + 1
        print(doc.dxfversion, errors, sorted(counts.items()))
        """;
    String answer = run(python.get(), "-c", script, file.toString());
    List<DxfReader.Entity> entities = DxfReader.entities(Files.readString(file));
    long lines = entities.stream().filter(e -> e.kind().equals("LINE")).count();
    long arcs = entities.stream().filter(e -> e.kind().equals("ARC")).count();
    assertEquals(
        "AC1009 0 [('CUT_INNER:CIRCLE', 3), ('CUT_OUTER:ARC', "
            + arcs
            + "), ('CUT_OUTER:LINE', "
            + lines
            + "), ('MARK:TEXT', 3)]",
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
