package trammel.plugins.fourlinklateral;

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
import trammel.reading.quantity.QuantityPrinter;

/** Places the five bars. */
final class FourLinkProposal {
  private final Chassis chassis;
  private final FourLinkOptions options;
  private final QuantityPrinter print;
  private final BarMakeUp makeUp;

  FourLinkProposal(Site site) {
    chassis = site.chassis();
    options = new FourLinkOptions(site);
    print = new QuantityPrinter(site.units());
    makeUp = options.bars();
  }

  List<Bar> bars() {
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            options.railGapMm(),
            makeUp.halfAcrossMm(),
            Math.max(options.lowerLengthMm(), options.upperLengthMm()),
            print);
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp, print);
    RailSideHeights heights = new RailSideHeights(beside);
    double lowerMm = options.lowerLengthMm();
    double lowerRad = options.lowerAngleRad();
    double dropMm = options.lowerDropMm().orElseGet(() -> heights.dropMm(lowerMm, lowerRad));
    List<Bar> lower = beside.pair("lower", "lower_drop", -dropMm, lowerMm, lowerRad);
    double upperMm = options.upperLengthMm();
    double upperRad = options.upperAngleRad();
    double riseMm = options.upperRiseMm().orElseGet(() -> heights.riseMm(lower, upperMm, upperRad));
    List<Bar> along = new ArrayList<>(lower);
    along.addAll(beside.pair("upper", "upper_rise", riseMm, upperMm, -upperRad));
    FrameRoom.require(along, makeUp, chassis.rails(), print);
    List<Bar> bars = new ArrayList<>(along);
    bars.add(lateral(plane));
    return List.copyOf(bars);
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room = new LateralBarRoom(chassis, plane, lateral, options.railGapMm(), print);
    double behindMm = options.lateralBehindMm().orElseGet(room::clearBehindMm);
    double riseMm = options.lateralRiseMm();
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
