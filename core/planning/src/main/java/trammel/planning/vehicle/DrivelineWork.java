package trammel.planning.vehicle;

import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Driveline;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ShaftTube;

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

  DrivelineWork(LayoutAnalysis analysis, Catalog catalog) {
    this.analysis = analysis;
    driveline = analysis.layout().chassis().driveline();
    this.catalog = catalog;
  }

  void addTo(WorkPlan.Builder plan, ChosenWork chosen) {
    if (Math.abs(chosen.shimRad()) > SAME_RAD) {
      plan.add(
          new OperationNeed(
              "shim-transmission",
              1,
              "1 mount",
              Phrase.of(
                  "its output is to stand at {}, {}{} at its front than it was found",
                  angle(driveline.transmissionAngleRad(), 2),
                  angle(Math.abs(chosen.shimRad()), 2),
                  chosen.shimRad() > 0 ? " higher" : " lower")));
    }
    List<Phrase> why = new ArrayList<>();
    if (chosen.shaftLongerMm() != 0) {
      why.add(
          Phrase.of(
              "the shaft is made {}{} for its slip yoke",
              length(Math.abs(chosen.shaftLongerMm())),
              chosen.shaftLongerMm() > 0 ? " longer" : " shorter"));
    } else if (chosen.asFound().isPresent()) {
      addLength(why, chosen.asFound().get());
    }
    addSlip(why, driveline.slipRoomMm(), least("slip-room", USUAL_ROOM_MM), true);
    addSlip(
        why, driveline.slipEngagementMm(), least("slip-engagement", USUAL_ENGAGEMENT_MM), false);
    if (chosen.newShaft().isPresent()) {
      why.add(0, anew(chosen.newShaft().get()));
      plan.add(PartNeed.withoutPlace(chosen.newShaft().get().key(), 1, Phrase.joined("; ", why)));
    } else if (!why.isEmpty()) {
      plan.add(PartNeed.withoutPlace("driveshaft-rework", 1, Phrase.joined("; ", why)));
    }
  }

  private Phrase anew(ShaftTube tube) {
    return Phrase.of(
        "the shaft is made anew of a tube of {}, {} between its joints at ride, for the speed at"
            + " which it would whirl",
        length(tube.outsideMm()),
        length(lengthMm(driveline.pinionJoint())));
  }

  private double least(String check, double usualMm) {
    Limit limit = catalog.limits().get(check);
    return limit == null ? usualMm : limit.goodMin();
  }

  private double lengthMm(Point3 pinion) {
    return pinion.distanceMm(driveline.transmissionJoint());
  }

  private void addLength(List<Phrase> why, Driveline found) {
    double wasMm = found.pinionJoint().distanceMm(found.transmissionJoint());
    double changeMm = lengthMm(driveline.pinionJoint()) - wasMm;
    if (Math.abs(changeMm) > TAKEN_UP_MM) {
      why.add(
          Phrase.of(
              "the pinion is turned from {} to {}, its joint moves {} and the shaft is {}{}",
              angle(found.pinionAngleRad()),
              angle(driveline.pinionAngleRad()),
              length(found.pinionJoint().distanceMm(driveline.pinionJoint())),
              length(Math.abs(changeMm)),
              changeMm > 0 ? " too short at ride" : " too long at ride"));
    }
  }

  private void addSlip(List<Phrase> why, OptionalDouble atRide, double leastMm, boolean room) {
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
      why.add(
          Phrase.of(
              "{}{}, {}; it takes {}, so the shaft must be {}{}",
              room ? "room left in front of the slip yoke is " : "spline engaged is ",
              length(leftMm),
              where,
              length(leastMm),
              length(leastMm - leftMm),
              room ? " shorter" : " longer"));
    }
  }
}
