package trammel.planning.draft;

import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Judge;
import trammel.engine.layout.Layout;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.Job;
import trammel.reading.quantity.QuantityPrinter;

/**
 * A job whose layout is drawn.
 *
 * @param job the job as read
 * @param linkage the linkage it chose
 * @param spring the spring mount it chose
 * @param linkageSite what the linkage works from
 * @param springSite what the spring mount works from
 * @param additions what is added to both, in the order of the job
 * @param layout the layout, overrides and notch included
 * @param judge judges it by the standard checks and the plugins' own
 * @param planning plans the work of this layout and of changed ones
 */
public record Draft(
    Job job,
    AxleLinkage linkage,
    SpringMount spring,
    Site linkageSite,
    Site springSite,
    List<ChosenAddition> additions,
    Layout layout,
    Judge judge,
    JobWork planning) {
  public Draft {
    additions = List.copyOf(additions);
  }

  /** Puts quantities into the units in which the job is shown. */
  public QuantityPrinter printer() {
    return new QuantityPrinter(linkageSite.units());
  }

  /**
   * All that this layout asks for: linkage, springs, additions and the vehicle's own work.
   *
   * @throws UnworkableLayoutException if something of it cannot be made
   */
  public WorkPlan work() {
    return planning.of(layout);
  }
}
