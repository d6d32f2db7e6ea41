package trammel.engine.layout;

import java.util.List;
import trammel.engine.clearance.Body;
import trammel.engine.mechanism.FurtherBody;

/**
 * All that guides the axle: bars, and where a linkage has them further bodies and sliding joints.
 *
 * @param bars the bars
 * @param bodies bodies besides frame and axle, each behind the body that carries its pivot
 * @param sliders sliding joints
 * @param solids what takes up room besides the bars: arms, rockers; each moves with the body that
 *     its carrier names
 */
public record AxleGuide(
    List<Bar> bars, List<FurtherBody> bodies, List<Slider> sliders, List<Body> solids) {
  public AxleGuide {
    bars = List.copyOf(bars);
    bodies = List.copyOf(bodies);
    sliders = List.copyOf(sliders);
    solids = List.copyOf(solids);
  }

  /** Bars alone. */
  public static AxleGuide of(List<Bar> bars) {
    return new AxleGuide(bars, List.of(), List.of(), List.of());
  }

  /** The same with other bars. */
  public AxleGuide withBars(List<Bar> other) {
    return new AxleGuide(other, bodies, sliders, solids);
  }

  /** The same with other solids. */
  public AxleGuide withSolids(List<Body> other) {
    return new AxleGuide(bars, bodies, sliders, other);
  }

  /**
   * The bar of a name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Bar bar(String name) {
    return bars.stream()
        .filter(bar -> bar.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "There is no bar '" + name + "'; name a bar of the linkage."));
  }

  /** Whether nothing but bars from the frame to the axle guides it. */
  public boolean isPlain() {
    return bodies.isEmpty() && sliders.isEmpty() && bars.stream().allMatch(Bar::isPlain);
  }

  /**
   * How an axle moves on it.
   *
   * @param chassis the vehicle at ride
   * @throws IllegalArgumentException if it does not hold the axle, or locks it
   */
  public AxleMotion motion(Chassis chassis) {
    return AxleMotion.of(this, chassis.axle().trackMm(), chassis.tyre().loadedRadiusMm());
  }
}
