package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Locale;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.CrossmemberBay;
import trammel.engine.checks.FrameLoads;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.engine.strength.TwistedRails;
import trammel.planning.catalog.PlanCheck;

/**
 * Least safety factor on yield of the rails where mounts, outriggers and brackets on their sides
 * twist them, warping counted, and of the new crossmembers that hold them against it; see {@link
 * TwistedRails} for the method.
 */
final class RailTwist implements CatalogCheck {
  private final JobWork planning;
  private final trammel.planning.job.Rails measured;

  RailTwist(JobWork planning, trammel.planning.job.Rails measured) {
    this.planning = planning;
    this.measured = measured;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.RAIL_TWIST;
  }

  /**
   * Open rails are not judged where the frame's own crossmembers are not measured, for much hangs
   * on them: then it says what it would be with them in the usual place. Closed rails hardly ask.
   */
  @Override
  public Reading read(LayoutAnalysis analysis) {
    boolean isJudged = analysis.layout().chassis().rails().boxed() || isMeasured();
    boolean isUsual = !analysis.isUnderBlows() && analysis.layout() == analysis.built();
    if (!isJudged && !isUsual) {
      return new Reading.NotApplicable("rail-twist says what is to be measured first");
    }
    Reading reading = reading(analysis);
    return isJudged || !(reading instanceof Reading.Value value)
        ? reading
        : new Reading.Unknown(unmeasured(value, analysis.settings().bay()));
  }

  private boolean isMeasured() {
    return measured.crossmemberAheadMm().isPresent() && measured.crossmemberBehindMm().isPresent();
  }

  private Phrase unmeasured(Reading.Value value, CrossmemberBay usual) {
    CrossmemberBay bay = bay(usual);
    return Phrase.of(
        "how far the frame's own crossmembers next to the axle stand from it; measure"
            + " measured.rails.crossmember_ahead and crossmember_behind. With one {} ahead and one"
            + " {} behind it would be {}: {}",
        length(bay.aheadMm()),
        length(bay.behindMm()),
        String.format(Locale.ROOT, "%.2f", value.value()),
        value.where());
  }

  private Reading reading(LayoutAnalysis analysis) {
    WorkPlan plan;
    try {
      plan = planning.of(analysis.built());
    } catch (UnworkableLayoutException cannot) {
      return new Reading.NotApplicable("what cannot be made twists nothing");
    }
    List<FrameLoads.AtOnce> loads = FrameLoads.of(analysis);
    Rails rails = analysis.layout().chassis().rails();
    RailsWithMounts twisted =
        new RailsWithMounts(rails, measured, bay(analysis.settings().bay()), plan, loads);
    RailsWithMounts.Worst worst = null;
    for (FrameLoads.AtOnce atOnce : loads) {
      RailsWithMounts.Worst here = twisted.worst(atOnce);
      if (worst == null || here.factor() < worst.factor()) {
        worst = here;
      }
    }
    return worst == null || Double.isInfinite(worst.factor())
        ? new Reading.NotApplicable("nothing on the rails' sides twists them")
        : twisted.told(worst);
  }

  private CrossmemberBay bay(CrossmemberBay usual) {
    return new CrossmemberBay(
        measured.crossmemberBehindMm().orElse(usual.behindMm()),
        measured.crossmemberAheadMm().orElse(usual.aheadMm()));
  }

  @Override
  public String advice() {
    return "Box the rail from that mount to the next crossmember (chosen.boxing), put a crossmember"
        + " across there, or set what twists it nearer to the rail or inboard of it; measure, if it"
        + " is not done yet, how far the frame's own crossmembers stand from the axle"
        + " (measured.rails: crossmember_ahead, crossmember_behind).";
  }
}
