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
import trammel.planning.labour.Operation;
import trammel.planning.labour.ThreePoint;

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
   * One observation of a normal mean with a normal prior, worked by hand: the prior of pace and
   * operation together has variance 0.2^2 + 0.2^2 = 0.08; hours with a deviation of 20 % have 0.04.
   * Hours 1.5 times the standard are ln 1.5 + 0.04/2 = 0.42547, of which 0.08/(0.08 + 0.04) is
   * taken: 0.28364, a factor of 1.328. Source: Gelman and others, Bayesian Data Analysis, eq. 2.10,
   * from memory.
   */
  @Test
  void oneJobMovesTheFactorPartOfTheWay() {
    LearnedHours learned = LearnedHours.from(List.of(job(10, 2, 15)), 0.3);
    // The spread is learned first from the same job: (8 + e2/v)/9 of the catalog's variance.
    double error = Math.log(1.5) + 0.02;
    double chance = 0.04 * (8 + error * error / 0.12) / 9;
    double left = Math.log(1.5) + chance / 2;
    assertEquals(Math.exp(left * 0.08 / (0.08 + chance)), learned.factor("fit"), 1e-9);
    assertTrue(learned.factor("fit") > 1.2 && learned.factor("fit") < 1.4);
  }

  /** What is learned of one operation says something of the pace at which all others are done. */
  @Test
  void anOperationThatWasNeverClosedSharesThePace() {
    LearnedHours learned = LearnedHours.from(List.of(job(10, 2, 15)), 0.3);
    assertTrue(learned.factor("other") > 1.05);
    assertTrue(learned.factor("other") < learned.factor("fit"));
  }

  @Test
  void hoursOnTheDotLeaveTheFactorAtOneAndNarrowIt() {
    List<ClosedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      jobs.add(job(10, 2, 10));
    }
    LearnedHours learned = LearnedHours.from(jobs, 0.3);
    assertEquals(1, learned.factor("fit"), 0.03);
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
  @Tag("reference-full")
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
