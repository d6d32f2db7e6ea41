package trammel.planning.fabrication;

import java.util.List;
import java.util.function.Supplier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Rails;
import trammel.planning.bars.JointSeat;
import trammel.planning.bars.RailFace;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.work.BoltNeed;
import trammel.planning.work.WeldedFoot;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.LateralBarRailBracket;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.RailBracket;
import trammel.trade.plates.SaddleArm;
import trammel.trade.plates.TubeBracket;
import trammel.trade.welding.WeldPosition;

/**
 * The two brackets of a lateral bar. On the frame a pair of plates stands across the rail, foot
 * under it and leg up its inner face. On the axle two arms with saddles on the tube carry a pair of
 * face plates away from the tube, with a bridge between them.
 */
final class LateralBarBrackets {
  /** Radius cut out about the rail's corner, 1/2 in: common practice, no source. */
  private static final double CORNER_RELIEF_MM = 12.7;

  private static final double LEAST_LEG_WIDTH_MM = 25.4;

  /** Depth of the arms at the face plate, in axle tube diameters: common practice, no source. */
  private static final double ARM_DEPTH = 0.75;

  private final Bar bar;
  private final JointSeat frameSeat;
  private final JointSeat axleSeat;
  private final BracketStock stock;
  private final Chassis chassis;
  private final double faceThicknessMm;
  private final QuantityPrinter print;

  LateralBarBrackets(
      Bar bar,
      JointSeat frameSeat,
      JointSeat axleSeat,
      BracketStock stock,
      Chassis chassis,
      double faceThicknessMm,
      QuantityPrinter print) {
    this.bar = bar;
    this.frameSeat = frameSeat;
    this.axleSeat = axleSeat;
    this.stock = stock;
    this.chassis = chassis;
    this.faceThicknessMm = faceThicknessMm;
    this.print = print;
  }

  /** The stretch of rail behind the frame bracket. */
  Footprint footprint() {
    double xMm = bar.frame().xMm();
    double half = frameSeat.stackMm() / 2;
    return new Footprint(
        bar.frame().yMm() > 0, xMm - half, xMm + half, bar.name() + " frame bracket");
  }

  WorkPlan frame(String boltKey) {
    Rails rails = chassis.rails();
    double xMm = bar.frame().xMm();
    double inboardMm = rails.innerFaceMm(xMm) - Math.abs(bar.frame().yMm());
    double upMm = bar.frame().zMm() - rails.undersideMm(xMm);
    double footMm = rails.flangeMm() - RailFace.CORNER_MM;
    double legMm = rails.depthMm() / 2;
    double legWidthMm = Math.max(2 * stock.thicknessMm(), LEAST_LEG_WIDTH_MM);
    String name = bar.name() + " frame bracket side";
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(
        stock.cut(
            name,
            2,
            new Supplier<PlateShape>() {
              @Override
              public PlateShape get() {
                return new LateralBarRailBracket(
                    name,
                    stock.thicknessMm(),
                    footMm,
                    legMm,
                    legWidthMm,
                    CORNER_RELIEF_MM,
                    frameSeat.hole(inboardMm, upMm),
                    HoleRules.SHOP);
              }
            },
            "frame joint of "
                + bar.name()
                + " "
                + print.length(inboardMm)
                + " inboard of the rail's inner face and "
                + print.length(Math.abs(upMm))
                + (upMm < 0 ? " below" : " above")
                + " its underside"));
    plan.add(
        Seam.onVehicle(
            bar.name() + " frame bracket to rail",
            stock.thicknessMm(),
            faceThicknessMm,
            footMm + legMm - 2 * CORNER_RELIEF_MM,
            4,
            WeldPosition.OVERHEAD,
            "foot of "
                + print.length(footMm)
                + " under the rail and leg of "
                + print.length(legMm)
                + " up its inner face, two plates, both faces"));
    plan.add(bolt(boltKey, frameSeat, "frame end"));
    plan.add(frameFoot(footMm, legMm));
    return plan.build();
  }

