package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.files.FileSet;

/** The files that plan --out writes for saw and cutting table. */
class CutFilesIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path out;

  @BeforeAll
  static void write() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
    out = shop.resolve("out");
    Launch.Ended plan =
        copy.run("plan", copy.demoJob("pickup").toString(), "--out", out.toString());
    assertEquals(STOP, plan.exitCode(), plan.err());
  }

  /** Every plate of the plan has a drawing whose area and holes an independent reader confirms. */
  @Test
  void platesReadByAnotherReaderHaveTheAreasAndHolesOfTheCutList() throws Exception {
    Map<String, String[]> read = new HashMap<>();
    for (String line : readByEzdxf(out.resolve("plates"))) {
      String[] words = line.split(" ");
      read.put(words[0], words);
    }
    List<Tree> plates = copy.json(STOP, "plan", copy.demoJob("pickup")).list("plates");
    assertTrue(plates.size() > 20, "plates of the demo: " + plates.size());
    for (Tree plate : plates) {
      String[] words = read.get(FileSet.safeName(plate.text("name")));
      assertEquals(plate.number("area_mm2"), Double.parseDouble(words[1]), 0.5, plate.text("name"));
      assertEquals(plate.number("holes"), Integer.parseInt(words[2]), plate.text("name"));
    }
    assertEquals(plates.size(), read.size());
  }

  @Test
  void sheetsReadByAnotherReaderHoldAllPlates() throws Exception {
    double sheetsMm2 = 0;
    for (String line : readByEzdxf(out.resolve("sheets"))) {
      sheetsMm2 += Double.parseDouble(line.split(" ")[1]);
    }
    double platesMm2 = 0;
    for (Tree plate : copy.json(STOP, "plan", copy.demoJob("pickup")).list("plates")) {
      platesMm2 += plate.number("area_mm2") * plate.number("quantity");
    }
    assertEquals(platesMm2, sheetsMm2, 10);
  }

  /** Inches in a job in US units, where the shop's catalog asks for the units of the job. */
  @Test
  void aShopMayHaveItsCutFilesInTheUnitsOfTheJob() throws Exception {
    Path own = Files.createDirectories(shop.resolve("inches/catalog"));
    Files.writeString(
        own.resolve("cutting.yaml"), "format: trammel-catalog/1\ncutting: {cut_file_units: job}\n");
    Path job = Files.copy(copy.demoJob("sedan"), shop.resolve("inches/sedan.yaml"));
    Path files = shop.resolve("inches/out");
    assertEquals(STOP, copy.run("plan", job.toString(), "--out", files.toString()).exitCode());
    for (String line : readByEzdxf(files.resolve("plates"))) {
      assertTrue(Double.parseDouble(line.split(" ")[1]) > 100, line);
    }
    try (Stream<Path> sheets = Files.list(files.resolve("sheets"))) {
      assertTrue(
          sheets
              .filter(file -> file.toString().endsWith(".dxf"))
              .allMatch(file -> file.toString().endsWith("-inch.dxf")));
    }
  }

  /**
   * Read back from its bytes: each edge once one way and once the other (closed, all facets turned
   * alike), and the volume by the divergence theorem, above 0 where facets are turned outwards, is
   * area times thickness within the half percent of a mesh's chords.
   */
  @Test
  void everyPrintIsAClosedSolidOfThePlatesVolume() throws Exception {
    for (Tree plate : copy.json(STOP, "plan", copy.demoJob("pickup")).list("plates")) {
      String name = plate.text("name");
      ByteBuffer stl =
          ByteBuffer.wrap(
                  Files.readAllBytes(out.resolve("prints/" + FileSet.safeName(name) + "-mm.stl")))
              .order(ByteOrder.LITTLE_ENDIAN);
      assertFalse(new String(stl.array(), 0, 5, StandardCharsets.US_ASCII).equals("solid"), name);
      int count = stl.getInt(80);
      assertEquals(84 + 50 * count, stl.capacity(), name);
      Map<String, Integer> edges = new HashMap<>();
      double volumeMm3 = 0;
      for (int i = 0; i < count; i++) {
        double[][] corners = new double[3][3];
        for (int j = 0; j < 9; j++) {
          corners[j / 3][j % 3] = stl.getFloat(84 + 50 * i + 12 + 4 * j);
        }
        volumeMm3 += sixTimesVolume(corners[0], corners[1], corners[2]) / 6;
        for (int j = 0; j < 3; j++) {
          String from = Arrays.toString(corners[j]);
          String to = Arrays.toString(corners[(j + 1) % 3]);
          edges.merge(from + to, 1, Integer::sum);
          edges.merge(to + from, -1, Integer::sum);
        }
      }
      assertTrue(edges.values().stream().allMatch(sum -> sum == 0), name + " is not closed");
      double planMm3 = plate.number("area_mm2") * plate.number("thickness_mm");
      assertEquals(planMm3, volumeMm3, 0.005 * planMm3, name);
    }
  }

  private static double sixTimesVolume(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        + a[1] * (b[2] * c[0] - b[0] * c[2])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }

  @Test
  void bothCutListsAreThere() throws IOException {
    String tubes = Files.readString(out.resolve("tubes.csv"));
    assertTrue(tubes.startsWith("section,stick,stick_mm,piece,at_mm,cut_mm,ends,left_mm"), tubes);
    assertTrue(tubes.contains("lateral-bar"), tubes);
    assertTrue(Files.readString(out.resolve("cut-lists.json")).contains("\"sheets\""));
    assertTrue(Files.exists(out.resolve("templates/lower-left-cope-1.svg")));
  }

  @Test
  void aFileWhereAFolderShouldBeIsSaidSo() throws Exception {
    Path file = Files.writeString(shop.resolve("taken"), "a file");
    Launch.Ended plan =
        copy.run("plan", copy.demoJob("pickup").toString(), "--out", file.resolve("in").toString());
    assertEquals(BAD_INPUT, plan.exitCode(), plan.err());
    assertTrue(plan.err().contains("taken"), plan.err());
  }

  private static List<String> readByEzdxf(Path folder) throws Exception {
    Launch.Ended there = Launch.of("python3", "-c", "import ezdxf").run();
    Launch.Ended debian = Launch.of("/usr/bin/python3", "-c", "import ezdxf").run();
    assumeTrue(
        there.exitCode() == 0 || debian.exitCode() == 0,
        "skipped: Python with ezdxf (Debian: python3-ezdxf) is not installed");
    String python = there.exitCode() == 0 ? "python3" : "/usr/bin/python3";
    Path script = Path.of("src", "test", "python", "read_dxf.py").toAbsolutePath();
    Launch.Ended read = Launch.of(python, script.toString(), folder.toString()).run();
    assertEquals(0, read.exitCode(), read.err());
    return read.out().lines().toList();
  }
}
