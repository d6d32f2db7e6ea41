package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.job.Hose;

/**
 * How far the two fittings of a hose come apart over the travel of both wheels, as a share of the
 * hose's length. Slack of 5 to 8 %, and that a hose may draw up by 4 % under pressure: FAA AC
 * 43.13-1B fig. 9-9.
 *
 * @param hoses the hoses as measured
 * @param onFrame where each is held on the frame, at ride
 */
record HoseReach(List<Hose> hoses, List<Point3> onFrame) implements CatalogCheck {
  private static final double SLACK = 1.08;

  @Override
  public PlanCheck check() {
    return PlanCheck.HOSES;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (hoses.isEmpty()) {
      return new Reading.Unknown("no hose is measured; give measured.hoses");
    }
    List<Detail> details = new ArrayList<>();
    List<Phrase> orders = new ArrayList<>();
    double most = 0;
    String where = "";
    for (int i = 0; i < hoses.size(); i++) {
      Hose hose = hoses.get(i);
      double apartMm = 0;
      String pose = "";
      for (AxlePose one : analysis.envelope()) {
        double distanceMm = onFrame.get(i).distanceMm(one.move(onAxle(hose, analysis)));
        if (distanceMm > apartMm) {
          apartMm = distanceMm;
          pose = analysis.describe(one);
        }
      }
      double orderMm = SLACK * apartMm;
      details.add(new Detail(hose.name() + " apart, " + pose + ":", Measure.LENGTH, apartMm));
      details.add(new Detail("to order between its fittings", Measure.LENGTH, orderMm));
      orders.add(Phrase.of("{} of {} between its fittings", hose.name(), length(orderMm)));
      if (hose.lengthMm().isPresent() && apartMm / hose.lengthMm().get() > most) {
        most = apartMm / hose.lengthMm().get();
        where = hose.name() + ", " + pose;
      }
    }
    return most > 0
        ? new Reading.Value(most, where, details)
        : new Reading.Unknown(
            Phrase.of("no length of a hose is given; order {}", Phrase.joined(", ", orders)));
  }

  private static Point3 onAxle(Hose hose, LayoutAnalysis analysis) {
    return analysis
        .layout()
        .chassis()
        .axleCentre()
        .plus(new Vector3(hose.onAxle().forwardMm(), hose.onAxle().leftMm(), hose.onAxle().upMm()));
  }

  @Override
  public String advice() {
    return "Order a hose of the length that is named, or set its fittings nearer to each other.";
  }
}
