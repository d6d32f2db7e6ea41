package trammel.planning.draft;

import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.BoxedStretch;
import trammel.planning.job.Job;
import trammel.planning.vehicle.ChosenBoxing;
import trammel.planning.vehicle.VehicleWork;

/**
 * Plans all that a layout of one job asks for: the work of its linkage, of its springs, of what is
 * added to both, and the vehicle's own. The job's own layout is planned once: its checks and its
 * estimate both ask for that, at the same time. The layout asked for first is taken to be the job's
 * own. Of changed ones the last is kept, since several checks ask for it in turn.
 */
public final class JobWork {
  private final AxleLinkage linkage;
  private final SpringMount spring;
  private final Site linkageSite;
  private final Site springSite;
  private final List<ChosenAddition> additions;
  private final Job job;
  private Layout own;
  private WorkPlan work;
  private UnworkableLayoutException refused;
  private Layout last;
  private WorkPlan lastWork;

  JobWork(
      AxleLinkage linkage,
      SpringMount spring,
      Site linkageSite,
      Site springSite,
      List<ChosenAddition> additions,
      Job job) {
    this.linkage = linkage;
    this.spring = spring;
    this.linkageSite = linkageSite;
    this.springSite = springSite;
    this.additions = List.copyOf(additions);
    this.job = job;
  }

  /**
   * All that a layout asks for.
   *
   * @throws UnworkableLayoutException if an outline, a seam or the room for a part cannot be had
   */
  public WorkPlan of(Layout layout) {
    synchronized (this) {
      if (own == null) {
        remember(layout);
      }
      if (layout == own) {
        if (refused != null) {
          throw refused;
        }
        return work;
      }
      if (layout == last) {
        return lastWork;
      }
    }
    WorkPlan made = planned(layout);
    synchronized (this) {
      last = layout;
      lastWork = made;
    }
    return made;
  }

  /** A plugin's fault is not remembered: whoever asks meets it. */
  private void remember(Layout layout) {
    try {
      work = planned(layout);
    } catch (UnworkableLayoutException cannot) {
      refused = cannot;
    }
    own = layout;
  }

  private WorkPlan planned(Layout layout) {
    WorkPlan mounts =
        linkage
            .plan(new Commission(layout, linkageSite.at(layout.chassis())))
            .plus(spring.plan(new Commission(layout, springSite.at(layout.chassis()))));
    for (ChosenAddition one : additions) {
      mounts = mounts.plus(one.plan(layout));
    }
    Rails rails = layout.chassis().rails();
    Optional<BoxedStretch> boxing = job.chosen().railWork().boxing();
    if (boxing.isPresent()) {
      mounts = mounts.plus(ChosenBoxing.plan(boxing.get(), rails, mounts, linkageSite.catalog()));
    }
    // What each asked for by itself; a plate that closes the rail for two of them is one plate.
    WorkPlan closed = RailClosings.closed(mounts, rails, VehicleWork.notch(layout, springSite));
    WorkPlan all = VehicleWork.plan(layout, springSite, closed, job).plus(closed);
    SheetRoom.refuseLonger(all, linkageSite.catalog());
    return all;
  }
}
