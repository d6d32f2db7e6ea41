package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import trammel.planning.arrange.ArrangeListener;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Arranging;
import trammel.planning.arrange.Wishes;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Extensions;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.JobDocument;
import trammel.reading.fields.Field;
import trammel.testsupport.Draw;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/**
 * The search held against another algorithm with more effort: {@link Annealing} of every kind of
 * layout. {@code -Dtrammel.annealing.first} and {@code .last} name the vehicles, {@code .tries} the
 * layouts tried of each kind; see docs/performance.md.
 */
@Tag("long")
class ArrangeAgainstAnnealingIT {
  private static final Catalog CATALOG =
      CatalogReader.read(List.of(Path.of("..", "..", "catalogs", "standard")));
  private static final Extensions EXTENSIONS = OwnPlugins.extensions();

  /** Of the vehicles for which the other finds a layout, the tool finds one for so many. */
  private static final double FOUND_SHARE = 0.95;

  private static Estimate estimate(Draft draft) {
    return DraftPrice.of(CATALOG, draft);
  }

  @Test
  void whereAnnealingFindsALayoutThatPassesSoDoesTheSearch(TestReporter reporter) {
    long first = Long.getLong("trammel.annealing.first", 1);
    long last = Long.getLong("trammel.annealing.last", 3);
    int tries = Integer.getInteger("trammel.annealing.tries", 900);
    int other = 0;
    int both = 0;
    for (long seed = first; seed <= last; seed++) {
      PlausibleVehicle vehicle = PlausibleVehicle.draw(new Draw(seed));
      Optional<Double> searched = searched(vehicle, seed);
      Optional<Double> annealed = annealed(vehicle, seed, tries);
      other += annealed.isPresent() ? 1 : 0;
      both += annealed.isPresent() && searched.isPresent() ? 1 : 0;
      reporter.publishEntry(
          "vehicle " + seed,
          "search "
              + searched.map(price -> "passes at " + price).orElse("finds none that passes")
              + "; annealing, "
              + tries
              + " layouts of each kind, "
              + annealed.map(price -> "passes at " + price).orElse("finds none that passes"));
    }
    assertTrue(both >= FOUND_SHARE * other, both + " of " + other);
  }

  /** The price of the cheapest layout that passes, as the tool's search finds it. */
  private static Optional<Double> searched(PlausibleVehicle vehicle, long seed) {
    String text = JobText.of(vehicle, "R-" + seed, "triangulated", "coil-spring");
    Arrangement found =
        new Arranging(EXTENSIONS, CATALOG, ArrangeAgainstAnnealingIT::estimate)
            .arrange(JobDocument.of("drawn.yaml", text), Wishes.usual(), ArrangeListener.NONE);
    return found.layouts().stream()
        .filter(ArrangedLayout::passes)
        .map(layout -> price(layout.estimate()))
        .min(Double::compare);
  }

  private static Optional<Double> annealed(PlausibleVehicle vehicle, long seed, int tries) {
    List<Double> prices = new ArrayList<>();
    for (AxleLinkage linkage : EXTENSIONS.linkages()) {
      for (SpringMount spring : EXTENSIONS.springs()) {
        for (String mounting : mountings(linkage)) {
          JobDocument job =
              JobDocument.of(
                  "drawn.yaml", JobText.of(vehicle, "R-" + seed, linkage.id(), spring.id()));
          if (!mounting.isEmpty()) {
            job = job.withValue("chosen.linkage_options.mounting", mounting);
          }
          Annealing.Reached best =
              new Annealing(CATALOG, linkage, spring, job, 31 * seed + prices.size()).search(tries);
          if (best.penalty() == 0) {
            prices.add(price(estimate(best.draft().orElseThrow())));
          }
        }
      }
    }
    return prices.stream().min(Double::compare);
  }

  private static List<String> mountings(AxleLinkage linkage) {
    return linkage.options(CATALOG).stream()
        .filter(option -> option.key().equals("mounting"))
        .map(Field::choices)
        .findFirst()
        .orElse(List.of(""));
  }

  private static double price(Estimate estimate) {
    return estimate.price().total().amount().doubleValue();
  }
}
