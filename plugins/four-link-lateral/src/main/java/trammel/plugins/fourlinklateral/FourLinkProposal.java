package trammel.plugins.fourlinklateral;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.AxlePickUp;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.barend.FrameRoom;
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
    Point3 lowerAxle = axle("lower", "lower_drop", plane, -options.lowerDropMm());
    Point3 upperAxle = axle("upper", "upper_rise", plane, options.upperRiseMm());
    Point3 lowerFrame = ahead(lowerAxle, options.lowerLengthMm(), options.lowerAngleRad());
    Point3 upperFrame = ahead(upperAxle, options.upperLengthMm(), -options.upperAngleRad());
    List<Bar> along =
        List.of(
            makeUp.bar("lower-left", Duty.DRIVE_AND_BRAKING.only(), lowerFrame, lowerAxle),
            makeUp.bar(
                "lower-right",
                Duty.DRIVE_AND_BRAKING.only(),
                lowerFrame.mirrored(),
                lowerAxle.mirrored()),
            makeUp.bar("upper-left", Duty.DRIVE_AND_BRAKING.only(), upperFrame, upperAxle),
            makeUp.bar(
                "upper-right",
                Duty.DRIVE_AND_BRAKING.only(),
                upperFrame.mirrored(),
                upperAxle.mirrored()));
    FrameRoom.require(along, makeUp, chassis.rails(), print);
    List<Bar> bars = new ArrayList<>(along);
    bars.add(lateral(plane));
    return List.copyOf(bars);
  }

  private Point3 axle(String bars, String option, BarPlane plane, double upMm) {
    Point3 point = new Point3(0, plane.leftMm(), chassis.axleCentre().zMm() + upMm);
    return AxlePickUp.checked(bars + " bars", option, point, makeUp.axleSeat(), chassis, print);
  }

  private static Point3 ahead(Point3 axle, double lengthMm, double riseRad) {
    return new Point3(
        axle.xMm() + lengthMm * Math.cos(riseRad),
        axle.yMm(),
        axle.zMm() + lengthMm * Math.sin(riseRad));
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room = new LateralBarRoom(chassis, plane, lateral, options.railGapMm(), print);
    double behindMm = options.lateralBehindMm();
    double riseMm = options.lateralRiseMm();
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
