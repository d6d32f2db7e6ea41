package trammel.brackets.barend;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMakeUp;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Rails;

/** Room on the rails for the frame brackets of all bars together. */
public final class FrameRoom {
  private FrameRoom() {}

  /**
   * Accepts bars whose frame brackets find a flat on the rail and keep off each other.
   *
   * @param bars bars that end on the rails ahead of the axle
   * @throws UnworkableLayoutException if they do not
   */
  public static void require(List<Bar> bars, BarMakeUp makeUp, Rails rails) {
    List<RailSeat> seats = new ArrayList<>(bars.size());
    for (Bar bar : bars) {
      seats.add(RailSeat.of(bar, makeUp.frameSeat(), rails));
    }
    RailSeats.apart(seats);
  }

  /** Whether {@link #require} accepts the bars. */
  public static boolean isThere(List<Bar> bars, BarMakeUp makeUp, Rails rails) {
    try {
      require(bars, makeUp, rails);
      return true;
    } catch (UnworkableLayoutException noRoom) {
      return false;
    }
  }
}
