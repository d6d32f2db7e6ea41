package trammel.planning.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Hours so far from the quote that they may be a slip of the pen: a point or a figure too many, or
 * hours on the wrong line. Whoever closes the job is asked about them. Common practice, no source:
 * a whole job, or what is left of it beside the operations that are written down apart, at twice
 * its hours or more, or at half or less; an operation by itself at three times or a third, and two
 * hours off at least.
 *
 * @param what the whole job or its operation, in words
 * @param usedHours hours written down (h)
 * @param quotedHours hours quoted (h)
 */
public record FarOff(String what, double usedHours, double quotedHours) {
  private static final double TIMES_WHOLE = 2;
  private static final double TIMES_OPERATION = 3;
  private static final double LEAST_HOURS = 2;

  /**
   * What is far off in a job.
   *
   * @param job the job as it was written down
   * @param quoted quoted hours by the key of the operation (h)
   */
  public static List<FarOff> of(ClosedJob job, Map<String, Double> quoted) {
    List<FarOff> far = new ArrayList<>();
    double whole = 0;
    double rest = 0;
    for (ClosedOperation operation : job.operations()) {
      double hours = quoted.getOrDefault(operation.key(), operation.standardHours());
      whole += hours;
      if (operation.usedHours().isPresent()) {
        add(far, operation.key(), operation.usedHours(), hours, TIMES_OPERATION);
      } else {
        rest += hours;
      }
    }
    int apart = job.operations().size() - job.together().size();
    if (apart > 0 && apart < job.operations().size()) {
      add(far, "what is not written down apart", job.togetherHours(), rest, TIMES_WHOLE);
    }
    add(far, "the whole job", job.wholeHours(), whole, TIMES_WHOLE);
    return far;
  }

  private static void add(
      List<FarOff> far, String what, OptionalDouble used, double quoted, double times) {
    if (used.isEmpty()) {
      return;
    }
    double hours = used.getAsDouble();
    boolean beyond = hours >= times * quoted || hours <= quoted / times;
    if (beyond && Math.abs(hours - quoted) >= LEAST_HOURS) {
      far.add(new FarOff(what, hours, quoted));
    }
  }
}
