package trammel.plugins.fourlinklateral;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Change;
import trammel.engine.checks.Check;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Layout;
import trammel.planning.draft.BracketTabs;
import trammel.planning.draft.BracketWelds;

class BracketStrengthTest {

  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void everyEndOfEveryBarIsHeldByAWeldThatIsChecked(String mounting) {
    Trial trial = Trial.mounted(mounting);
    WorkPlan plan = trial.plan();
    trial
        .bars()
        .forEach(
            bar -> {
              long ends =
                  plan.feet().stream()
                      .filter(foot -> foot.bars().contains(bar.name()))
                      .map(WeldedFoot::end)
                      .distinct()
                      .count();
              assertEquals(2, ends, bar.name());
            });
  }

  /** The weld list and the check speak of the same seams: their lengths agree. */
  @ParameterizedTest
  @ValueSource(strings = {"inboard", "outboard"})
  void theWeldsCheckedAreThoseThatAreListed(String mounting) {
    WorkPlan plan = Trial.mounted(mounting).plan();
    WeldedFoot saddle =
        plan.feet().stream()
            .filter(foot -> foot.name().equals("lower-left axle bracket to tube"))
            .findFirst()
            .orElseThrow();
    double listedMm = Trial.weld(plan, "lower-left axle bracket to tube").totalLengthMm();
    assertEquals(listedMm, saddle.welds().lengthMm(), 0.005 * listedMm);
  }

  @ParameterizedTest
  @CsvSource({"inboard, 0.9", "outboard, 0.9", "inboard, 0.8", "outboard, 0.8"})
  void theChangeThatIsOfferedHelps(String mounting, double shareOfToday) {
    Trial trial = Trial.mounted(mounting);
    Layout layout = trial.layout(trial.bars());
    List<Check> checks = List.of(new BracketTabs(), new BracketWelds(Trial.LINKAGE, trial.site()));
    LayoutAnalysis analysis = new LayoutAnalysis(layout, Trial.CATALOG.analysis());
    Map<String, Limit> limits = new HashMap<>();
    for (Check check : checks) {
      double today = ((Reading.Value) check.read(analysis)).value();
      limits.put(
          check.id(),
          new Limit(
              Double.NEGATIVE_INFINITY,
              shareOfToday * today,
              Double.NEGATIVE_INFINITY,
              Double.POSITIVE_INFINITY,
              "a limit that this layout misses"));
    }
    Judge judge = new Judge(checks, limits, Trial.CATALOG.analysis());
    for (CheckResult result : judge.judge(layout)) {
      CheckResult.Judged judged = (CheckResult.Judged) result;
      assertEquals(Verdict.LOOK_AGAIN, judged.verdict());
      if (judged.change().isEmpty()) {
        // Welds on the axle tube are as large as its wall takes: there may be nothing to offer.
        assertEquals("bracket-welds", judged.id());
        continue;
      }
      Change change = judged.change().get();
      LayoutAnalysis after =
          new LayoutAnalysis(
              change.adjustment().apply(layout, change.amount()), Trial.CATALOG.analysis());
      Check check =
          checks.stream().filter(one -> one.id().equals(judged.id())).findFirst().orElseThrow();
      assertEquals(Verdict.GOOD, judge.find(check, after).orElseThrow().verdict());
    }
  }
}
