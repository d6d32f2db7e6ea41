package trammel.planning.fabrication;

import java.util.List;
import java.util.function.Supplier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.planning.bars.JointSeat;
import trammel.planning.work.BoltNeed;
import trammel.planning.work.WeldedFoot;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;
import trammel.trade.plates.TubeBracket;

/** A pair of plates with a saddle on the axle tube, between which a bar's axle joint is bolted. */
final class AxleBracket {
  private final Bar bar;
  private final JointSeat seat;
  private final BracketStock stock;
  private final Chassis chassis;
  private final QuantityPrinter print;

  AxleBracket(Bar bar, JointSeat seat, BracketStock stock, Chassis chassis, QuantityPrinter print) {
    this.bar = bar;
    this.seat = seat;
    this.stock = stock;
    this.chassis = chassis;
    this.print = print;
  }

  WorkPlan plan(String boltKey) {
    double aheadMm = bar.axle().xMm() - chassis.axleCentre().xMm();
    double aboveMm = bar.axle().zMm() - chassis.axleCentre().zMm();
    double tubeMm = chassis.axle().tubeDiameterMm();
    String name = bar.name() + " axle bracket side";
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(
        stock.loaded(
            name,
            2,
            new Supplier<PlateShape>() {
              @Override
              public PlateShape get() {
                return shape(name, aheadMm, aboveMm);
              }
            },
            lightening(aheadMm, aboveMm),
            "axle joint of "
                + bar.name()
                + " "
                + print.length(Math.hypot(aheadMm, aboveMm))
                + " from the centre of the axle tube of "
                + print.length(tubeMm)));
    double saddleMm = tubeMm / 2 * TubeBracket.USUAL_WRAP_RAD;
    plan.add(
        Seam.onBench(
            bar.name() + " axle bracket to tube",
            stock.thicknessMm(),
            chassis.axle().tubeWallMm(),
            saddleMm,
            4,
            "saddle of "
                + print.angle(TubeBracket.USUAL_WRAP_RAD, 0)
                + " on the tube, two plates, both faces; tacked on the vehicle, welded with the"
                + " axle out"));
    plan.add(foot(aheadMm, aboveMm));
    plan.add(
        new BoltNeed(
            boltKey,
            seat.stackMm(),
            1,
            bar.name() + " axle end",
            "joint of "
                + print.length(seat.joint().widthMm())
                + " between two plates of "
                + print.length(stock.thicknessMm())));
    return plan.build();
  }

  /** Held by its saddle, at the round of the tube. */
  private Lightening lightening(double aheadMm, double aboveMm) {
    Point2 bolt = new Point2(aheadMm, aboveMm);
    double shareMm = chassis.axle().tubeRadiusMm() / Math.hypot(aheadMm, aboveMm);
    return new Lightening(List.of(bolt), new Point2(aheadMm * shareMm, aboveMm * shareMm), 0);
  }

  private WeldedFoot foot(double aheadMm, double aboveMm) {
    Point3 centre = chassis.axleCentre();
    return new WeldedFoot(
        bar.name() + " axle bracket to tube",
        List.of(bar.name()),
        End.AXLE,
        new FootWelds()
            .arc(
                4,
                chassis.axle().tubeRadiusMm(),
                Math.atan2(aboveMm, aheadMm),
                TubeBracket.USUAL_WRAP_RAD)
            .group(),
        new Point3(centre.xMm(), bar.axle().yMm(), centre.zMm()),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        Seam.legMm(stock.thicknessMm(), chassis.axle().tubeWallMm()));
  }

  private TubeBracket shape(String name, double aheadMm, double aboveMm) {
    return new TubeBracket(
        name,
        stock.thicknessMm(),
        chassis.axle().tubeDiameterMm(),
        0,
        TubeBracket.USUAL_WRAP_RAD,
        seat.hole(aheadMm, aboveMm),
        HoleRules.SHOP);
  }
}
