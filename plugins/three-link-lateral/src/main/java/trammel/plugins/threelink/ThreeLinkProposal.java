package trammel.plugins.threelink;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.FrameRoom;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.planning.extension.Site;
import trammel.reading.quantity.QuantityPrinter;

/** Places the four bars. */
final class ThreeLinkProposal {
  private final Chassis chassis;
  private final ThreeLinkOptions options;
  private final QuantityPrinter print;

  ThreeLinkProposal(Site site) {
    chassis = site.chassis();
    options = new ThreeLinkOptions(site);
    print = new QuantityPrinter(site.units());
  }

  List<Bar> bars() {
    BarMakeUp makeUp = options.bars();
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            options.get(ThreeLinkOptions.RAIL_GAP),
            makeUp.halfAcrossMm(),
            Math.max(
                options.get(ThreeLinkOptions.LOWER_LENGTH),
                options.get(ThreeLinkOptions.UPPER_LENGTH)),
            print);
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp, print);
    List<Bar> bars =
        new ArrayList<>(
            beside.pair(
                "lower",
                "lower_drop",
                -options.get(ThreeLinkOptions.LOWER_DROP),
                options.get(ThreeLinkOptions.LOWER_LENGTH),
                options.get(ThreeLinkOptions.LOWER_ANGLE)));
    bars.add(
        beside.single(
            "upper",
            "upper_rise",
            options.upperOnLeft(),
            options.get(ThreeLinkOptions.UPPER_RISE),
            options.get(ThreeLinkOptions.UPPER_LENGTH),
            -options.get(ThreeLinkOptions.UPPER_ANGLE)));
    FrameRoom.require(bars, makeUp, chassis.rails(), print);
    bars.add(lateral(plane));
    return List.copyOf(bars);
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room =
        new LateralBarRoom(chassis, plane, lateral, options.get(ThreeLinkOptions.RAIL_GAP), print);
    double behindMm = options.get(ThreeLinkOptions.LATERAL_BEHIND);
    double riseMm = options.get(ThreeLinkOptions.LATERAL_RISE);
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
