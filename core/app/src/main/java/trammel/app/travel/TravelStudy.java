package trammel.app.travel;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.checks.RideState;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.CornerLoads;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.Shaft;
import trammel.engine.motion.SpringPoint;
import trammel.engine.motion.WheelRates;
import trammel.reading.quantity.UnitSystem;

/**
 * A layout moved through its whole travel: in heave from full droop to full bump, and in roll about
 * ride height until a wheel comes to the end of its travel.
 *
 * @param layout the layout
 * @param heave stations in heave at zero roll, from droop to bump
 * @param roll stations in roll at zero heave, from left wheel down to left wheel up
 * @param outOfReach what the bars keep the axle from, in sentences; empty if nothing
 */
public record TravelStudy(
    Layout layout, List<Station> heave, List<Station> roll, List<String> outOfReach) {
  private static final double US_STEP_MM = 25.4 / 4;
  private static final double METRIC_STEP_MM = 5;
  private static final double ROLL_STEP_RAD = Math.toRadians(1);

  /** A round station closer than this share of a step to the end would only repeat it. */
  private static final double CLOSE = 0.05;

  /** Copies the lists. */
  public TravelStudy {
    heave = List.copyOf(heave);
    roll = List.copyOf(roll);
    outOfReach = List.copyOf(outOfReach);
  }

  /** Moves a layout; the stations stand at round numbers of the reader's units. */
  public static TravelStudy of(Layout layout, UnitSystem units) {
    Travel travel = layout.chassis().travel();
    double stepMm = units == UnitSystem.US ? US_STEP_MM : METRIC_STEP_MM;
    Mover mover = new Mover(layout);
    List<Station> heave = new ArrayList<>();
    for (double heaveMm : between(-travel.droopMm(), travel.bumpMm(), stepMm)) {
      mover.add(heave, heaveMm, 0);
    }
    double wheelMm = Math.min(travel.bumpMm(), travel.droopMm());
    double sine = Math.min(1, 2 * wheelMm / layout.chassis().axle().trackMm());
    double farthestRad = Math.min(Math.asin(sine), Math.toRadians(60));
    List<Station> roll = new ArrayList<>();
    for (double rollRad : between(-farthestRad, farthestRad, ROLL_STEP_RAD)) {
      mover.add(roll, 0, rollRad);
    }
    return new TravelStudy(layout, heave, roll, mover.outOfReach);
  }

  /** Round numbers between two ends, zero among them, and the ends themselves. */
  static List<Double> between(double from, double to, double step) {
    List<Double> values = new ArrayList<>();
    values.add(from);
    for (long i = (long) Math.ceil(from / step); i * step < to; i++) {
      double value = i * step;
      boolean apart = value - from > CLOSE * step && to - value > CLOSE * step;
      if (apart || i == 0 && value > from) {
        values.add(value);
      }
    }
    values.add(to);
    return values;
  }

  /** Largest stretch and force of a bar over the stations in roll. */
  public LinkReading worstBindInRoll(int bar) {
    LinkReading worst = roll.get(0).bars().get(bar);
    for (Station station : roll) {
      LinkReading here = station.bars().get(bar);
      worst = Math.abs(here.stretchMm()) > Math.abs(worst.stretchMm()) ? here : worst;
    }
    return worst;
  }

  /** Takes the axle from pose to pose and reads off what is there. */
  private static final class Mover {
    private final AxleMotion motion;
    private final double trackMm;
    private final Shaft shaft;
    private final List<SpringAtRide> springs;
    private final List<ShockUnit> shocks;
    private final List<String> outOfReach = new ArrayList<>();

    private Mover(Layout layout) {
      motion = layout.motion();
      trackMm = layout.chassis().axle().trackMm();
      shaft = RideState.shaft(layout.chassis().driveline());
      springs = CornerLoads.onSprings(layout, motion);
      shocks = layout.shocks();
    }

    private void add(List<Station> stations, double heaveMm, double rollRad) {
      PoseResult result = motion.solve(heaveMm, rollRad);
      if (result instanceof PoseResult.Solved solved) {
        List<Double> lengths = new ArrayList<>(shocks.size());
        for (ShockUnit shock : shocks) {
          lengths.add(shock.frame().distanceMm(solved.pose().move(shock.axle())));
        }
        List<SpringState> states = states(solved.pose());
        stations.add(
            new Station(
                solved.pose(),
                shaft.at(solved.pose()),
                motion.readings(solved.pose()),
                rates(solved.pose(), states),
                states,
                lengths));
      } else {
        outOfReach.add(result.sentence());
      }
    }

    private List<SpringState> states(AxlePose pose) {
      List<SpringState> states = new ArrayList<>(springs.size());
      for (SpringAtRide spring : springs) {
        SpringUnit unit = spring.unit();
        states.add(SpringState.of(spring, unit.frame().distanceMm(pose.move(unit.axle()))));
      }
      return states;
    }

    /** Each spring at the rate that it has there, an air spring with its air shut in. */
    private WheelRates rates(AxlePose pose, List<SpringState> states) {
      List<SpringPoint> points = new ArrayList<>(states.size());
      for (int i = 0; i < states.size(); i++) {
        SpringUnit unit = springs.get(i).unit();
        double rate = Math.max(0, states.get(i).rateNPerMm());
        points.add(new SpringPoint(unit.name(), unit.frame(), unit.axle(), rate));
      }
      return WheelRates.of(motion.ratesAt(pose), pose, trackMm, points);
    }
  }
}
