package trammel.app.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.planning.vehicle.NotchCut;

/** What is done after what, on the floor's paper and on the record of it. */
final class OrderOfWork {
  private OrderOfWork() {}

  /** The steps, one after the other. */
  static List<String> of(JobPaper paper) {
    PermanentChanges changes = new PermanentChanges(paper);
    List<String> order = new ArrayList<>();
    order.add("Stand the vehicle on rated stands, level across; chock, disconnect, drain, shield.");
    order.add(
        "Mark the axle line on both rails and the centre line on the floor, before the old axle"
            + " comes out; check diagonals.");
    if (changes.stripsOut()) {
      order.add("Take the old suspension off; clean frame and axle where they are welded.");
    }
    order.addAll(changes.room());
    if (changes.onTheAxle()) {
      order.add(
          "On the bench, set the pinion to its angle; set the brackets of the axle by the axle"
              + " sheet, tack them, and write down what they are.");
    }
    onTheFrame(paper, changes, order);
    order.add("Type the readings in: trammel tacked JOB fitup.csv. Weld only when it says weld.");
    order.add(
        "Take rubber, bushings and wires out of the heat; weld on the bench or on the vehicle as"
            + " the weld list says, in steps from side to side. Paint.");
    order.add("Fit the bars; draw the bolts and jam nuts tight at ride height, never hanging.");
    order.add("Take the struts out, move the axle through its whole travel, look at every gap.");
    order.add("Springs and shocks in, lines and hose checked at full droop, brakes bled.");
    if (!changes.room().isEmpty()) {
      order.add("Put back or close what was moved or opened to make room; look at its gaps.");
    }
    order.add(
        "Torque again after the first drive; set the alignment; fill in the as-built record.");
    return order;
  }

  /** Rails are cut and closed before anything stands on them. */
  private static void onTheFrame(JobPaper paper, PermanentChanges changes, List<String> order) {
    String closing = "fit and weld the plates that close the rail, in the steps of the rail sheets";
    Optional<NotchCut> notch = NotchCut.of(paper.draft().layout(), paper.draft().linkageSite());
    if (notch.isPresent()) {
      // The notch's inner plates lie on the plates that close the rail.
      order.add(
          "Brace the frame, then notch one rail at a time, cut "
              + paper.printer().length(notch.get().cutDepthMm())
              + " deep: "
              + (changes.boxes()
                  ? closing + ", then the plates of the notch"
                  : "fit and weld its plates")
              + ", before the other rail is cut.");
    } else if (changes.boxes()) {
      order.add("One rail at a time, " + closing + ", before brackets are set on it.");
    }
    order.add(
        "Hold the axle at ride on stands, square and centred to the marks, the pinion at its"
            + " angle.");
    order.add(
        "Set each bracket of the frame by its distances, those of the shocks with the mock-up strut"
            + " bolted in; tack it, write down what it is.");
  }
}
