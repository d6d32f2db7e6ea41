package trammel.planning.draft;

import trammel.engine.checks.Judge;
import trammel.engine.layout.Layout;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.Job;
import trammel.planning.work.WorkPlan;

/**
 * A job whose layout is drawn.
 *
 * @param job the job as read
 * @param linkage the linkage it chose
 * @param spring the spring mount it chose
 * @param linkageSite what the linkage works from
 * @param springSite what the spring mount works from
 * @param layout the layout, overrides and notch included
 * @param judge judges it by the standard checks and the plugins' own
 */
public record Draft(
    Job job,
    AxleLinkage linkage,
    SpringMount spring,
    Site linkageSite,
    Site springSite,
    Layout layout,
    Judge judge) {

  /** What linkage and springs ask for; the vehicle's own work is not in it. */
  public WorkPlan pluginWork() {
    return linkage
        .plan(new Commission(layout, linkageSite))
        .plus(spring.plan(new Commission(layout, springSite)));
  }
}
