package trammel.brackets.barend;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Body;

/**
 * The frame ends of bars that meet the rails, set apart from each other.
 *
 * @param brackets the bracket of each bar, in the order of the bars
 */
public record FrameEnds(List<FrameBracket> brackets) {

  /** Which bracket holds a bar at its seat. */
  @FunctionalInterface
  public interface Choice {
    /** The bracket. */
    FrameBracket of(BarMaking bar, RailSeat seat);
  }

  public FrameEnds {
    brackets = List.copyOf(brackets);
  }

  /**
   * The frame ends of bars; where two brackets on a rail would meet, the longer one gives way.
   *
   * @throws trammel.brackets.UnworkableLayoutException if they are too close for that, or a joint
   *     finds no flat on its rail
   */
  public static FrameEnds apart(List<BarMaking> bars, BracketBasis basis, Choice choice) {
    List<RailSeat> seats =
        RailSeats.apart(
            bars.stream()
                .map(bar -> RailSeat.of(bar.bar(), bar.frameSeat(), basis.rails()))
                .toList());
    List<FrameBracket> brackets = new ArrayList<>(bars.size());
    for (int i = 0; i < bars.size(); i++) {
      brackets.add(choice.of(bars.get(i), seats.get(i)));
    }
    return new FrameEnds(brackets);
  }

  /** The stretches of rail that they take. */
  public List<Footprint> footprints() {
    return brackets.stream().map(FrameBracket::footprint).toList();
  }

  /**
   * What closes channel rails behind them and behind others: one long plate a side where bars run
   * between the rails, short plates where they run outside.
   *
   * @param others the stretches that other brackets of the job take
   */
  public RailBoxing boxing(Mounting mounting, List<Footprint> others, BracketBasis basis) {
    if (mounting == Mounting.INBOARD) {
      return RailBoxing.along(footprints(), others, basis);
    }
    List<Footprint> all = new ArrayList<>(footprints());
    all.addAll(others);
    return RailBoxing.local(all, basis);
  }

  /** Their plates, welds, bolts and feet. */
  public WorkPlan plan(RailBoxing boxing) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    brackets.forEach(bracket -> plan.add(bracket.plan(boxing)));
    return plan.build();
  }

  /** What stands outside the rails. */
  public List<Body> outside() {
    return brackets.stream()
        .filter(Outrigger.class::isInstance)
        .map(Outrigger.class::cast)
        .filter(Outrigger::isOutside)
        .map(Outrigger::body)
        .toList();
  }
}
