package trammel.planning.vehicle;

import java.util.OptionalDouble;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Driveline;
import trammel.engine.motion.AxlePose;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ShaftTube;
import trammel.reading.quantity.QuantityPrinter;

/** Decides whether the driveshaft must go to a driveline shop. */
final class DrivelineWork {
  private static final double INCH_MM = 25.4;

  /** A change of length at ride that every slip yoke takes, 1/8 in: common practice, no source. */
  private static final double TAKEN_UP_MM = INCH_MM / 8;

  /** Room in front of the yoke where the catalog has no limit, 3/4 in. */
  private static final double USUAL_ROOM_MM = 0.75 * INCH_MM;

  /** Spline engaged where the catalog has no limit, 1 in. */
  private static final double USUAL_ENGAGEMENT_MM = INCH_MM;

  /** A tilt of less than this is rounding (rad). */
  private static final double SAME_RAD = Math.toRadians(0.02);

  private final LayoutAnalysis analysis;
  private final Driveline driveline;
  private final Catalog catalog;
  private final QuantityPrinter print;

  DrivelineWork(LayoutAnalysis analysis, Catalog catalog, QuantityPrinter print) {
    this.analysis = analysis;
    driveline = analysis.layout().chassis().driveline();
    this.catalog = catalog;
    this.print = print;
  }

  void addTo(WorkPlan.Builder plan, ChosenWork chosen) {
    if (Math.abs(chosen.shimRad()) > SAME_RAD) {
      plan.add(
          new OperationNeed(
              "shim-transmission",
              1,
              "1 mount",
              "its output is to stand at "
                  + print.angle(driveline.transmissionAngleRad(), 2)
                  + ", "
                  + print.angle(Math.abs(chosen.shimRad()), 2)
                  + (chosen.shimRad() > 0 ? " higher" : " lower")
                  + " at its front than it was found"));
    }
    StringBuilder why = new StringBuilder();
    if (chosen.shaftLongerMm() != 0) {
      why.append("the shaft is made ")
          .append(print.length(Math.abs(chosen.shaftLongerMm())))
          .append(chosen.shaftLongerMm() > 0 ? " longer" : " shorter")
          .append(" for its slip yoke");
    } else if (chosen.asFound().isPresent()) {
      appendLength(why, chosen.asFound().get());
    }
    appendSlip(why, driveline.slipRoomMm(), least("slip-room", USUAL_ROOM_MM), true);
    appendSlip(
        why, driveline.slipEngagementMm(), least("slip-engagement", USUAL_ENGAGEMENT_MM), false);
    if (chosen.newShaft().isPresent()) {
      why.insert(0, anew(chosen.newShaft().get()) + (why.length() == 0 ? "" : "; "));
      plan.add(PartNeed.withoutPlace(chosen.newShaft().get().key(), 1, why.toString()));
    } else if (why.length() > 0) {
      plan.add(PartNeed.withoutPlace("driveshaft-rework", 1, why.toString()));
    }
  }

  private String anew(ShaftTube tube) {
    return "the shaft is made anew of a tube of "
        + print.length(tube.outsideMm())
        + ", "
        + print.length(lengthMm(driveline.pinionJoint()))
        + " between its joints at ride, for the speed at which it would whirl";
  }

  private double least(String check, double usualMm) {
    Limit limit = catalog.limits().get(check);
    return limit == null ? usualMm : limit.goodMin();
  }

  private double lengthMm(Point3 pinion) {
    return pinion.distanceMm(driveline.transmissionJoint());
  }

  private void appendLength(StringBuilder why, Driveline found) {
    double wasMm = found.pinionJoint().distanceMm(found.transmissionJoint());
    double changeMm = lengthMm(driveline.pinionJoint()) - wasMm;
    if (Math.abs(changeMm) > TAKEN_UP_MM) {
      why.append("the pinion is turned from ")
          .append(print.angle(found.pinionAngleRad()))
          .append(" to ")
          .append(print.angle(driveline.pinionAngleRad()))
          .append(", its joint moves ")
          .append(print.length(found.pinionJoint().distanceMm(driveline.pinionJoint())))
          .append(" and the shaft is ")
          .append(print.length(Math.abs(changeMm)))
          .append(changeMm > 0 ? " too short at ride" : " too long at ride");
    }
  }

  private void appendSlip(StringBuilder why, OptionalDouble atRide, double leastMm, boolean room) {
    if (atRide.isEmpty()) {
      return;
    }
    double rideMm = lengthMm(driveline.pinionJoint());
    double leftMm = atRide.getAsDouble();
    String where = "at ride";
    for (AxlePose pose : analysis.envelope()) {
      double longerMm = lengthMm(pose.move(driveline.pinionJoint())) - rideMm;
      double thereMm = atRide.getAsDouble() + (room ? longerMm : -longerMm);
      if (thereMm < leftMm) {
        leftMm = thereMm;
        where = analysis.describe(pose);
      }
    }
    if (leftMm < leastMm) {
      why.append(why.length() == 0 ? "" : "; ")
          .append(room ? "room left in front of the slip yoke is " : "spline engaged is ")
          .append(print.length(leftMm))
          .append(", ")
          .append(where)
          .append("; it takes ")
          .append(print.length(leastMm))
          .append(", so the shaft must be ")
          .append(print.length(leastMm - leftMm))
          .append(room ? " shorter" : " longer");
    }
  }
}
