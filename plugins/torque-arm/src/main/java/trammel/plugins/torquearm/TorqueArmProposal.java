package trammel.plugins.torquearm;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.LateralBarRoom;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.FrameRoom;
import trammel.brackets.barend.RailSideHeights;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;

/** Places the two lower bars, the arm with its drop link, and the lateral bar. */
final class TorqueArmProposal {
  private final Chassis chassis;
  private final TorqueArmOptions options;

  TorqueArmProposal(Site site) {
    chassis = site.chassis();
    options = new TorqueArmOptions(site);
  }

  AxleGuide guide() {
    BarMakeUp makeUp = options.bars();
    double lengthMm = options.get(TorqueArmOptions.LOWER_LENGTH);
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            options.get(TorqueArmOptions.RAIL_GAP),
            makeUp.halfAcrossMm(),
            lengthMm);
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp);
    double lowerRad = options.get(TorqueArmOptions.LOWER_ANGLE);
    double dropMm =
        options
            .find(BarOptions.LOWER_DROP)
            .orElseGet(() -> new RailSideHeights(beside).dropMm(lengthMm, lowerRad));
    List<Bar> bars =
        new ArrayList<>(beside.pair("lower", "lower_drop", -dropMm, lengthMm, lowerRad));
    FrameRoom.require(bars, makeUp, chassis.rails());
    Bar link = link(plane, makeUp.halfAcrossMm());
    bars.add(link);
    bars.add(lateral(plane));
    return AxleGuide.of(bars).withSolids(List.of(ArmRoom.of(chassis, link)));
  }

  /** Upright over the arm's eye. */
  private Bar link(BarPlane plane, double halfBarMm) {
    BarMakeUp made = options.link();
    double acrossMm = ArmRoom.besideHousingMm(chassis, made.axleSeat(), plane, halfBarMm);
    Point3 eye =
        new Point3(
            chassis.axleCentre().xMm() + options.get(TorqueArmOptions.ARM_LENGTH),
            options.armSide() * acrossMm,
            chassis.axleCentre().zMm() + options.get(TorqueArmOptions.ARM_RISE));
    Point3 frame = new Point3(eye.xMm(), eye.yMm(), eye.zMm() + options.linkLengthMm(eye));
    return made.bar(TorqueArm.LINK, Duty.GUIDES_A_BODY.only(), frame, eye);
  }

  private Bar lateral(BarPlane plane) {
    BarMakeUp lateral = options.lateral();
    LateralBarRoom room =
        new LateralBarRoom(chassis, plane, lateral, options.get(TorqueArmOptions.RAIL_GAP));
    double behindMm = options.find(BarOptions.LATERAL_BEHIND).orElseGet(room::clearBehindMm);
    double riseMm = options.get(TorqueArmOptions.LATERAL_RISE);
    Point3 frame = room.frame(options.lateralSide(), behindMm, riseMm);
    return lateral.bar(
        "lateral-bar", Duty.SIDEWAYS.only(), frame, room.axle(frame, behindMm, riseMm));
  }
}
