package trammel.brackets.barend;

import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.Mounting;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;

/** What holds the frame end of a bar on its rail. */
public sealed interface FrameBracket permits InboardFrameBracket, Outrigger {

  /** The stretch of rail that it takes. */
  Footprint footprint();

  /**
   * Its plates, welds, bolt and foot.
   *
   * @param boxing what closes the rails behind the brackets of the job
   */
  WorkPlan plan(RailBoxing boxing);

  /**
   * The bracket of a bar along the rail: against the inner face for bars between the rails, on an
   * outrigger for bars outside them.
   */
  static FrameBracket along(BarMaking bar, RailSeat seat, Mounting mounting, BracketBasis basis) {
    return mounting == Mounting.INBOARD
        ? new InboardFrameBracket(bar, seat, basis)
        : Outrigger.outside(bar, seat, basis);
  }
}
