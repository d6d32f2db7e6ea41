package trammel.planning.order;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.brackets.work.WorkPlan;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.OwnParts;
import trammel.planning.estimate.PartLine;
import trammel.planning.job.Job;

/**
 * A job that is ordered for.
 *
 * @param number the shop's number for it
 * @param plan the work that it asks for, welding wire and gas included
 * @param own what it buys besides and is in no catalog
 * @param start day on which its work is to start, if it says so
 */
public record OrderedJob(
    String number, WorkPlan plan, List<PartLine> own, Optional<LocalDate> start) {
  public OrderedJob {
    own = List.copyOf(own);
  }

  /** A job that buys nothing of its own. */
  public OrderedJob(String number, WorkPlan plan, Optional<LocalDate> start) {
    this(number, plan, List.of(), start);
  }

  /** An estimated job. */
  public static OrderedJob of(Estimate estimate) {
    return of(estimate.draft().job(), estimate.plan());
  }

  /**
   * A job.
   *
   * @param plan the work that it asks for, welding wire and gas included
   */
  public static OrderedJob of(Job job, WorkPlan plan) {
    return new OrderedJob(
        job.header().number(), plan, OwnParts.of(job.terms()), job.terms().start());
  }
}
