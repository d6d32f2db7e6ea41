package trammel.plugins.triangulated;

import java.util.List;
import java.util.Set;
import trammel.brackets.bar.AxlePickUp;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.HousingRoom;
import trammel.brackets.bar.RailFace;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.bar.UpperSpread;
import trammel.brackets.barend.FrameRoom;
import trammel.brackets.barend.RailSideHeights;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.planning.extension.Site;

/** Places the four bars. */
final class TriangulatedProposal {
  /** 1/4 in, the step in which the upper joints are raised to suit housing and rail (mm). */
  private static final double STEP_MM = 25.4 / 4;

  /** No further than 4 in over what the housing asks for. */
  private static final int MOST_STEPS = 16;

  private final Chassis chassis;
  private final TriangulatedOptions options;
  private final BarMakeUp makeUp;

  TriangulatedProposal(Site site) {
    chassis = site.chassis();
    options = new TriangulatedOptions(site);
    makeUp = options.bars();
  }

  List<Bar> bars() {
    Point3 lowerAxle = lowerAxle();
    Point3 lowerFrame =
        new Point3(
            options.lowerLengthMm() * Math.cos(options.lowerAngleRad()),
            lowerAxle.yMm(),
            lowerAxle.zMm() + options.lowerLengthMm() * Math.sin(options.lowerAngleRad()));
    Point3 upperAxle = upperAxle();
    Point3 upperFrame = upperFrame(upperAxle);
    double planRad = upperAxle.to(upperFrame).planViewRad();
    HousingRoom.requireApart(upperAxle, planRad, makeUp.axleSeat());
    List<Bar> bars =
        List.of(
            makeUp.bar("lower-left", Duty.DRIVE_AND_BRAKING.only(), lowerFrame, lowerAxle),
            makeUp.bar(
                "lower-right",
                Duty.DRIVE_AND_BRAKING.only(),
                lowerFrame.mirrored(),
                lowerAxle.mirrored()),
            makeUp.bar(
                "upper-left", Set.of(Duty.DRIVE_AND_BRAKING, Duty.SIDEWAYS), upperFrame, upperAxle),
            makeUp.bar(
                "upper-right",
                Set.of(Duty.DRIVE_AND_BRAKING, Duty.SIDEWAYS),
                upperFrame.mirrored(),
                upperAxle.mirrored()));
    FrameRoom.require(bars, makeUp, chassis.rails());
    return bars;
  }

  private Point3 upperAxle() {
    HousingRoom housing = new HousingRoom(options.housingHeightMm(), makeUp.axleSeat());
    if (options.upperRiseMm().isPresent()) {
      return upperAxle(housing.require(options.upperRiseMm().get()));
    }
    int steps = (int) Math.ceil(housing.leastRiseMm() / STEP_MM - 1e-9);
    for (int step = steps; step <= steps + MOST_STEPS; step++) {
      Point3 axle = upperAxle(step * STEP_MM);
      if (RailFace.find(upperFrame(axle), makeUp.frameSeat(), chassis.rails()).isPresent()) {
        return axle;
      }
    }
    return upperAxle(steps * STEP_MM);
  }

  private Point3 upperAxle(double riseMm) {
    return new Point3(0, options.upperSpreadMm() / 2, chassis.axleCentre().zMm() + riseMm);
  }

  private Point3 upperFrame(Point3 axle) {
    return new UpperSpread(chassis, makeUp, options.railGapMm())
        .frame(axle, options.upperLengthMm(), options.upperAngleRad());
  }

  private Point3 lowerAxle() {
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            options.railGapMm(),
            makeUp.halfAcrossMm(),
            options.lowerLengthMm());
    RailSideHeights heights = new RailSideHeights(new RailSideBars(chassis, plane, makeUp));
    double dropMm =
        options
            .lowerDropMm()
            .orElseGet(() -> heights.dropMm(options.lowerLengthMm(), options.lowerAngleRad()));
    Point3 point = new Point3(0, plane.leftMm(), chassis.axleCentre().zMm() - dropMm);
    return AxlePickUp.checked("lower bars", "lower_drop", point, makeUp.axleSeat(), chassis);
  }
}
