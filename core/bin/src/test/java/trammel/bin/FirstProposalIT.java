package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.PartNeed;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.RailGap;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Driveline;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** What a job leaves open is proposed so that its parts clear each other and the rails. */
class FirstProposalIT {
  private static final int VEHICLES = 12;
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");
  private static final Catalog CATALOG = CatalogReader.read(List.of(STANDARD));
  private static final Drafting DRAFTING = new Drafting(OwnPlugins.extensions(), CATALOG);

  private static JobDocument job(long seed, String linkage) {
    return JobDocument.of(
        "drawn.yaml",
        JobText.of(PlausibleVehicle.draw(new Draw(seed)), "R-" + seed, linkage, "coil-spring"));
  }

  private static Draft draft(JobDocument job) {
    return DRAFTING.draft(JobReader.read(job), UnitSystem.US);
  }

  private static LayoutAnalysis analysis(Draft draft) {
    return new LayoutAnalysis(draft.layout(), draft.judge().settings());
  }

  private static Verdict verdict(Draft draft, String id) {
    return found(draft, id).orElseThrow().verdict();
  }

  /** Empty where it is not known. */
  private static Optional<Judge.Finding> found(Draft draft, String id) {
    Check check =
        draft.judge().checks().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
    return draft.judge().find(check, analysis(draft));
  }

  /**
   * A tube that keeps its distance at full bump may still strike the rail where stops are met at
   * speed: there the notch is deeper than the distance alone asks for.
   */
  @Test
  void theNotchLeavesRoomForStopsThatAreMetAtSpeed() {
    double asked = CATALOG.limits().get("axle-to-rail").goodMin();
    int deeper = 0;
    for (long seed = 1; seed <= VEHICLES + 3; seed++) {
      Draft draft = draft(job(seed, "triangulated"));
      assertNotEquals(Verdict.STOP, verdict(draft, "bump-stop-room"), "seed " + seed);
      boolean isNotched = draft.layout().chassis().rails().notchDepthMm() > 0;
      deeper += isNotched && RailGap.leastMm(analysis(draft)) > asked + 25.4 / 4 ? 1 : 0;
    }
    assertTrue(deeper > 0, "no vehicle of these asks for a deeper notch");
  }

  /**
   * Left open, shocks stand otherwise where that leaves fewer vehicles refused or with parts in
   * each other than the usual lean and height do.
   */
  @Test
  void shocksStandOtherwiseWhereTheUsualStanceIsInTheWay() {
    int usual = 0;
    int open = 0;
    for (long seed = 18; seed < 18 + VEHICLES; seed++) {
      JobDocument left = job(seed, "triangulated");
      open += overlaps(left);
      usual +=
          overlaps(
              left.withValue("chosen.spring_options.lean", "12 deg")
                  .withValue("chosen.spring_options.lower_height", "-3 in"));
    }
    assertTrue(usual > open, usual + " as usual, " + open + " left open");
  }

  /** Left open, bars go outside the rails where shocks find no place clear of them inside. */
  @Test
  void barsGoOutsideTheRailsWhereTheyLeaveNoRoomForShocks() {
    int inboard = 0;
    int open = 0;
    for (long seed = 1; seed <= VEHICLES; seed++) {
      JobDocument left = job(seed, "four-link-lateral");
      open += overlaps(left);
      inboard += overlaps(left.withValue("chosen.linkage_options.mounting", "inboard"));
    }
    assertTrue(inboard > open, inboard + " inboard, " + open + " left open");
  }

  /**
   * Where the shaft that was measured would whirl, the plan has one new shaft in place of a rework
   * of the old, from the catalog and with its price; elsewhere it has none.
   */
  @Test
  void aShaftThatWouldWhirlIsMadeAnewAndBilled() {
    int anew = 0;
    for (long seed = 1; seed <= VEHICLES + 6; seed++) {
      Draft draft = draft(job(seed, "triangulated"));
      List<PartNeed> shafts =
          draft.work().parts().stream()
              .filter(part -> CATALOG.shaftTubes().containsKey(part.itemKey()))
              .toList();
      boolean isRework =
          draft.work().parts().stream()
              .anyMatch(part -> part.itemKey().equals("driveshaft-rework"));
      Driveline driveline = draft.layout().chassis().driveline();
      boolean isNewTube =
          draft
              .job()
              .measured()
              .driveshaft()
              .filter(was -> was.tubeDiameterMm() != driveline.shaftDiameterMm().orElseThrow())
              .isPresent();
      assertEquals(isNewTube ? 1 : 0, shafts.size(), "seed " + seed);
      assertTrue(!isNewTube || !isRework, "seed " + seed);
      assertTrue(
          found(draft, "shaft-critical-speed")
              .filter(judged -> judged.verdict() == Verdict.STOP)
              .isEmpty(),
          "seed " + seed);
      anew += shafts.size();
    }
    assertTrue(anew > 0, "no shaft of these whirls");
  }

  /** 1 where nothing fits the vehicle, or what does stands in each other. */
  private static int overlaps(JobDocument job) {
    try {
      return verdict(draft(job), "parts-apart") == Verdict.STOP ? 1 : 0;
    } catch (UnworkableLayoutException refused) {
      return 1;
    }
  }
}
