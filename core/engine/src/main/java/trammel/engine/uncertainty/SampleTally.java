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
 * What every check read on some samples, summed up as they come: its size does not depend on how
 * many they are. Tallies are added up in one order, so that the sums are the same on any number of
 * processors.
 */
final class SampleTally {
  private final Judge judge;
  private final double[] nominal;
  private final int[] notGood;
  private final int[] stop;
  private final int[] count;
  private final double[] sum;
  private final double[] squares;
  private final double[] value;
  private final Verdict[] verdict;
  private int samples;
  private int impossible;

  /**
   * @param nominal value of each check from which the samples are measured, so that large values
   *     with a small spread keep their digits
   */
  SampleTally(Judge judge, double[] nominal) {
    this.judge = judge;
    this.nominal = nominal;
    int checks = nominal.length;
    notGood = new int[checks];
    stop = new int[checks];
    count = new int[checks];
    sum = new double[checks];
    squares = new double[checks];
    value = new double[checks];
    verdict = new Verdict[checks];
  }

  /** Makes every check on a sample's layout. */
  void read(Layout layout) {
    Arrays.fill(verdict, null);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, judge.settings());
    List<Check> checks = judge.checks();
    for (int i = 0; i < checks.size(); i++) {
      Optional<Judge.Finding> finding = judge.find(checks.get(i), analysis);
      if (finding.isPresent()) {
        value[i] = finding.get().value();
        verdict[i] = finding.get().verdict();
      }
    }
    take();
  }

  /** Notes that there is no layout for a sample. */
  void impossible() {
    Arrays.fill(verdict, null);
    take();
  }

  private void take() {
    samples++;
    boolean any = false;
    for (int i = 0; i < verdict.length; i++) {
      // A check that cannot be made any more is as bad as one that says stop.
      notGood[i] += verdict[i] == Verdict.GOOD ? 0 : 1;
      stop[i] += verdict[i] == null || verdict[i] == Verdict.STOP ? 1 : 0;
      if (verdict[i] != null) {
        double off = value[i] - nominal[i];
        count[i]++;
        sum[i] += off;
        squares[i] += off * off;
        any = true;
      }
    }
    impossible += any ? 0 : 1;
  }

  /** Adds what other samples read. */
  void add(SampleTally other) {
    samples += other.samples;
    impossible += other.impossible;
    for (int i = 0; i < count.length; i++) {
      notGood[i] += other.notGood[i];
      stop[i] += other.stop[i];
      count[i] += other.count[i];
      sum[i] += other.sum[i];
      squares[i] += other.squares[i];
    }
  }

  int impossibleSamples() {
    return impossible;
  }

  double notGoodShare(int check) {
    return (double) notGood[check] / samples;
  }

  double stopShare(int check) {
    return (double) stop[check] / samples;
  }

  double standardDeviation(int check) {
    int n = count[check];
    double spread = squares[check] - sum[check] * sum[check] / n;
    return n < 2 ? 0 : Math.sqrt(Math.max(0, spread) / (n - 1));
  }
}
