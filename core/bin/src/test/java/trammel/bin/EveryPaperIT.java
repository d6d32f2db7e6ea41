package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page that is handed out, of each linkage with each spring, in inches on Letter and in
 * millimetres on A4, for a customer and a vehicle with long names and a job with long notes.
 */
@Tag("long")
class EveryPaperIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  private static final List<String> LINKAGES =
      List.of(
          "four-link-lateral", "three-link-lateral", "torque-arm", "triangulated", "watts-linkage");
  private static final List<String> SPRINGS = List.of("coil-spring", "air-spring");

  /** Drawings, which have a frame of their own. */
  private static final List<String> DRAWN = List.of("shop-drawings.pdf", "true-scale.pdf");

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @BeforeAll
  static void unpack() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
  }

  static Stream<Arguments> everyWay() {
    List<Arguments> ways = new ArrayList<>();
    for (String units : List.of("us", "metric")) {
      for (String linkage : LINKAGES) {
        SPRINGS.forEach(spring -> ways.add(Arguments.of(linkage, spring, units)));
      }
    }
    return ways.stream();
  }

  /** On one of the two vehicles at least there is room for it. */
  @ParameterizedTest(name = "{0} {1} {2}")
  @MethodSource("everyWay")
  void everyPageOfEachWayCanBePrintedAndRead(String linkage, String spring, String units)
      throws Exception {
    int printed = 0;
    for (String job : List.of("pickup", "sedan")) {
      Tree asked = longWinded(job, linkage, spring);
      printed += isPrinted(job + "-" + linkage + "-" + spring, asked, units) ? 1 : 0;
    }
    assertTrue(printed > 0, "neither vehicle has room for it");
  }

  @ParameterizedTest
  @CsvSource({"pickup, us", "pickup, metric", "sedan, us", "sedan, metric"})
  void everyPageOfTheDemosCanBePrintedAndRead(String job, String units) throws Exception {
    assertTrue(isPrinted(job, copy.demoTree(job), units));
  }

  /** Prints a job and looks at every page; false if the layout does not fit the vehicle. */
  private static boolean isPrinted(String name, Tree job, String units) throws Exception {
    Path file = InstalledCopy.write(shop.resolve(name + "-" + units + ".json"), job);
    Path folder = shop.resolve(name + "-" + units);
    Launch.Ended ended =
        copy.run("quote", file.toString(), "--quiet", "--units", units, "--out", folder.toString());
    if (ended.exitCode() == BAD_INPUT && ended.err().contains("does not fit the vehicle")) {
      return false;
    }
    assertTrue(ended.exitCode() <= STOP, ended.err());
    List<String> troubles = new ArrayList<>(PrintedPaper.troublesOfAll(folder));
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path pdf : all.filter(one -> one.toString().endsWith(".pdf")).sorted().toList()) {
        troubles.addAll(PdfPages.troubles(pdf));
        boolean drawn = DRAWN.contains(pdf.getFileName().toString());
        if (!drawn && !pdf.getParent().endsWith("drawings")) {
          troubles.addAll(PdfExtent.outsideTheBody(pdf));
        }
      }
    }
    assertEquals(List.of(), troubles, name);
    return true;
  }

  private static Tree longWinded(String job, String linkage, String spring) throws Exception {
    return copy.demoTree(job)
        .with("job.number", "D-101-2026-REVISED-FOR-THE-SECOND-OWNER")
        .with(
            "job.customer",
            "Example Customer the Elder, of the Long Lane behind the Old Mill, and Daughters, "
                + "Gardeners and Hauliers (invented)")
        .with(
            "job.vehicle",
            "Three-quarter-ton pickup, crew cab, long bed, ladder frame with channel rails, "
                + "second axle, and so on (invented)")
        .with("job.note", "A note of the shop that goes on and on (invented). ".repeat(36).strip())
        .with(
            "job.customer_note",
            "What the customer is told at length (invented). ".repeat(38).strip())
        .with("chosen.linkage", linkage)
        .with("chosen.linkage_options", Map.of())
        .with("chosen.spring", spring)
        .with("chosen.spring_options", Map.of());
  }
}
