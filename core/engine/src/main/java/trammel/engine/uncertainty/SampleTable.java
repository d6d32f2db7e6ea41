package trammel.engine.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Layout;

/**
 * What every check read on every one of a few samples. They may be filled in by several threads.
 */
final class SampleTable {
  private final Judge judge;
  private final double[][] values;
  private final Verdict[][] verdicts;

  SampleTable(Judge judge, int samples) {
    this.judge = judge;
    values = new double[samples][judge.checks().size()];
    verdicts = new Verdict[samples][judge.checks().size()];
  }

  /** Makes every check on a sample's layout. */
  void read(int sample, Layout layout) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, judge.settings());
    List<Check> checks = judge.checks();
    for (int i = 0; i < checks.size(); i++) {
      Optional<Judge.Finding> finding = judge.find(checks.get(i), analysis);
      if (finding.isPresent()) {
        values[sample][i] = finding.get().value();
        verdicts[sample][i] = finding.get().verdict();
      }
    }
  }

  /** Notes that there is no layout for a sample. */
  void impossible(int sample) {
    Arrays.fill(verdicts[sample], null);
  }

  boolean has(int sample, int check) {
    return verdicts[sample][check] != null;
  }

  double value(int sample, int check) {
    return values[sample][check];
  }

  /** A check that cannot be made any more is as bad as one that says stop. */
  Verdict verdict(int sample, int check) {
    return has(sample, check) ? verdicts[sample][check] : Verdict.STOP;
  }

  double[] values(int sample) {
    return values[sample];
  }
}
