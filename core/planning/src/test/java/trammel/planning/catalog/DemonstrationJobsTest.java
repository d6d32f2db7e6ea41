package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Verdict;
import trammel.planning.job.Job;
import trammel.planning.job.JobReader;
import trammel.planning.job.Measured;

/** The two demonstration jobs, by hand arithmetic on what they measure. */
class DemonstrationJobsTest {
  private static final double INCH_MM = 25.4;
  private static final Catalog CATALOG = CatalogReader.read(CatalogFolders.STANDARD);
  private static final Job PICKUP = job("pickup");
  private static final Job SEDAN = job("sedan");

  private static Job job(String name) {
    return JobReader.read(CatalogFolders.DEMO.resolve(name + ".yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void jobReadsWithoutAWarningAndSaysThatItIsInvented(String name) {
    assertEquals(0, job(name).warnings().size());
    String text = CatalogFolders.text(CatalogFolders.DEMO.resolve(name + ".yaml"));
    boolean first = true;
    for (String line : text.split("\n")) {
      if (line.strip().startsWith("#")) {
        assertTrue(first || line.contains("nvented"), line);
        first = false;
      }
    }
    assertTrue(text.startsWith("# A demonstration job."));
    assertTrue(job(name).header().customer().contains("invented"));
    assertTrue(job(name).header().vehicle().contains("invented"));
  }

  /** 14 1/2 loaded radius + 1 1/2 half tube + 3 1/2 bump + 1/2 gap = 20 in, rail at 17 1/2 in. */
  @Test
  void pickupAsksForANotch() {
    Measured measured = PICKUP.measured();
    double tubeTopMm =
        measured.tyre().loadedRadius().meanMm()
            + measured.axle().tubeDiameterMm() / 2
            + PICKUP.chosen().ride().bumpMm();
    double freeMm = tubeTopMm + CATALOG.limits().get("axle-to-rail").goodMin();
    double lackMm = freeMm - PICKUP.chosen().ride().railUndersideAtAxleMm();
    assertEquals(2.5 * INCH_MM, lackMm, 1e-9);
    // A notch deeper than half the rail would be no notch (common practice, no source).
    assertTrue(lackMm < measured.rails().depth().meanMm() / 2);
  }

  /**
   * At ride the joints are 49 in apart lengthwise and about 4.4 in in height; straight up by the
   * bump of 3 1/2 in the shaft is sqrt(49^2 + 4.4^2) - sqrt(49^2 + 0.9^2) = 0.19 in shorter, and
   * the bars' arc only adds to it.
   */
  @Test
  void pickupsSlipYokeBottomsInBump() {
    double shorterIn = Math.hypot(49, 4.4) - Math.hypot(49, 0.9);
    double roomMm = PICKUP.measured().driveshaft().get().slipRoomMm();
    Limit limit = CATALOG.limits().get("slip-room");
    assertEquals(Verdict.STOP, limit.verdict(roomMm - shorterIn * INCH_MM));
  }

  @Test
  void sedansAxleIsTooFarOutOfSquare() {
    double offMm =
        SEDAN.measured().wheelbase().right().meanMm()
            - SEDAN.measured().wheelbase().left().meanMm();
    assertEquals(5.0 / 16 * INCH_MM, offMm, 1e-9);
    assertEquals(Verdict.STOP, CATALOG.limits().get("wheelbase-square").verdict(offMm));
  }

  /** 13 1/4 + 1 1/2 + 3 + 1/2 = 18 1/4 in, rail at 18 1/2 in: no notch. */
  @Test
  void sedanNeedsNoNotch() {
    Measured measured = SEDAN.measured();
    double freeMm =
        measured.tyre().loadedRadius().meanMm()
            + measured.axle().tubeDiameterMm() / 2
            + SEDAN.chosen().ride().bumpMm()
            + CATALOG.limits().get("axle-to-rail").goodMin();
    assertEquals(18.25 * INCH_MM, freeMm, 1e-9);
    assertTrue(freeMm < SEDAN.chosen().ride().railUndersideAtAxleMm());
  }
}
