package trammel.trade.labour;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * When jobs are done in a shop. Each bay takes one job at a time, in the order given, and the hands
 * are shared out evenly over the bays in use: two hands on one vehicle halve its days. Waiting for
 * parts and paint is not in it.
 *
 * @param hands people at work, 1 or more
 * @param bays places for a vehicle, 1 or more
 * @param dayHours hours that one works on vehicles in a day (h), above 0
 */
public record LabourPlan(int hands, int bays, double dayHours) {
  public LabourPlan {
    Given.count("hands of the shop", hands, 1, 1000, "Count who works on vehicles.");
    Given.count("bays of the shop", bays, 1, 1000, "Count the places for a vehicle.");
    Given.positive(
        "hours worked in a day", dayHours, 24, "", "8 is usual; less for what is not billed.");
  }

  /**
   * A job's place in the plan, in working days from the start of the first.
   *
   * @param bay the bay, counted from 1
   * @param startDay when it starts (days), 0 or more
   * @param endDay when it ends (days)
   */
  public record Slot(int bay, double startDay, double endDay) {
    /** Days in the bay. */
    public double days() {
      return endDay - startDay;
    }
  }

  /** Places for jobs of so many hours each, in their order: each in the bay that is free first. */
  public List<Slot> place(List<Double> jobHours) {
    int used = Math.max(1, Math.min(bays, Math.min(hands, jobHours.size())));
    double hoursADay = dayHours * hands / used;
    double[] free = new double[used];
    List<Slot> slots = new ArrayList<>(jobHours.size());
    for (double hours : jobHours) {
      int first = 0;
      for (int bay = 1; bay < used; bay++) {
        first = free[bay] < free[first] ? bay : first;
      }
      double end = free[first] + hours / hoursADay;
      slots.add(new Slot(first + 1, free[first], end));
      free[first] = end;
    }
    return slots;
  }

  /** Working days of one job alone in the shop. */
  public double days(double jobHours) {
    return place(List.of(jobHours)).get(0).endDay();
  }
}
