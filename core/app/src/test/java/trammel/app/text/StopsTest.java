package trammel.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
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
