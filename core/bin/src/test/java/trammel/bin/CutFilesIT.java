package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
