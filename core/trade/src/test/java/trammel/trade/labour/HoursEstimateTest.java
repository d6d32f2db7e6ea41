package trammel.trade.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.quantity.Phrase;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class HoursEstimateTest {

  /** Constructed job of five operations. */
  private static final List<ThreePoint> FIVE =
      List.of(
          new ThreePoint(3, 4, 8),
          new ThreePoint(1, 2, 4),
          new ThreePoint(6, 9, 18),
          new ThreePoint(4, 6, 10),
          new ThreePoint(2, 3, 6));

  /** The 24 base operations of a rear four-link: common practice, from memory. */
  private static final double[][] FOUR_LINK = {
    {.5, 1, 2}, {1, 1.5, 3}, {2, 4, 8}, {1, 2, 4}, {1.5, 2.5, 5}, {1.5, 2.5, 5}, {2, 4, 8},
    {2.5, 4, 8}, {2, 3, 6}, {4, 7, 14}, {.5, 1.5, 4}, {1.5, 2.5, 5}, {2, 3.5, 6}, {1.5, 3, 5},
    {3, 4.5, 8}, {1, 2, 5}, {3, 5.5, 10}, {.5, 1.5, 3}, {1.5, 2.5, 5}, {1.5, 3, 5}, {1, 2, 6},
    {1, 3, 8}, {1, 1.5, 3}, {1.5, 2, 4}
  };

  private static List<ThreePoint> fourLink() {
    List<ThreePoint> hours = new ArrayList<>();
    for (double[] one : FOUR_LINK) {
      hours.add(new ThreePoint(one[0], one[1], one[2]));
    }
    return hours;
  }

  private static HoursEstimate estimate(List<ThreePoint> hours, double correlation) {
    List<OperationLine> lines = new ArrayList<>();
    for (ThreePoint one : hours) {
      Operation operation =
          new Operation("op-" + lines.size(), "Operation", "job", one, List.of(), "invented");
      lines.add(
          new OperationLine(operation, 1, Phrase.text("1 job"), List.of(), Phrase.of("invented")));
    }
    return new HoursEstimate(lines, correlation);
  }

  /** Derived: mean 26.333, (b-a)/6 spread 2.5276, normal P80 28.461, P90 29.573. */
  @Test
  void constructedJobByTheRuleOfSix() {
    RuleOfSixSum sum = new RuleOfSixSum(FIVE);
    assertEquals(26.333, sum.meanHours(), 0.0005);
    assertEquals(2.5276, sum.independentDeviation(), 0.00005);
    assertEquals(28.461, sum.quantileHours(0.8), 0.001);
    assertEquals(29.573, sum.quantileHours(0.9), 0.001);
    assertEquals(2.13, sum.quantileHours(0.8) - sum.meanHours(), 0.005);
  }

  /** Simulated beta-PERT P80 28.64 (tolerance .1); adding the five P80s gives 31.08. */
  @Test
  void constructedJobByItsTrueSpread() {
    HoursEstimate independent = estimate(FIVE, 0);
    assertEquals(26.333, independent.meanHours(), 0.0005);
    assertEquals(28.64, independent.p80Hours(), 0.1);
    double added = 0;
    for (ThreePoint one : FIVE) {
      added += one.quantile(0.8);
    }
    assertEquals(31.08, added, 0.005);
    assertEquals(31.08, estimate(FIVE, 1).p80Hours(), 0.05);
  }

  /** Derived on the table: 38.5, 69.5, 140; mean 76.083; sd 3.785, P80 79.27; together 16.92. */
  @Test
  void fourLinkTableAddsUp() {
    HoursEstimate job = estimate(fourLink(), 0);
    assertEquals(24, job.lines().size());
    assertEquals(new ThreePoint(38.5, 69.5, 140), job.range());
    assertEquals(76.083, job.meanHours(), 0.0005);
    RuleOfSixSum sum = new RuleOfSixSum(fourLink());
    assertEquals(3.785, sum.independentDeviation(), 0.0005);
    assertEquals(79.27, sum.quantileHours(0.8), 0.005);
    assertEquals(16.92, sum.togetherDeviation(), 0.005);
    assertEquals(90.3, sum.meanHours() + 0.8416 * sum.togetherDeviation(), 0.05);
  }

  /**
   * Against 200 000 sampled jobs with the same correlation behind their normal variables. Sampling
   * itself is good to about 0.005 standard deviations.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.6, 1})
  void quantilesAgreeWithHeavySampling(double correlation) {
    for (List<ThreePoint> hours : List.of(FIVE, fourLink(), List.of(new ThreePoint(4, 6, 14)))) {
      HoursEstimate job = estimate(hours, correlation);
      HoursSampling sampled = new HoursSampling(hours, correlation, 200_000, 7);
      double unit = sampled.standardDeviation();
      assertEquals(sampled.meanHours(), job.meanHours(), 0.01 * unit);
      assertEquals(unit, job.standardDeviation(), 0.02 * unit);
      assertEquals(sampled.quantileHours(0.5), job.p50Hours(), 0.03 * unit);
      assertEquals(sampled.quantileHours(0.8), job.p80Hours(), 0.03 * unit);
      assertEquals(sampled.quantileHours(0.9), job.p90Hours(), 0.03 * unit);
    }
  }

  /** The worst case found: few lines, likely figures at an end; within 0.15 standard deviations. */
  @Test
  void lopsidedLinesAreStillNear() {
    List<ThreePoint> hours =
        List.of(new ThreePoint(0, 0, 10), new ThreePoint(1, 5, 5), new ThreePoint(2, 3, 4));
    HoursEstimate job = estimate(hours, 0);
    HoursSampling sampled = new HoursSampling(hours, 0, 200_000, 7);
    double unit = sampled.standardDeviation();
    assertEquals(sampled.quantileHours(0.5), job.p50Hours(), 0.15 * unit);
    assertEquals(sampled.quantileHours(0.8), job.p80Hours(), 0.15 * unit);
    assertEquals(sampled.quantileHours(0.9), job.p90Hours(), 0.15 * unit);
  }

  /** More correlation never narrows the job, and the quantiles keep their order and range. */
  @Seeds(100)
  void correlationOnlyWidens(Draw draw) {
    List<Double> likely = draw.listOf(1, 12, d -> d.between(0.1, 20));
    double correlation = draw.between(0, 1);
    List<ThreePoint> hours = new ArrayList<>();
    for (double one : likely) {
      hours.add(new ThreePoint(one * 0.6, one, one * 2.2));
    }
    HoursEstimate job = estimate(hours, correlation);
    assertTrue(job.standardDeviation() >= estimate(hours, 0).standardDeviation() - 1e-9);
    assertTrue(job.standardDeviation() <= estimate(hours, 1).standardDeviation() + 1e-9);
    assertTrue(job.range().low() <= job.p50Hours());
    assertTrue(job.p50Hours() < job.p80Hours());
    assertTrue(job.p80Hours() < job.p90Hours());
    assertTrue(job.p90Hours() <= job.range().high());
    assertEquals(job.p80Hours() - job.meanHours(), job.contingencyHours(0.8), 1e-9);
  }

  @Test
  void jobWithoutOperationsTakesNoTime() {
    HoursEstimate none = estimate(List.of(), 0.3);
    assertEquals(0, none.meanHours());
    assertEquals(0, none.p80Hours());
    assertEquals(0, none.contingencyHours(0.8));
  }

  private static Operation bracket() {
    return new Operation(
        "fit-bracket",
        "Fit and tack bracket",
        "bracket",
        new ThreePoint(0.5, 0.8, 1.5),
        List.of("access", "rust"),
        "invented");
  }

  @Test
  void lineMultipliesHoursByQuantityAndFactors() {
    LabourFactor inboard = new LabourFactor("access", "inboard", 1.2, "bars inside the rails");
    LabourFactor rusty = new LabourFactor("rust", "heavy rust", 1.5, "seen on the rails");
    OperationLine line =
        new OperationLine(
            bracket(),
            4,
            Phrase.text("4 brackets"),
            List.of(inboard, rusty),
            Phrase.of("4 link brackets"));
    assertEquals(1.8, line.factor(), 1e-12);
    assertEquals(0.5 * 4 * 1.8, line.hours().low(), 1e-12);
    assertEquals(0.8 * 4 * 1.8, line.hours().likely(), 1e-12);
    assertEquals(1.5 * 4 * 1.8, line.hours().high(), 1e-12);
  }

  @Test
  void factorThatDoesNotApplyIsRefused() {
    LabourFactor finish = new LabourFactor("finish", "show finish", 1.5, "invented");
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new OperationLine(
                        bracket(), 1, Phrase.text("1"), List.of(finish), Phrase.of("invented")))
            .getMessage();
    assertTrue(message.contains("fit-bracket") && message.contains("[access, rust]"), message);
    LabourFactor light = new LabourFactor("rust", "light rust", 1.1, "invented");
    LabourFactor heavy = new LabourFactor("rust", "heavy rust", 1.5, "invented");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new OperationLine(
                bracket(), 1, Phrase.text("1"), List.of(light, heavy), Phrase.of("invented")));
    assertThrows(
        IllegalArgumentException.class, () -> new LabourFactor("rust", "none", 0, "invented"));
    assertThrows(IllegalArgumentException.class, () -> new HoursEstimate(List.of(), 1.1));
  }
}
