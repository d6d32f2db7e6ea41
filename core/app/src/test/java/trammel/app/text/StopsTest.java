package trammel.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Verdict;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.PlanCheck;
import trammel.reading.quantity.UnitSystem;

/** What says stop is said with its number first, then its limit; nothing says nothing. */
class StopsTest {
  private static final Amounts US = new Amounts(UnitSystem.US);

  @Test
  void whereNothingSaysStopNothingIsSaid() {
    assertEquals("", Stops.NONE.text());
    assertEquals("", Stops.NONE.line());
    assertEquals("Cut lists", Stops.NONE.before("Cut lists"));
    assertTrue(Stops.of("D-1", List.of(), US).isEmpty());
  }

  /** English: one pair, two pairs. */
  @Test
  void severalPairsOfPartsAreSaidAsSeveral() {
    assertTrue(said(1).startsWith("1 pair of parts that cut into each other, at ride"), said(1));
    assertTrue(said(2).startsWith("2 pairs of parts that cut into each other, at ride"), said(2));
  }

  private static String said(int pairs) {
    PlanCheck check = PlanCheck.PARTS_APART;
    Limit limit = Limit.atMost(0, 0, "two parts cannot stand in one place");
    CheckResult.Judged judged =
        new CheckResult.Judged(
            check.id(),
            check.title(),
            check.measure(),
            pairs,
            Phrase.NONE,
            List.of(),
            limit,
            Verdict.STOP,
            Optional.empty(),
            "");
    return Stops.of("D-1", List.of(judged), US).sentences().get(0);
  }

  @Test
  void severalJobsAreToldApartByTheirNumbers() {
    Stops one = new Stops(List.of(new Stops.Stop("D-1", "slip-room", "no room")));
    assertEquals("STOP: no room", one.line());
    Stops two = one.plus(new Stops(List.of(new Stops.Stop("D-2", "square", "not square"))));
    assertEquals("STOP: job D-1: no room; job D-2: not square", two.line());
    assertEquals("STOP. Cut lists", two.before("Cut lists"));
    assertTrue(two.text().startsWith(Stops.HEADLINE + "\n  STOP  job D-1: no room\n"));
  }
}
