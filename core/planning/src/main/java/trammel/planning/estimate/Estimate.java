package trammel.planning.estimate;

import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.planning.draft.Draft;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.CostLine;
import trammel.trade.welding.WeldEstimate;

/**
 * A job from its layout to its price.
 *
 * @param draft the job and its layout
 * @param plan the work that it asks for, welding wire and gas included
 * @param materials what is bought for it
 * @param welds weld metal, wire, gas and time
 * @param bought the cost of what is bought, before waste and markup
 * @param hours hours low, likely and high by operation
 * @param price the cost build-up and the price
 * @param closedJobs jobs from which the hours were learned; 0 where they are the catalog's
 */
public record Estimate(
    Draft draft,
    WorkPlan plan,
    Materials materials,
    WeldEstimate welds,
    List<CostLine> bought,
    HoursEstimate hours,
    CostBuildUp price,
    int closedJobs) {
  public Estimate {
    bought = List.copyOf(bought);
  }
}
