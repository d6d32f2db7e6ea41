package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.planning.arrange.ArrangeListener;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Arranging;
import trammel.planning.arrange.Wishes;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.threelink.ThreeLinkLateral;
import trammel.plugins.triangulated.Triangulated;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/**
 * For how many vehicles drawn at random a search finds a layout that passes. In the build twenty
 * with a small effort over a few kinds of layout; {@code -Dtrammel.arrange.vehicles=300} takes
 * every kind and the usual effort, {@code -Dtrammel.arrange.first=51} goes on from there, see
 * docs/performance.md.
 */
class ArrangeVehiclesIT {
  private static final int IN_THE_BUILD = 20;
  private static final int SMALL_EFFORT = 20;

  /** Held from here on: a change that finds fewer without a STOP is a loss. */
  private static final int WITHOUT_STOP_IN_THE_BUILD = 14;

  private static final Path CATALOG = Path.of("..", "..", "catalogs", "standard");

  private final Catalog catalog = CatalogReader.read(List.of(CATALOG));
  private final Map<String, Integer> remaining = new TreeMap<>();
  private int passing;
  private int withoutStop;
  private int proposals;
  private int proposalsWithoutStop;

  @Test
  void aSearchFindsALayoutForPlausibleVehicles(TestReporter reporter) {
    int vehicles = Integer.getInteger("trammel.arrange.vehicles", IN_THE_BUILD);
    boolean isSmall = vehicles <= IN_THE_BUILD;
    int effort =
        Integer.getInteger("trammel.arrange.effort", isSmall ? SMALL_EFFORT : Wishes.USUAL_EFFORT);
    Extensions extensions = isSmall ? few() : OwnPlugins.extensions();
    int first = Integer.getInteger("trammel.arrange.first", 1);
    for (long seed = first; seed <= vehicles; seed++) {
      search(seed, extensions, effort);
      if (!isSmall || seed == vehicles) {
        reporter.publishEntry(
            "of the plausible vehicles "
                + first
                + " to "
                + seed
                + ", "
                + effort
                + " layouts tried each",
            totals());
      }
    }
    if (isSmall) {
      assertTrue(passing > 0, () -> "none passes; remaining " + remaining);
      assertTrue(
          withoutStop >= WITHOUT_STOP_IN_THE_BUILD,
          () -> withoutStop + " have no STOP; remaining " + remaining);
    }
  }

  /** So far: a long run that is cut off still counts. */
  private String totals() {
    return "every check good on "
        + passing
        + ", no STOP on "
        + withoutStop
        + ", first proposals of the kinds found without a STOP "
        + proposalsWithoutStop
        + " of "
        + proposals
        + "; what remains on the others "
        + remaining;
  }

  private static Extensions few() {
    return new Extensions(
        List.of(new Triangulated(), new ThreeLinkLateral()), List.of(new CoilSpringMount()));
  }

  private void search(long seed, Extensions extensions, int effort) {
    PlausibleVehicle vehicle = PlausibleVehicle.draw(new Draw(seed));
    String text =
        JobText.of(vehicle, "R-" + seed, extensions.linkages().get(0).id(), "coil-spring");
    Arrangement found =
        new Arranging(extensions, catalog, draft -> DraftPrice.of(catalog, draft))
            .arrange(
                JobDocument.of("drawn.yaml", text),
                Wishes.usual().trying(effort).giving(2),
                ArrangeListener.NONE);
    passing += found.passes() ? 1 : 0;
    if (found.layouts().isEmpty()) {
      remaining.merge("refused", 1, Integer::sum);
      return;
    }
    ArrangedLayout best = found.layouts().get(0);
    withoutStop += best.count(Verdict.STOP) == 0 ? 1 : 0;
    for (CheckResult.Judged open : best.open()) {
      if (!best.isOfMeasurements(open)) {
        remaining.merge(open.verdict() + " " + open.id(), 1, Integer::sum);
      }
    }
    if (found.passes()) {
      found.layouts().forEach(layout -> propose(vehicle, seed, layout, extensions));
    }
  }

  /** The first proposal of a linkage and a spring with which the search found a layout. */
  private void propose(
      PlausibleVehicle vehicle, long seed, ArrangedLayout layout, Extensions extensions) {
    Draft found = layout.estimate().draft();
    String text =
        JobText.of(vehicle, "R-" + seed, found.linkage().id(), found.job().chosen().spring());
    proposals++;
    try {
      Draft first =
          new Drafting(extensions, catalog)
              .draft(JobReader.read("drawn.yaml", text), UnitSystem.US);
      boolean stops =
          first.judge().verdicts(first.layout()).stream()
              .anyMatch(
                  result ->
                      result instanceof CheckResult.Judged judged
                          && judged.verdict() == Verdict.STOP
                          && !layout.isOfMeasurements(judged));
      proposalsWithoutStop += stops ? 0 : 1;
    } catch (UnworkableLayoutException refused) {
      // A proposal that is refused counts as one that is not without a STOP.
      return;
    }
  }
}
