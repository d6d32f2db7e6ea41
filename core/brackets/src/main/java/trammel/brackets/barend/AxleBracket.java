package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.Seam;
import trammel.brackets.work.SidePair;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.Point2;
import trammel.trade.plates.TubeBracket;

/** A pair of plates with a saddle on the axle tube, between which a bar's axle joint is bolted. */
public final class AxleBracket {
  private final BarMaking making;
  private final BracketBasis basis;
  private final Bar bar;
  private final JointSeat seat;
  private final BracketStock stock;
  private final Chassis chassis;

  /**
   * @param making the bar
   * @param basis what it is planned on
   */
  public AxleBracket(BarMaking making, BracketBasis basis) {
    this.making = making;
    this.basis = basis;
    bar = making.bar();
    seat = making.axleSeat();
    stock = making.stock();
    chassis = basis.chassis();
  }

  /** Its plates, weld, bolt and foot. */
  public WorkPlan plan() {
    double aheadMm = bar.axle().xMm() - chassis.axleCentre().xMm();
    double aboveMm = bar.axle().zMm() - chassis.axleCentre().zMm();
    double tubeMm = chassis.axle().tubeDiameterMm();
    String name = bar.name() + " axle bracket side";
    SidePair sides = sides();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(
        stock.loaded(
            name,
            sides.held(),
            () -> shape(name, aheadMm, aboveMm),
            lightening(aheadMm, aboveMm),
            Phrase.of(
                "axle joint of {} {} from the centre of the axle tube of {}",
                bar.name(),
                length(Math.hypot(aheadMm, aboveMm)),
                length(tubeMm))));
    Edge saddle =
        Arc.about(
            new Point2(0, 0),
            tubeMm / 2,
            Math.atan2(aboveMm, aheadMm) - TubeBracket.USUAL_WRAP_RAD / 2,
            TubeBracket.USUAL_WRAP_RAD);
    plan.add(
        Seam.onBench(
            bar.name() + " axle bracket to tube",
            stock.thicknessMm(),
            chassis.axle().tubeWallMm(),
            sides.bothFaces(name, List.of(VehicleParts.AXLE_TUBE), List.of(saddle)),
            Phrase.of(
                "saddle of {} on the tube, two plates, both faces; tacked on the"
                    + " vehicle, welded with the axle out",
                angle(TubeBracket.USUAL_WRAP_RAD, 0))));
    plan.add(foot(aheadMm, aboveMm));
    plan.add(making.bolt(End.AXLE, sides, name, basis));
    return plan.build();
  }

  /** Across the axle, the outlines about the centre of its tube. */
  private SidePair sides() {
    Point3 centre = chassis.axleCentre();
    return new SidePair(
        new Point3(centre.xMm(), bar.axle().yMm(), centre.zMm()),
        new Vector3(1, 0, 0),
        new Vector3(0, 0, 1),
        new Vector3(0, bar.axle().yMm() < 0 ? -1 : 1, 0),
        seat.joint().widthMm(),
        stock.thicknessMm(),
        Assembly.AXLE,
        "outer",
        "inner");
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
