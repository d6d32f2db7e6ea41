package trammel.planning.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.trade.labour.Operation;
import trammel.trade.labour.ThreePoint;

class LearnedHoursTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final Operation FIT =
      new Operation(
          "fit", "fit bracket", "bracket", new ThreePoint(1, 2, 3), List.of(), "invented");

  private static ClosedJob job(double standard, double deviation, double used) {
    return new ClosedJob(
        "J1",
        DAY,
        standard,
        1.2 * standard,
        List.of(new ClosedOperation("fit", standard, deviation, OptionalDouble.of(used))),
        OptionalDouble.empty());
  }

  @Test
  void withoutAClosedJobTheCatalogStands() {
    LearnedHours learned = LearnedHours.from(List.of(), 0.3);
    assertEquals(FIT, learned.of(FIT));
    assertEquals(1, learned.factor("fit"));
    assertEquals(0.3, learned.correlation());
  }

  /**
   * One job by credibility, worked by hand. Not known of pace and operation together: 0.2^2 + 0.2^2
   * = 0.08; hours with a deviation of 20 % scatter by 0.04, four times that where a job counts a
   * quarter. 11 h on 10 h are 0.1 over. The spread first: (8 + 0.1^2/(0.04 + 0.08))/9 = 0.898148 of
   * 0.04 = 0.035926. Then Z = 0.08/(0.08 + 4 x 0.035926) = 0.357616 of 0.1: a factor of 1.03576.
   * Source: Z = v/(v + s), Buehlmann, ASTIN Bulletin 4, 1967, from memory.
   */
  @Test
  void oneJobMovesTheFactorPartOfTheWay() {
    LearnedHours learned = LearnedHours.from(List.of(job(10, 2, 11)), 0.3);
    assertEquals(1.03576, learned.factor("fit"), 1e-5);
  }

  /** As far out as one job may be, it moves a factor by less than a quarter, and not below zero. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 15, 30, 9_999})
  void oneJobHoweverFarOutMovesAFactorALittle(double used) {
    double alone = LearnedHours.from(List.of(job(10, 2, used)), 0.3).factor("fit");
    assertEquals(1, alone, 0.25);
    assertEquals(used > 10, alone > 1);
    double whole = LearnedHours.from(List.of(wholeJob(10 * used)), 0.3).factor("a");
    assertEquals(1, whole, 0.25);
  }

  private static ClosedJob wholeJob(double used) {
    return new ClosedJob(
        "J1",
        DAY,
        100,
        112,
        List.of(
            new ClosedOperation("a", 60, 9, OptionalDouble.empty()),
            new ClosedOperation("b", 40, 9, OptionalDouble.empty())),
        OptionalDouble.of(used));
  }

  /**
   * A job that takes the mean hours that its quote printed says that the quote was right: the quote
   * prints a mean, so the mean stays. The next job is quoted with what was learned.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void jobsThatTakeTheirQuotedMeanChangeNoHours(boolean apart) {
    Operation weld =
        new Operation(
            "weld", "weld bracket", "bracket", new ThreePoint(2, 3, 9), List.of(), "invented");
    List<ClosedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      LearnedHours learned = LearnedHours.from(jobs, 0.3);
      List<ClosedOperation> operations = new ArrayList<>();
      double quoted = 0;
      for (Operation operation : List.of(FIT, weld)) {
        double mean = learned.of(operation).hoursPerUnit().mean();
        quoted += mean;
        operations.add(
            new ClosedOperation(
                operation.key(),
                operation.hoursPerUnit().mean(),
                operation.hoursPerUnit().standardDeviation(),
                apart ? OptionalDouble.of(mean) : OptionalDouble.empty()));
      }
      jobs.add(
          new ClosedJob("J" + i, DAY, quoted, 1.2 * quoted, operations, OptionalDouble.of(quoted)));
    }
    LearnedHours learned = LearnedHours.from(jobs, 0.3);
    for (Operation operation : List.of(FIT, weld)) {
      assertEquals(1.0, learned.factor(operation.key()), 1e-9);
      assertEquals(
          operation.hoursPerUnit().mean(),
          learned.of(operation).hoursPerUnit().mean(),
          1e-9 * operation.hoursPerUnit().mean());
    }
  }

  /** What is learned of one operation says something of the pace at which all others are done. */
  @Test
  void anOperationThatWasNeverClosedSharesThePace() {
    LearnedHours learned = LearnedHours.from(List.of(job(10, 2, 15)), 0.3);
    assertTrue(learned.factor("other") > 1.02);
    assertTrue(learned.factor("other") < learned.factor("fit"));
  }

  @Test
  void hoursOnTheDotLeaveTheFactorAtOneAndNarrowIt() {
    List<ClosedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      jobs.add(job(10, 2, 10));
    }
    LearnedHours learned = LearnedHours.from(jobs, 0.3);
    assertEquals(1, learned.factor("fit"), 1e-9);
    assertTrue(learned.scatter() < 0.75, "a shop that never varies: " + learned.scatter());
    assertTrue(
        learned.of(FIT).hoursPerUnit().standardDeviation()
            < FIT.hoursPerUnit().standardDeviation());
  }

  @Test
  void aShopThatScattersGetsAWiderSpread() {
    List<ClosedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      jobs.add(job(10, 2, i % 2 == 0 ? 5 : 20));
    }
    LearnedHours learned = LearnedHours.from(jobs, 0.3);
    assertTrue(learned.scatter() > 2, "" + learned.scatter());
    ThreePoint hours = learned.of(FIT).hoursPerUnit();
    assertTrue(hours.standardDeviation() > 1.3 * FIT.hoursPerUnit().standardDeviation());
    assertEquals(learned.factor("fit") * FIT.hoursPerUnit().mean(), hours.mean(), 1e-6);
  }

  @Test
  void moreHoursInThePartsThanInTheWholeAreRefused() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new ClosedJob(
                    "J9",
                    DAY,
                    10,
                    12,
                    List.of(
                        new ClosedOperation("a", 5, 1, OptionalDouble.of(9)),
                        new ClosedOperation("b", 5, 1, OptionalDouble.empty())),
                    OptionalDouble.of(8)));
    assertTrue(refused.getMessage().contains("J9"), refused.getMessage());
  }

  /**
   * Wilson's interval for 8 of 10, nine times in ten: worked by hand from the formula, centre (0.8
   * + 2.7055/20)/(1 + 0.27055) = 0.7361, half 1.64485 root(0.016 + 2.7055/400)/1.27055 = 0.1953.
   */
  @Test
  void eightOfTenQuotesSpeakForAWideRange() {
    QuoteRecord record = new QuoteRecord(10, 8);
    assertEquals(0.5408, record.leastShare(), 1e-3);
    assertEquals(0.9314, record.mostShare(), 1e-3);
  }

  @Test
  void simulatedShopsAreLearned() {
    simulate(120, 20261128);
  }

  /** A thousand simulated shops; the command is in docs/performance.md. */
  @Test
  @Tag("long")
  void aThousandSimulatedShopsAreLearned() {
    simulate(1000, 7);
  }

  /**
   * The factors close in on the shops' own, and eight of ten jobs stay within P80: 75 to 85 % of
   * them.
   */
  private static void simulate(int shops, long seed) {
    int jobs = 30;
    double[] squares = new double[jobs + 1];
    int within = 0;
    for (int s = 0; s < shops; s++) {
      SimulatedShop shop = new SimulatedShop(seed + s);
      for (int j = 1; j <= jobs; j++) {
        within += shop.closeAJob() ? 1 : 0;
        LearnedHours learned = shop.learned();
        for (int k = 0; k < SimulatedShop.operations(); k++) {
          double off = Math.log(learned.factor(SimulatedShop.key(k)) / shop.trueFactor(k));
          squares[j] += off * off / (shops * SimulatedShop.operations());
        }
      }
    }
    double share = (double) within / (shops * jobs);
    System.out.printf(
        "%nsimulated shops: %d, within P80 %.3f, error of factors %.3f after 1 job, %.3f after 5, %.3f"
            + " after 30%n",
        shops, share, Math.sqrt(squares[1]), Math.sqrt(squares[5]), Math.sqrt(squares[jobs]));
    assertTrue(share >= 0.75 && share <= 0.85, "within P80: " + share);
    assertTrue(Math.sqrt(squares[5]) < Math.sqrt(squares[1]));
    assertTrue(Math.sqrt(squares[jobs]) < 0.5 * Math.sqrt(squares[1]));
    assertTrue(Math.sqrt(squares[jobs]) < 0.1, "error after 30 jobs " + Math.sqrt(squares[jobs]));
  }
}
