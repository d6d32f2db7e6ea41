package trammel.testsupport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.testkit.engine.EngineExecutionResults;
import org.junit.platform.testkit.engine.EngineTestKit;
import org.junit.platform.testkit.engine.Events;
import org.opentest4j.AssertionFailedError;

class SeedsTest {
  private static final List<Long> RUN = new ArrayList<>();
  private static boolean isRunByATest;

  @BeforeEach
  void forget() {
    RUN.clear();
  }

  @Test
  void aPropertyIsCalledOncePerSeedAndIsOneTest() {
    Events tests = run("holds", Map.of()).testEvents();
    assertEquals(List.of(1L, 2L, 3L, 4L), RUN);
    assertEquals(1, tests.succeeded().count());
  }

  @Test
  void aFailureNamesItsSeedHowToRunItAloneAndWhatWasDrawn() {
    Throwable failure = failures("failsFromSeedThreeOn", Map.of()).get(0);
    assertTrue(failure.getMessage().contains("failsFromSeedThreeOn"), failure.getMessage());
    assertTrue(failure.getMessage().contains("fails with seed 3"), failure.getMessage());
    assertTrue(failure.getMessage().contains("-Dtrammel.seed=3"), failure.getMessage());
    String drawn = "drawn: " + new Draw(3).whole(0, 1000) + ", \"rail\\u000a\"";
    assertTrue(failure.getMessage().contains(drawn), failure.getMessage());
    assertTrue(failure.getMessage().contains("too long ==> expected: <1> but was: <2>"));
    assertEquals(1, ((AssertionFailedError) failure).getExpected().getValue());
    assertEquals("failsFromSeedThreeOn", frameOfTheProperty(failure));
  }

  @Test
  void aFaultThatIsNoAssertionNamesItsSeedToo() {
    Throwable failure = failures("throwsAtSeedTwo", Map.of()).get(0);
    assertTrue(failure.getMessage().contains("seed 2"), failure.getMessage());
    assertTrue(failure.getMessage().contains("IllegalStateException: no steel"));
    assertEquals(IllegalStateException.class, failure.getCause().getClass());
  }

  @Test
  void theFirstFailingSeedEndsTheProperty() {
    assertEquals(1, failures("failsFromSeedThreeOn", Map.of()).size());
    assertEquals(List.of(1L, 2L, 3L), RUN);
  }

  @Test
  void theFailingSeedFailsTheSameWhenItIsRunAlone() {
    Throwable among = failures("failsFromSeedThreeOn", Map.of()).get(0);
    RUN.clear();
    Throwable alone = failures("failsFromSeedThreeOn", Map.of("trammel.seed", "3")).get(0);
    assertEquals(List.of(3L), RUN);
    assertEquals(among.getMessage(), alone.getMessage());
  }

  @Test
  void oneSeedIsRunAlone() {
    run("holds", Map.of("trammel.seed", "4711"));
    assertEquals(List.of(4711L), RUN);
  }

  @Test
  void aLongRunTakesAMultipleOfTheSeeds() {
    run("holds", Map.of("trammel.seeds.times", "3"));
    assertEquals(12, RUN.size());
    assertEquals(12L, RUN.get(11));
  }

  @Test
  void aSeedThatDoesNotApplyIsPassedOver() {
    Events tests = run("doesNotApplyToSeedOne", Map.of()).testEvents();
    assertEquals(List.of(2L, 3L), RUN);
    assertEquals(1, tests.succeeded().count());
  }

  @Test
  void aSeedThatIsNoNumberIsRefusedWithItsText() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> SeedChoice.from(Map.of("trammel.seed", "red")::get));
    assertTrue(refused.getMessage().contains("trammel.seed is \"red\""), refused.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> SeedChoice.from(Map.of("trammel.seeds.times", "0")::get));
  }

  private static List<Throwable> failures(String property, Map<String, String> parameters) {
    return run(property, parameters)
        .testEvents()
        .failed()
        .map(event -> event.getRequiredPayload(TestExecutionResult.class))
        .map(result -> result.getThrowable().orElseThrow())
        .toList();
  }

  private static EngineExecutionResults run(String property, Map<String, String> parameters) {
    isRunByATest = true;
    try {
      return EngineTestKit.engine("junit-jupiter")
          .selectors(selectMethod(Examples.class, property, Draw.class))
          .configurationParameters(parameters)
          .execute();
    } finally {
      isRunByATest = false;
    }
  }

  static boolean isRunByATest() {
    return isRunByATest;
  }

  private static String frameOfTheProperty(Throwable failure) {
    return java.util.Arrays.stream(failure.getStackTrace())
        .filter(frame -> frame.getClassName().equals(Examples.class.getName()))
        .findFirst()
        .orElseThrow()
        .getMethodName();
  }

  /** Some of these fail on purpose: the build's own run passes them over. */
  @EnabledIf("trammel.testsupport.SeedsTest#isRunByATest")
  static class Examples {
    @Seeds(4)
    void holds(Draw draw) {
      RUN.add(draw.seed());
    }

    @Seeds(40)
    void failsFromSeedThreeOn(Draw draw) {
      RUN.add(draw.seed());
      draw.whole(0, 1000);
      draw.oneOf("rail\n");
      assertEquals(1, draw.seed() < 3 ? 1 : 2, "too long");
    }

    @Seeds(2)
    void throwsAtSeedTwo(Draw draw) {
      if (draw.seed() == 2) {
        throw new IllegalStateException("no steel");
      }
    }

    @Seeds(3)
    void doesNotApplyToSeedOne(Draw draw) {
      assumeTrue(draw.seed() != 1);
      RUN.add(draw.seed());
    }
  }
}