  /** Foot under the rail and leg up its inner face, two plates, seen along the vehicle. */
  private WeldedFoot frameFoot(double footMm, double legMm) {
    Rails rails = chassis.rails();
    double xMm = bar.frame().xMm();
    double side = bar.frame().yMm() > 0 ? 1 : -1;
    return new WeldedFoot(
        bar.name() + " frame bracket to rail",
        List.of(bar.name()),
        End.FRAME,
        new FootWelds()
            .line(4, side * CORNER_RELIEF_MM, 0, side * footMm, 0)
            .line(4, 0, CORNER_RELIEF_MM, 0, legMm)
            .group(),
        new Point3(xMm, side * rails.innerFaceMm(xMm), rails.undersideMm(xMm)),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), faceThicknessMm));
  }

  private BoltNeed bolt(String boltKey, JointSeat seat, String end) {
    return new BoltNeed(
        boltKey,
        seat.stackMm(),
        1,
        bar.name() + " " + end,
        "joint of "
            + print.length(seat.joint().widthMm())
            + " between two plates of "
            + print.length(stock.thicknessMm()));
  }

  WorkPlan axle(String boltKey) {
    double awayMm = Math.abs(bar.axle().xMm() - chassis.axleCentre().xMm());
    double aboveMm = bar.axle().zMm() - chassis.axleCentre().zMm();
    double reachMm = awayMm - axleSeat.stackMm() / 2;
    requireClearOfTube(reachMm);
    double baseMm = RailBracket.baseByRuleMm(axleSeat.reachMm(), axleSeat.noseMm());
    double depthMm = ARM_DEPTH * chassis.axle().tubeDiameterMm();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    addFacePlates(plan, baseMm, depthMm);
    addArms(plan, reachMm, aboveMm - axleSeat.reachMm(), depthMm);
    addBridge(plan, baseMm);
    plan.add(bolt(boltKey, axleSeat, "axle end"));
    plan.add(axleFoot(baseMm));
    return plan.build();
  }

  /** Saddles of two arms on the side of the axle tube, seen along the vehicle. */
  private WeldedFoot axleFoot(double baseMm) {
    Point3 centre = chassis.axleCentre();
    double radiusMm = chassis.axle().tubeRadiusMm();
    double halfWrapRad = TubeBracket.USUAL_WRAP_RAD / 2;
    double halfMm = radiusMm * Math.sin(halfWrapRad);
    double apartMm = (baseMm - stock.thicknessMm()) / 2;
    double towardsJoint = bar.axle().xMm() > centre.xMm() ? 1 : -1;
    return new WeldedFoot(
        bar.name() + " axle bracket arms to axle tube",
        List.of(bar.name()),
        End.AXLE,
        new FootWelds()
            .line(2, apartMm, -halfMm, apartMm, halfMm)
            .line(2, -apartMm, -halfMm, -apartMm, halfMm)
            .group(),
        new Point3(
            centre.xMm() + towardsJoint * radiusMm * Math.cos(halfWrapRad),
            bar.axle().yMm(),
            centre.zMm()),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), chassis.axle().tubeWallMm()));
  }

  private void requireClearOfTube(double reachMm) {
    double neededMm = chassis.axle().tubeRadiusMm() + stock.thicknessMm();
    if (!(reachMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          "the bracket of "
              + bar.name()
              + " on the axle comes within "
              + print.length(reachMm)
              + " of the tube's centre; it needs "
              + print.length(neededMm)
              + ". Move the bar away from the axle by "
              + print.length(neededMm - reachMm)
              + ".");
    }
  }

  private void addFacePlates(WorkPlan.Builder plan, double baseMm, double lapMm) {
    String name = bar.name() + " axle bracket face";
    plan.add(
        stock.cut(
            name,
            2,
            new Supplier<PlateShape>() {
              @Override
              public PlateShape get() {
                return new RailBracket(
                    name,
                    stock.thicknessMm(),
                    baseMm,
                    lapMm,
                    axleSeat.hole(0, -axleSeat.reachMm()),
                    HoleRules.SHOP);
              }
            },
            "hold the axle joint of "
                + bar.name()
                + " fore and aft, "
                + print.length(axleSeat.reachMm())
                + " above the arms to clear its barrel"));
  }

  private void addArms(WorkPlan.Builder plan, double reachMm, double topMm, double depthMm) {
    double tubeMm = chassis.axle().tubeDiameterMm();
    String name = bar.name() + " axle bracket arm";
    plan.add(
        stock.cut(
            name,
            2,
            new Supplier<PlateShape>() {
              @Override
              public PlateShape get() {
                return new SaddleArm(
                    name,
                    stock.thicknessMm(),
                    tubeMm,
                    TubeBracket.USUAL_WRAP_RAD,
                    reachMm,
                    topMm - depthMm,
                    topMm);
              }
            },
            "carry the face plates "
                + print.length(reachMm)
                + " from the centre of the axle tube of "
                + print.length(tubeMm)));
    plan.add(
        Seam.onBench(
            name + " to axle tube",
            stock.thicknessMm(),
            chassis.axle().tubeWallMm(),
            tubeMm / 2 * TubeBracket.USUAL_WRAP_RAD,
            4,
            "saddle of "
                + print.angle(TubeBracket.USUAL_WRAP_RAD, 0)
                + " on the tube, two arms, both faces; welded with the axle out"));
    plan.add(
        Seam.onBench(
            name + " to face plate",
            stock.thicknessMm(),
            stock.thicknessMm(),
            depthMm,
            4,
            "ends of two arms, both faces"));
  }

  private void addBridge(WorkPlan.Builder plan, double baseMm) {
    String name = bar.name() + " axle bracket bridge";
    plan.add(
        stock.strip(
            name,
            1,
            baseMm,
            axleSeat.joint().widthMm(),
            "joins the two face plates under the joint, as wide as the joint"));
    plan.add(
        Seam.onBench(
            name + " to face plates",
            stock.thicknessMm(),
            stock.thicknessMm(),
            baseMm,
            4,
            "both long edges, top and underside"));
  }
}
