package trammel.plugins.triangulated;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BarRole;
import trammel.engine.layout.Chassis;
import trammel.planning.bars.AxlePickUp;
import trammel.planning.bars.BarMakeUp;
import trammel.planning.bars.BarPlane;
import trammel.planning.bars.HousingRoom;
import trammel.planning.bars.UpperSpread;
import trammel.planning.extension.Site;
import trammel.planning.quantity.QuantityPrinter;

/** Places the four bars. */
final class TriangulatedProposal {
  private final Chassis chassis;
  private final TriangulatedOptions options;
  private final QuantityPrinter print;
  private final BarMakeUp makeUp;

  TriangulatedProposal(Site site) {
    chassis = site.chassis();
    options = new TriangulatedOptions(site);
    print = new QuantityPrinter(site.units());
    makeUp = options.bars();
  }

  List<Bar> bars() {
    Point3 lowerAxle = lowerAxle();
    Point3 lowerFrame =
        new Point3(
            options.lowerLengthMm() * Math.cos(options.lowerAngleRad()),
            lowerAxle.yMm(),
            lowerAxle.zMm() + options.lowerLengthMm() * Math.sin(options.lowerAngleRad()));
    Point3 upperAxle =
        new Point3(
            0, options.upperSpreadMm() / 2, chassis.axleCentre().zMm() + options.upperRiseMm());
    new HousingRoom(options.housingHeightMm(), makeUp.axleSeat(), print)
        .require(options.upperRiseMm());
    Point3 upperFrame =
        new UpperSpread(chassis, makeUp, options.railGapMm(), print)
            .frame(upperAxle, options.upperLengthMm(), options.upperAngleRad());
    double planRad = upperAxle.to(upperFrame).planViewRad();
    HousingRoom.requireApart(upperAxle, planRad, makeUp.axleSeat(), print);
    return List.of(
        makeUp.bar("lower-left", BarRole.LOWER, lowerFrame, lowerAxle),
        makeUp.bar("lower-right", BarRole.LOWER, lowerFrame.mirrored(), lowerAxle.mirrored()),
        makeUp.bar("upper-left", BarRole.UPPER, upperFrame, upperAxle),
        makeUp.bar("upper-right", BarRole.UPPER, upperFrame.mirrored(), upperAxle.mirrored()));
  }

  private Point3 lowerAxle() {
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            options.railGapMm(),
            makeUp.halfAcrossMm(),
            options.lowerLengthMm(),
            print);
    Point3 point =
        new Point3(0, plane.leftMm(), chassis.axleCentre().zMm() - options.lowerDropMm());
    return AxlePickUp.checked("lower bars", "lower_drop", point, makeUp.axleSeat(), chassis, print);
  }
}
