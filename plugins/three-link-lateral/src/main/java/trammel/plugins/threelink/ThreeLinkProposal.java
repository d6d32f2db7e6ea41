package trammel.plugins.threelink;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.FrameRoom;
import trammel.brackets.barend.RailSideHeights;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;

/** Places the four bars. */
final class ThreeLinkProposal {
  private final Chassis chassis;
  private final ThreeLinkOptions options;

  ThreeLinkProposal(Site site) {
    chassis = site.chassis();
    options = new ThreeLinkOptions(site);
  }

  List<Bar> bars() {
    return BarOptions.withGap(options.find(ThreeLinkOptions.RAIL_GAP), chassis, this::bars);
  }

  private List<Bar> bars(double gapMm) {
    BarMakeUp makeUp = options.bars();
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            gapMm,
            makeUp.halfAcrossMm(),
            Math.max(
                options.get(ThreeLinkOptions.LOWER_LENGTH),
                options.get(ThreeLinkOptions.UPPER_LENGTH)));
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp);
    RailSideHeights heights = new RailSideHeights(beside);
    double lowerMm = options.get(ThreeLinkOptions.LOWER_LENGTH);
    double lowerRad = options.get(ThreeLinkOptions.LOWER_ANGLE);
    double dropMm =
        options.find(BarOptions.LOWER_DROP).orElseGet(() -> heights.dropMm(lowerMm, lowerRad));
    List<Bar> lower = beside.pair("lower", "lower_drop", -dropMm, lowerMm, lowerRad);
    double upperMm = options.get(ThreeLinkOptions.UPPER_LENGTH);
    double upperRad = options.get(ThreeLinkOptions.UPPER_ANGLE);
    double riseMm =
        options
            .find(BarOptions.UPPER_RISE)
            .orElseGet(() -> heights.riseMm(lower, upperMm, upperRad));
    List<Bar> bars = new ArrayList<>(lower);
    bars.add(
        beside.single("upper", "upper_rise", options.upperOnLeft(), riseMm, upperMm, -upperRad));
    FrameRoom.require(bars, makeUp, chassis.rails());
    bars.add(lateral(plane));
    return List.copyOf(bars);
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room =
        new LateralBarRoom(
            chassis,
            plane,
            lateral,
            options.find(ThreeLinkOptions.RAIL_GAP).orElse(BarOptions.RAIL_GAP_MM));
    double behindMm = options.find(BarOptions.LATERAL_BEHIND).orElseGet(room::clearBehindMm);
    double riseMm = options.get(ThreeLinkOptions.LATERAL_RISE);
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
