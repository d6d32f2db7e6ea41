package trammel.app.text;

import java.util.List;
import trammel.planning.estimate.Counts;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.LabourPlan;

/** How long jobs stand in the shop, on a screen. */
public final class LabourPlanText {
  private final LabourPlan plan;

  /**
   * @param plan the shop's hands and bays
   */
  public LabourPlanText(LabourPlan plan) {
    this.plan = plan;
  }

  /** Days of one job alone in the shop. */
  public String alone(HoursEstimate hours) {
    return "DAYS\n  "
        + days(plan.days(hours.meanHours()))
        + " working days at the mean hours, "
        + days(plan.days(hours.p80Hours()))
        + " to hold on eight of ten jobs; "
        + shop()
        + ", this job alone\n";
  }

  /** Several jobs one after the other and side by side. */
  public String queue(List<String> jobs, List<Double> meanHours) {
    Table table = new Table("lrrr");
    table.row("job", "bay", "from day", "to day");
    List<LabourPlan.Slot> slots = plan.place(meanHours);
    for (int i = 0; i < slots.size(); i++) {
      LabourPlan.Slot slot = slots.get(i);
      table.row(
          jobs.get(i), Integer.toString(slot.bay()), days(slot.startDay()), days(slot.endDay()));
    }
    return "SHOP PLAN at the mean hours, in the order given; " + shop() + "\n" + table.text("  ");
  }

  private String shop() {
    return Counts.of(plan.hands(), "hand")
        + ", "
        + Counts.of(plan.bays(), "bay")
        + ", "
        + Amounts.plain(plan.dayHours())
        + " h a day";
  }

  private static String days(double days) {
    return Amounts.fixed(days, 1);
  }
}
