package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
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
 * layouts tried of each kind, {@code .seed} the chances taken; see docs/performance.md.
 */
@Tag("long")
class ArrangeAgainstAnnealingIT {
  private static final Catalog CATALOG =
      CatalogReader.read(List.of(Path.of("..", "..", "catalogs", "standard")));
  private static final Extensions EXTENSIONS = OwnPlugins.extensions();

  /** Of the vehicles for which the other finds a layout, the tool finds one for so many. */
  private static final double FOUND_SHARE = 0.95;

  /** A price that is as good as the other's. */
  private static final double NEAR = 1.03;

  private static final long CHANCE = 1_000_000 * Long.getLong("trammel.annealing.seed", 0);

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
    int near = 0;
    for (long seed = first; seed <= last; seed++) {
      PlausibleVehicle vehicle = PlausibleVehicle.draw(new Draw(seed));
      OptionalDouble searched = searched(vehicle, seed);
      OptionalDouble annealed = annealed(vehicle, seed, tries);
      reporter.publishEntry(
          "vehicle " + seed,
          "search "
              + words(searched)
              + "; annealing, "
              + tries
              + " layouts of each kind, "
              + words(annealed));
      if (annealed.isPresent()) {
        other++;
        both += searched.isPresent() ? 1 : 0;
        near += searched.orElse(Double.NaN) <= NEAR * annealed.getAsDouble() ? 1 : 0;
      }
    }
    reporter.publishEntry("within 3 % of the price", near + " of " + other);
    assertTrue(both >= FOUND_SHARE * other, both + " of " + other);
  }

  private static String words(OptionalDouble price) {
    return price.isPresent() ? "passes at " + price.getAsDouble() : "finds none that passes";
  }

  /** The price of the cheapest layout that passes, as the tool's search finds it. */
  private static OptionalDouble searched(PlausibleVehicle vehicle, long seed) {
    String text = JobText.of(vehicle, "R-" + seed, "triangulated", "coil-spring");
    Arrangement found =
        new Arranging(EXTENSIONS, CATALOG, ArrangeAgainstAnnealingIT::estimate)
            .arrange(JobDocument.of("drawn.yaml", text), Wishes.usual(), ArrangeListener.NONE);
    return found.layouts().stream()
        .filter(ArrangedLayout::passes)
        .mapToDouble(layout -> price(layout.estimate()))
        .min();
  }

  private static OptionalDouble annealed(PlausibleVehicle vehicle, long seed, int tries) {
    double least = Double.POSITIVE_INFINITY;
    long kind = 0;
    for (AxleLinkage linkage : EXTENSIONS.linkages()) {
      for (SpringMount spring : EXTENSIONS.springs()) {
        for (String mounting : mountings(linkage)) {
          JobDocument job =
              JobDocument.of(
                  "drawn.yaml", JobText.of(vehicle, "R-" + seed, linkage.id(), spring.id()));
          if (!mounting.isEmpty()) {
            job = job.withValue("chosen.linkage_options.mounting", mounting);
          }
          long chance = CHANCE + 31 * seed + kind++;
          least =
              Math.min(
                  least,
                  new Annealing(
                          CATALOG, linkage, spring, job, draft -> price(estimate(draft)), chance)
                      .cheapest(tries)
                      .orElse(Double.POSITIVE_INFINITY));
        }
      }
    }
    return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
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
