package trammel.app.documents;

import java.util.ArrayList;
import java.util.List;
import trammel.planning.vehicle.NotchCut;

/** What is done after what, on the floor's paper and on the record of it. */
final class OrderOfWork {
  private OrderOfWork() {}

  /** The steps, one after the other. */
  static List<String> of(JobPaper paper) {
    List<String> order = new ArrayList<>();
    order.add("Stand the vehicle on rated stands, level across; chock, disconnect, drain, shield.");
    order.add(
        "Mark the axle line on both rails and the centre line on the floor; check diagonals.");
    NotchCut.of(paper.draft().layout(), paper.draft().linkageSite())
        .ifPresent(
            cut ->
                order.add(
                    "Brace the frame, then notch one rail at a time, cut "
                        + paper.printer().length(cut.cutDepthMm())
                        + " deep: fit and weld its plates before the other rail is cut."));
    order.add("Hold the axle at ride with the mock-up struts, square and centred to the marks.");
    order.add("Set each bracket by its two datums, tack it, and write down what it is.");
    order.add("Type the readings in: trammel tacked JOB fitup.csv. Weld only when it says weld.");
    order.add("Take rubber, bushings and wires out of the heat; weld in steps from side to side.");
    order.add("Fit the bars; draw the bolts tight at ride height, never hanging.");
    order.add("Take the struts out, move the axle through its whole travel, look at every gap.");
    order.add("Springs and shocks in, lines and hose checked at full droop, brakes bled.");
    order.add(
        "Torque again after the first drive; set the alignment; fill in the as-built record.");
    return order;
  }
}
