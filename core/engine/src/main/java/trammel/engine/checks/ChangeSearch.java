package trammel.engine.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.layout.Layout;

/**
 * Looks for the smallest change, in steps that a fabricator can set, that makes one check good. A
 * change that makes no other check worse is preferred over a smaller one that does; one that makes
 * another check say stop is named only for what says stop itself.
 */
final class ChangeSearch {
  private final Judge judge;
  private final LayoutAnalysis before;
  private final List<Judge.Finding> found;
  private final Judge.Finding finding;

  /** What was tried of the adjustment at hand, by the steps; strides meet again and again. */
  private final Map<Long, Trial> trials = new HashMap<>();

  /** A changed layout and what the check found on it; empty where it cannot be made or judged. */
  private record Trial(Optional<LayoutAnalysis> after, Optional<Judge.Finding> found) {}

  /**
   * @param judge makes the checks again
   * @param before the layout as it is
   * @param found what all checks found on it, in their order
   * @param finding the one to make good
   */
  ChangeSearch(
      Judge judge, LayoutAnalysis before, List<Judge.Finding> found, Judge.Finding finding) {
    this.judge = judge;
    this.before = before;
    this.found = found;
    this.finding = finding;
  }

  Optional<Change> search() {
    Change fallback = null;
    for (Adjustment adjustment : finding.check().adjustments(before)) {
      Optional<Change> change = smallest(adjustment);
      if (change.isPresent() && change.get().upsets().isEmpty()) {
        return change;
      }
      if (change.isPresent() && isWorthTelling(change.get(), fallback)) {
        fallback = change.get();
      }
    }
    return Optional.ofNullable(fallback);
  }

  /** A remark is not bought off with a stop; a stop may be moved, where nothing milder helps. */
  private boolean isWorthTelling(Change change, Change known) {
    if (change.bringsStop()) {
      return known == null && finding.verdict() == Verdict.STOP;
    }
    return known == null || known.bringsStop();
  }

  /** The smallest amount either way: growing strides, then closed in on step by step. */
  private Optional<Change> smallest(Adjustment adjustment) {
    trials.clear();
    long most = Math.round(adjustment.largest() / adjustment.step());
    long up = fewestSteps(adjustment, 1, most);
    long down = fewestSteps(adjustment, -1, most);
    if (up < 0 && down < 0) {
      return Optional.empty();
    }
    long steps = down < 0 || (up >= 0 && up <= down) ? up : -down;
    return Optional.of(changed(adjustment, steps));
  }

  private long fewestSteps(Adjustment adjustment, int sign, long most) {
    long failed = 0;
    long tried = 1;
    double failedMargin = finding.limit().margin(finding.value());
    // A count stays as it is until what it counts is gone.
    boolean isLevel = finding.check().measure() == Measure.COUNT;
    while (true) {
      Optional<Judge.Finding> found = tried(adjustment, sign * tried);
      if (found.isPresent() && found.get().verdict() == Verdict.GOOD) {
        return closeIn(adjustment, sign, failed, tried);
      }
      double margin =
          found.isPresent()
              ? found.get().limit().margin(found.get().value())
              : Double.NEGATIVE_INFINITY;
      if (margin < failedMargin || !isLevel && margin == failedMargin || tried >= most) {
        // A narrow good range may lie between the last two strides or just before them.
        return tried == 1 ? -1 : firstGood(adjustment, sign, failed / 2 + 1, tried);
      }
      failed = tried;
      failedMargin = margin;
      tried = Math.min(tried * 2, most);
    }
  }

  private long closeIn(Adjustment adjustment, int sign, long failed, long good) {
    long low = failed;
    long high = good;
    while (high - low > 1) {
      long middle = (low + high) / 2;
      if (passes(adjustment, sign * middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * The fewest steps in a stretch whose margin rises and falls again, with nothing good at either
   * end: closes in on the highest margin by thirds.
   */
  private long firstGood(Adjustment adjustment, int sign, long from, long to) {
    long low = from;
    long high = to - 1;
    while (low <= high) {
      long third = (high - low) / 3;
      double left = margin(adjustment, sign * (low + third));
      double right = margin(adjustment, sign * (high - third));
      if (isGood(left)) {
        return closeIn(adjustment, sign, from - 1, low + third);
      }
      if (isGood(right)) {
        return closeIn(adjustment, sign, from - 1, high - third);
      }
      if (left < right) {
        low = low + third + 1;
      } else {
        high = high - third - 1;
      }
    }
    return -1;
  }

  private double margin(Adjustment adjustment, long steps) {
    Optional<Judge.Finding> found = tried(adjustment, steps);
    if (found.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    return found.get().verdict() == Verdict.GOOD
        ? Double.POSITIVE_INFINITY
        : found.get().limit().margin(found.get().value());
  }

  private static boolean isGood(double margin) {
    return margin == Double.POSITIVE_INFINITY;
  }

  private boolean passes(Adjustment adjustment, long steps) {
    Optional<Judge.Finding> found = tried(adjustment, steps);
    return found.isPresent() && found.get().verdict() == Verdict.GOOD;
  }

  private Optional<Judge.Finding> tried(Adjustment adjustment, long steps) {
    return trial(adjustment, steps).found();
  }

  private Trial trial(Adjustment adjustment, long steps) {
    Trial known = trials.get(steps);
    if (known == null) {
      Optional<LayoutAnalysis> after = analysed(adjustment, steps * adjustment.step());
      known =
          new Trial(
              after, after.isEmpty() ? Optional.empty() : judge.find(finding.check(), after.get()));
      trials.put(steps, known);
    }
    return known;
  }

  private Optional<LayoutAnalysis> analysed(Adjustment adjustment, double amount) {
    try {
      Layout layout = adjustment.apply(before.layout(), amount);
      return Optional.of(new LayoutAnalysis(layout, judge.settings()));
    } catch (IllegalArgumentException impossible) {
      // The domain refuses this layout, so the change cannot be made.
      return Optional.empty();
    }
  }

  /** A change with what it would make worse. */
  private Change changed(Adjustment adjustment, long steps) {
    LayoutAnalysis after = trial(adjustment, steps).after().orElseThrow();
    List<String> upsets = new ArrayList<>();
    boolean bringsStop = false;
    for (Judge.Finding was : found) {
      if (was.verdict() == Verdict.STOP || was == finding) {
        continue;
      }
      Optional<Judge.Finding> is = judge.find(was.check(), after);
      if (is.isPresent() && is.get().verdict().compareTo(was.verdict()) > 0) {
        upsets.add(was.check().title());
        bringsStop |= is.get().verdict() == Verdict.STOP;
      }
    }
    return new Change(adjustment, steps * adjustment.step(), upsets, bringsStop);
  }
}
