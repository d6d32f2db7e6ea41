package trammel.engine.uncertainty;

import java.util.List;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Verdict;

/**
 * How sure one check is.
 *
 * @param id short name of the check
 * @param title what is checked
 * @param measure what kind of quantity the value is
 * @param value the value with every figure as it was taken to be
 * @param verdict the verdict on that value
 * @param standardDeviation standard deviation of the value over the samples
 * @param notGoodShare share of the samples in which it is not good, 0 to 1
 * @param stopShare share of the samples in which it says stop, 0 to 1
 * @param figures the figures that move it, the one that matters most first; empty if none does
 */
public record CheckChance(
    String id,
    String title,
    Measure measure,
    double value,
    Verdict verdict,
    double standardDeviation,
    double notGoodShare,
    double stopShare,
    List<FigureShare> figures) {
  public CheckChance {
    figures = List.copyOf(figures);
  }
}
