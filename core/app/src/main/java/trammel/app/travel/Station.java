package trammel.app.travel;

import java.util.List;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.WheelRates;

/**
 * Everything that is read off at one pose of the axle.
 *
 * @param pose where the axle stands
 * @param shaft the driveshaft there
 * @param bars the bars there, in the layout's order
 * @param rates springs and wheel rates there
 * @param springs what each spring does there, in the layout's order
 * @param shockLengthsMm lengths of the shocks, in the layout's order (mm)
 */
public record Station(
    AxlePose pose,
    ShaftReading shaft,
    List<LinkReading> bars,
    WheelRates rates,
    List<SpringState> springs,
    List<Double> shockLengthsMm) {
  /** Copies the lists. */
  public Station {
    bars = List.copyOf(bars);
    springs = List.copyOf(springs);
    shockLengthsMm = List.copyOf(shockLengthsMm);
  }

  /** The bar whose bushings give most. */
  public LinkReading worstBind() {
    LinkReading worst = bars.get(0);
    for (LinkReading bar : bars) {
      worst = Math.abs(bar.stretchMm()) > Math.abs(worst.stretchMm()) ? bar : worst;
    }
    return worst;
  }
}
