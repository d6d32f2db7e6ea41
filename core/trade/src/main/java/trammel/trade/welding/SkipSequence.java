package trammel.trade.welding;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * Order in which a long seam is welded in short steps, so that heat is spread and the part stays
 * straight: every second step first, then those between, each laid back towards the start of the
 * seam. From four steps on, no two that follow each other touch.
 *
 * @param seamMm length of the seam, mm
 * @param longestStepMm longest step allowed, mm
 */
public record SkipSequence(double seamMm, double longestStepMm) {

  private static final int MOST_STEPS = 1000;

  /**
   * One step of the sequence.
   *
   * @param order 1 for the first welded
   * @param fromMm where the arc starts, mm from the start of the seam
   * @param toMm where it ends, mm from the start of the seam; less than the start
   */
  public record Step(int order, double fromMm, double toMm) {}

  public SkipSequence {
    Given.positive("length of a seam", seamMm, 100_000, "mm", "Give the length of one seam.");
    Given.within(
        "longest step of a skip sequence",
        longestStepMm,
        seamMm / MOST_STEPS,
        100_000,
        "mm",
        "Common is 50 to 75 mm (2 to 3 in).");
  }

  /** Equal steps in the order in which they are welded. */
  public List<Step> steps() {
    int count = Math.max(1, (int) Math.ceil(seamMm / longestStepMm - 1e-9));
    List<Step> steps = new ArrayList<>(count);
    for (int i = 1; i < count; i += 2) {
      steps.add(step(steps.size() + 1, i, count));
    }
    for (int i = 0; i < count; i += 2) {
      steps.add(step(steps.size() + 1, i, count));
    }
    return List.copyOf(steps);
  }

  private Step step(int order, int place, int count) {
    return new Step(order, seamMm * (place + 1) / count, seamMm * place / count);
  }
}
