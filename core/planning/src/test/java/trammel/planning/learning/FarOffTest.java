package trammel.planning.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits are common practice, no source: twice or half for a job, three times for an operation. */
class FarOffTest {
  private static final Map<String, Double> QUOTED = Map.of("fit", 100.0, "test", 29.0);

  private static ClosedJob job(OptionalDouble fit, OptionalDouble test, OptionalDouble whole) {
    return new ClosedJob(
        "D-101",
        LocalDate.of(2026, 11, 28),
        129,
        145,
        List.of(new ClosedOperation("fit", 90, 9, fit), new ClosedOperation("test", 30, 9, test)),
        whole);
  }

  private static OptionalDouble h(double hours) {
    return OptionalDouble.of(hours);
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** A figure too many: 1300 for 130. */
  @ParameterizedTest
  @CsvSource({"1300, 1", "9999, 1", "258, 1", "257, 0", "129, 0", "65, 0", "64, 1", "13, 1"})
  void aWholeJobIsFarOffAtTwiceOrHalfItsQuote(double used, int asked) {
    List<FarOff> far = FarOff.of(job(NONE, NONE, h(used)), QUOTED);
    assertEquals(asked, far.size());
    if (asked > 0) {
      assertEquals(new FarOff("the whole job", used, 129), far.get(0));
    }
  }

  @ParameterizedTest
  @CsvSource({"86, 0", "87, 1", "9.7, 0", "9.6, 1"})
  void anOperationIsFarOffAtThreeTimesOrAThird(double used, int asked) {
    assertEquals(asked, FarOff.of(job(NONE, h(used), NONE), QUOTED).size());
  }

  /** The whole is as quoted, yet next to nothing is left for what was not written down apart. */
  @Test
  void hoursOfTheWholeOnTheLineOfOneOperationAreFarOff() {
    List<FarOff> far = FarOff.of(job(NONE, h(100), h(129)), QUOTED);
    assertEquals(List.of("test", "what is not written down apart"), names(far, 100, 29));
  }

  private static List<String> names(List<FarOff> far, double... used) {
    for (int i = 0; i < used.length; i++) {
      assertEquals(used[i], far.get(i).usedHours(), 1e-9);
    }
    return far.stream().map(FarOff::what).toList();
  }

  /** A small operation may well take an hour where a quarter was quoted. */
  @Test
  void aFewHoursAreNeverAskedAbout() {
    assertEquals(List.of(), FarOff.of(job(NONE, h(1.9), NONE), Map.of("fit", 100.0, "test", 0.25)));
  }
}
