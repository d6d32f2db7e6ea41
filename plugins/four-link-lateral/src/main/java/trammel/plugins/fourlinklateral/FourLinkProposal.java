package trammel.plugins.fourlinklateral;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.RailSidePairs;
import trammel.brackets.barend.RailSidePairs.Pair;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;

/** Places the five bars. */
final class FourLinkProposal {
  private final Chassis chassis;
  private final FourLinkOptions options;
  private final BarMakeUp makeUp;

  FourLinkProposal(Site site) {
    chassis = site.chassis();
    options = new FourLinkOptions(site);
    makeUp = options.bars();
  }

  List<Bar> bars() {
    return BarOptions.withGap(options.railGapMm(), chassis, this::bars);
  }

  private List<Bar> bars(double gapMm) {
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            gapMm,
            makeUp.halfAcrossMm(),
            Math.max(options.lowerLengthMm(), options.upperLengthMm()));
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp);
    List<Bar> bars =
        new ArrayList<>(
            new RailSidePairs(
                    beside,
                    new Pair(
                        options.lowerLengthMm(), options.lowerAngleRad(), options.lowerDropMm()),
                    new Pair(
                        options.upperLengthMm(), options.upperAngleRad(), options.upperRiseMm()))
                .bars());
    bars.add(lateral(plane));
    return List.copyOf(bars);
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room =
        new LateralBarRoom(
            chassis, plane, lateral, options.railGapMm().orElse(BarOptions.RAIL_GAP_MM));
    double behindMm = options.lateralBehindMm().orElseGet(room::clearBehindMm);
    double riseMm = options.lateralRiseMm();
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
