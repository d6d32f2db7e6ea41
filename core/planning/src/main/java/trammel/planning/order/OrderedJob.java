package trammel.planning.order;

import java.time.LocalDate;
import java.util.Optional;
import trammel.brackets.work.WorkPlan;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.Job;

/**
 * A job that is ordered for.
 *
 * @param number the shop's number for it
 * @param plan the work that it asks for, welding wire and gas included
 * @param start day on which its work is to start, if it says so
 */
public record OrderedJob(String number, WorkPlan plan, Optional<LocalDate> start) {

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
    return new OrderedJob(job.header().number(), plan, job.terms().start());
  }
}
