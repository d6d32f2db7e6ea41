package trammel.testsupport.vehicle;

import java.util.ArrayList;
import java.util.List;
import trammel.testsupport.Draw;

/**
 * A vehicle that might stand in a shop, drawn as it is at ride: its measurements agree with each
 * other. The rails run straight and pass between the tyres, the loaded tyre is lower than the free
 * one, tank and pipe lie between the rails, the floor over them, and the travel that is asked for
 * is one that a notch of half the rail's depth can give.
 *
 * @param kind what it is
 * @param wheelbaseLeftIn wheelbase on the left, inches
 * @param wheelbaseRightIn wheelbase on the right, inches
 * @param rails its rails
 * @param tyre its rear tyre and wheel
 * @param axle its rear axle
 * @param driveline transmission, shaft and engine
 * @param weights what the scales say
 * @param stands how it sits while it is measured
 * @param obstructions what is in the way
 * @param bumpIn travel wanted upward, inches
 * @param droopIn travel wanted downward, inches
 */
public record PlausibleVehicle(
    VehicleKind kind,
    double wheelbaseLeftIn,
    double wheelbaseRightIn,
    RailPair rails,
    TyreAndWheel tyre,
    RearAxle axle,
    DriveTrain driveline,
    CornerWeights weights,
    Stands stands,
    List<Obstruction> obstructions,
    double bumpIn,
    double droopIn) {
  /** Keeps its own copy of the list. */
  public PlausibleVehicle {
    obstructions = List.copyOf(obstructions);
  }

  /** A vehicle of any kind. */
  public static PlausibleVehicle draw(Draw draw) {
    return draw(draw, draw.oneOf(VehicleKind.class));
  }

  /** A vehicle of one kind. */
  public static PlausibleVehicle draw(Draw draw, VehicleKind kind) {
    double wheelbaseIn = kind.body().wheelbaseIn().onTheTape(draw);
    RailPair rails = RailPair.draw(draw, kind.frame());
    TyreAndWheel tyre = TyreAndWheel.draw(draw, kind.wheels());
    RearAxle axle = RearAxle.draw(draw, kind, rails, tyre);
    double overTheAxleIn = kind.railOverAxleIn().onTheTape(draw);
    Stands stands =
        Stands.draw(
            draw,
            Range.onTheTape(tyre.loadedRadiusIn() + axle.tubeDiameterIn() / 2 + overTheAxleIn));
    double mostBumpIn = Math.min(4, overTheAxleIn + rails.depthIn() / 2);
    return new PlausibleVehicle(
        kind,
        wheelbaseIn,
        wheelbaseIn + (draw.withChance(0.7) ? 0 : Range.of(-0.125, 0.125).onTheTape(draw)),
        rails,
        tyre,
        axle,
        DriveTrain.draw(draw, wheelbaseIn, tyre.loadedRadiusIn()),
        CornerWeights.draw(draw, kind.body()),
        stands,
        obstructions(draw, kind, rails, tyre, axle, stands),
        Range.stepped(Range.of(2.5, mostBumpIn).draw(draw), 0.25),
        Range.stepped(Range.of(2.5, 4).draw(draw), 0.25));
  }

  /** Height of the rail's underside at the front mounts, at ride. */
  double undersideAtFrontAtRideIn() {
    double byRakeIn =
        rails.frontMountsForwardIn() * Math.tan(Math.toRadians(stands.rakeAtRideDeg()));
    return stands.undersideAtRideIn() - byRakeIn;
  }

  private static List<Obstruction> obstructions(
      Draw draw,
      VehicleKind kind,
      RailPair rails,
      TyreAndWheel tyre,
      RearAxle axle,
      Stands stands) {
    List<Obstruction> met = new ArrayList<>();
    boolean hasTank = draw.withChance(0.6);
    boolean hasPipe = draw.withChance(0.6);
    if (hasTank) {
      met.add(tank(draw, rails, stands, hasPipe));
    }
    if (hasPipe) {
      met.add(pipe(draw, rails, stands));
    }
    boolean hasSteps = kind == VehicleKind.PICKUP || kind == VehicleKind.VAN;
    if (hasSteps && draw.withChance(0.4)) {
      met.addAll(runningBoards(draw, rails, stands));
    }
    if (draw.withChance(0.7)) {
      met.add(floor(draw, rails, tyre, axle, stands));
    }
    return met;
  }

  /** Behind the axle between the rails, and beside the tail pipe if there is one. */
  private static Obstruction tank(Draw draw, RailPair rails, Stands stands, boolean besideAPipe) {
    double frontIn = Range.of(-26, -18).onTheTape(draw);
    double toEachSideIn =
        besideAPipe
            ? rails.roomToEachSideIn() - PIPE_ROOM_IN
            : rails.roomToEachSideIn() - Range.of(0.5, 3).draw(draw);
    double highIn = stands.undersideAtRideIn() + rails.depthIn() * draw.evenly(0.2, 1);
    return Obstruction.box(
        "fuel tank",
        "tank",
        frontIn - Range.of(18, 28).onTheTape(draw),
        frontIn,
        -toEachSideIn,
        toEachSideIn,
        highIn - Range.of(6, 9).onTheTape(draw),
        highIn);
  }

  /** Room that a tail pipe takes inside a rail. */
  private static final double PIPE_ROOM_IN = 4;

  /** Over the axle inside the right rail, within the rail's height. */
  private static Obstruction pipe(Draw draw, RailPair rails, Stands stands) {
    double diameterIn = draw.oneOf(2.0, 2.25, 2.5, 3.0);
    double toTheRightIn = rails.roomToEachSideIn() - 0.25 - diameterIn / 2;
    double upIn = stands.undersideAtRideIn() + rails.depthIn() * draw.evenly(0.3, 0.8);
    return Obstruction.pipe("tail pipe", -36, 34, -toTheRightIn, upIn, diameterIn);
  }

  /** Ahead of the axle on the outside of both rails. */
  private static List<Obstruction> runningBoards(Draw draw, RailPair rails, Stands stands) {
    double backIn = Range.of(18, 30).onTheTape(draw);
    double frontIn = backIn + Range.of(2, 6).onTheTape(draw);
    double insideIn = Math.max(rails.outsideAtAxleIn(), rails.outsideAtFrontIn()) / 2 + 0.25;
    double outsideIn = insideIn + Range.of(6, 9).onTheTape(draw);
    double lowIn = stands.undersideAtRideIn();
    double highIn = lowIn + rails.depthIn() * 0.6;
    return List.of(
        Obstruction.box(
            "running-board support left",
            "running-board-support",
            backIn,
            frontIn,
            insideIn,
            outsideIn,
            lowIn,
            highIn),
        Obstruction.box(
            "running-board support right",
            "running-board-support",
            backIn,
            frontIn,
            -outsideIn,
            -insideIn,
            lowIn,
            highIn));
  }

  /** Over the rails, as far above them as its own cross-sills are high. */
  private static Obstruction floor(
      Draw draw, RailPair rails, TyreAndWheel tyre, RearAxle axle, Stands stands) {
    double insideTyresIn = axle.flangeToFlangeIn() / 2 - tyre.wheelOffsetIn() - tyre.widthIn() / 2;
    double toEachSideIn = Math.max(rails.outsideAtAxleIn() / 2, insideTyresIn - 0.5);
    double lowIn = stands.undersideAtRideIn() + rails.depthIn() + Range.of(1.5, 5).draw(draw);
    return Obstruction.box(
        "floor", "bed-floor", -44, 34, -toEachSideIn, toEachSideIn, lowIn, lowIn + 0.25);
  }
}
