package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import trammel.engine.checks.Check;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.planning.draft.Draft;

/**
 * Judges what was tacked by its readings: do they agree, which brackets are off, what did that do
 * to the checks, and does setting them back help. Nothing is ever to be welded while a check says
 * stop or the readings contradict each other.
 */
public final class TackJudge {
  /** A bracket that only seems to be off by luck is called so once in a thousand times. */
  private static final double LEVEL = 0.999;

  /** A reading is suspected by luck once in ten thousand times (normal distribution). */
  private static final double SUSPECT = 3.89;

  private static final double ROUND_MM = 25.4 / 32;
  private static final int AXES = 3;

  private final Layout plan;
  private final Judge judge;
  private final FitUpSheet sheet;
  private final TackModel model;
  private final FrameAxes axes;
  private final double noseUpOnStandsRad;

  /** For a job. */
  public TackJudge(Draft draft) {
    this(
        draft.layout(),
        draft.judge(),
        FitUpSheet.of(draft),
        draft.job().measured().rake().atRideRad()
            - draft.job().measured().rake().onStands().meanRad());
  }

  TackJudge(Layout plan, Judge judge, FitUpSheet sheet, double noseUpOnStandsRad) {
    this.plan = plan;
    this.judge = judge;
    this.sheet = sheet;
    this.noseUpOnStandsRad = noseUpOnStandsRad;
    model = new TackModel(plan, sheet);
    axes = FrameAxes.of(plan.chassis().rails());
  }

  /** The targets that readings may be entered for. */
  public FitUpSheet sheet() {
    return sheet;
  }

  /**
   * Judges readings.
   *
   * @param readings one for each target that was measured
   * @throws IllegalArgumentException if a reading's name is not a target's
   */
  public TackReport judge(List<TackReading> readings) {
    for (TackReading reading : readings) {
      if (model.target(reading.id()).isEmpty()) {
        throw new IllegalArgumentException(
            "there is no target " + reading.id() + "; use the names of the fit-up sheet.");
      }
    }
    TackFit fit = new TackFit(model, readings);
    List<TackReport.Move> moved = moved(fit);
    List<TackReport.Again> again = doubts(fit);
    addUncertain(fit, moved, again);
    Layout tacked = asTacked(fit, readings);
    List<CheckResult> checks = judge.judge(tacked);
    List<String> stops = stops(checks);
    Map<String, Verdict> planned = verdicts(onTheseWheels(plan, readings));
    List<String> corrected = moved.isEmpty() ? List.of() : worse(reSet(tacked, moved), planned);
    TackVerdict verdict = verdict(again, moved, stops);
    return new TackReport(
        verdict,
        reasons(verdict, moved, stops, corrected),
        moved,
        again,
        seat(fit, readings),
        checks,
        stops,
        corrected);
  }

  private static TackVerdict verdict(
      List<TackReport.Again> again, List<TackReport.Move> moved, List<String> stops) {
    if (!again.isEmpty()) {
      return TackVerdict.MEASURE_AGAIN;
    }
    if (!moved.isEmpty()) {
      return TackVerdict.RE_SET;
    }
    return stops.isEmpty() ? TackVerdict.WELD : TackVerdict.CHANGE_THE_PLAN;
  }

  private static List<String> reasons(
      TackVerdict verdict,
      List<TackReport.Move> moved,
      List<String> stops,
      List<String> corrected) {
    List<String> reasons = new ArrayList<>();
    switch (verdict) {
      case MEASURE_AGAIN -> reasons.add("the readings do not say for certain where everything is");
      case WELD -> reasons.add("every bracket is within its tolerance and no check says stop");
      case CHANGE_THE_PLAN ->
          reasons.add(
              "the brackets are where the plan puts them, and so placed these checks say stop: "
                  + String.join(", ", stops));
      case RE_SET -> {
        for (TackReport.Move move : moved) {
          reasons.add(move.what() + " is out of place by more than its tolerance");
        }
        reasons.add(
            corrected.isEmpty()
                ? "set back, every check is again what the plan made it (tried)"
                : "set back, these checks are still worse than planned: "
                    + String.join(", ", corrected));
      }
    }
    return reasons;
  }

  /** Readings that scatter, contradict the others or are missing. */
  private List<TackReport.Again> doubts(TackFit fit) {
    List<TackReport.Again> again = new ArrayList<>();
    for (TackReading reading : fit.readings()) {
      double instrument = model.target(reading.id()).orElseThrow().instrument();
      if (reading.spread() > 2 * instrument * (1 + 1e-9)) {
        again.add(
            new TackReport.Again(
                reading.id(), "its repeats are further apart than the instrument allows"));
      }
    }
    suspect(fit).ifPresent(again::add);
    for (Mount mount : fit.mounts()) {
      for (Axis axis : Axis.values()) {
        if (fit.deviationMm(mount, axis.ordinal()) > FitUpSheet.PLACE_MM) {
          again.add(
              new TackReport.Again(
                  model.ownReadings(mount).get(axis.ordinal()), "it is not measured"));
        }
      }
    }
    addMissingAxle(fit, again);
    return again;
  }

  /** Brackets that are as likely over their tolerance as within it. */
  private void addUncertain(
      TackFit fit, List<TackReport.Move> moved, List<TackReport.Again> again) {
    for (Mount mount : fit.mounts()) {
      double[] off = fit.displacement(mount);
      double distanceMm = Math.hypot(Math.hypot(off[0], off[1]), off[2]);
      double deviationMm = 0;
      for (int i = 0; i < AXES; i++) {
        deviationMm = Math.max(deviationMm, fit.deviationMm(mount, i));
      }
      boolean out = moved.stream().anyMatch(move -> move.mount().equals(mount));
      if (!out
          && distanceMm > FitUpSheet.PLACE_MM - deviationMm
          && deviationMm < FitUpSheet.PLACE_MM) {
        for (String own : model.ownReadings(mount)) {
          again.add(
              new TackReport.Again(
                  own, "the bracket is too near its tolerance to tell; more repeats settle it"));
        }
      }
    }
  }

  /** The reading that fits the others least, where they do not agree. */
  private Optional<TackReport.Again> suspect(TackFit fit) {
    int worst = -1;
    for (int i = 0; i < fit.readings().size(); i++) {
      if (worst < 0 || Math.abs(fit.standardResidual(i)) > Math.abs(fit.standardResidual(worst))) {
        worst = i;
      }
    }
    if (worst < 0) {
      return Optional.empty();
    }
    boolean misfits =
        fit.freedoms() >= 1
            && fit.misfit()
                > new ChiSquaredDistribution(fit.freedoms()).inverseCumulativeProbability(LEVEL);
    return Math.abs(fit.standardResidual(worst)) > SUSPECT || misfits
        ? Optional.of(
            new TackReport.Again(
                fit.readings().get(worst).id(), "it does not agree with the other readings"))
        : Optional.empty();
  }

  private static void addMissingAxle(TackFit fit, List<TackReport.Again> again) {
    for (AxleReading reading :
        List.of(
            AxleReading.WHEELBASE_LEFT, AxleReading.WHEELBASE_RIGHT, AxleReading.PINION_ANGLE)) {
      boolean there = false;
      for (TackReading taken : fit.readings()) {
        there |= taken.id().equals(reading.id());
      }
      if (!there) {
        again.add(new TackReport.Again(reading.id(), "it is not measured"));
      }
    }
  }

  /** Brackets that are off beyond their tolerance, and not by luck. */
  private List<TackReport.Move> moved(TackFit fit) {
    double luck = new ChiSquaredDistribution(AXES).inverseCumulativeProbability(LEVEL);
    List<TackReport.Move> moves = new ArrayList<>();
    for (Mount mount : fit.mounts()) {
      double[] deviations = new double[AXES];
      for (int i = 0; i < AXES; i++) {
        deviations[i] = fit.deviationMm(mount, i);
      }
      TackReport.Move move =
          new TackReport.Move(mount, mount.words(plan), fit.displacement(mount), deviations);
      if (move.distanceMm() > FitUpSheet.PLACE_MM && fit.significance(mount) > luck) {
        moves.add(move);
      }
    }
    moves.sort(Comparator.comparingDouble(TackReport.Move::distanceMm).reversed());
    return moves;
  }

  private Layout asTacked(TackFit fit, List<TackReading> readings) {
    Layout layout = onTheseWheels(plan, readings);
    for (Mount mount : fit.mounts()) {
      double[] off = fit.displacement(mount);
      Vector3 displacement = axes.displacement(off[0], off[1], off[2]);
      layout = mount.moved(layout, mount.point(plan).plus(displacement));
    }
    return layout;
  }

  /** The layout with wheelbases and pinion as they were read. */
  private Layout onTheseWheels(Layout layout, List<TackReading> readings) {
    Map<String, Double> read = new HashMap<>();
    for (TackReading reading : readings) {
      read.put(reading.id(), reading.mean());
    }
    Chassis chassis = layout.chassis();
    Double left = read.get(AxleReading.WHEELBASE_LEFT.id());
    Double right = read.get(AxleReading.WHEELBASE_RIGHT.id());
    if (left != null && right != null && left > 0 && right > 0) {
      chassis = chassis.withWheelbases(left, right);
    }
    Double pinion = read.get(AxleReading.PINION_ANGLE.id());
    if (pinion != null) {
      double upRad = pinion - noseUpOnStandsRad - chassis.driveline().pinionAngleRad();
      chassis =
          chassis.withDriveline(chassis.driveline().withPinionTurned(chassis.axleCentre(), upRad));
    }
    return layout.withChassis(chassis);
  }

  /** What is tacked with the brackets moved back by what a rule can set. */
  private Layout reSet(Layout tacked, List<TackReport.Move> moves) {
    Layout layout = tacked;
    for (TackReport.Move move : moves) {
      double[] back = new double[AXES];
      for (int i = 0; i < AXES; i++) {
        back[i] = -Math.rint(move.offMm()[i] / ROUND_MM) * ROUND_MM;
      }
      Point3 now = move.mount().point(layout);
      layout = move.mount().moved(layout, now.plus(axes.displacement(back[0], back[1], back[2])));
    }
    return layout;
  }

  private static List<String> stops(List<CheckResult> checks) {
    List<String> stops = new ArrayList<>();
    for (CheckResult check : checks) {
      if (check instanceof CheckResult.Judged judged && judged.verdict() == Verdict.STOP) {
        stops.add(judged.title());
      }
    }
    return stops;
  }

  /** What each check says of a layout, without trying changes. */
  private Map<String, Verdict> verdicts(Layout layout) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, judge.settings());
    Map<String, Verdict> verdicts = new HashMap<>();
    for (Check check : judge.checks()) {
      judge
          .find(check, analysis)
          .ifPresent(finding -> verdicts.put(check.title(), finding.verdict()));
    }
    return verdicts;
  }

  /** Titles of checks that say worse of a layout than of the plan. */
  private List<String> worse(Layout layout, Map<String, Verdict> planned) {
    List<String> worse = new ArrayList<>();
    for (Map.Entry<String, Verdict> check : verdicts(layout).entrySet()) {
      Verdict before = planned.get(check.getKey());
      if (before != null && check.getValue().compareTo(before) > 0) {
        worse.add(check.getKey());
      }
    }
    return worse;
  }

  private TackReport.AxleSeat seat(TackFit fit, List<TackReading> readings) {
    double leftMm = plan.chassis().wheelbaseMm();
    double rightMm = leftMm;
    for (TackReading reading : readings) {
      if (reading.id().equals(AxleReading.WHEELBASE_LEFT.id())) {
        leftMm = reading.mean();
      }
      if (reading.id().equals(AxleReading.WHEELBASE_RIGHT.id())) {
        rightMm = reading.mean();
      }
    }
    double[] axle = fit.axle();
    return new TackReport.AxleSeat(axle[0], axle[1], axle[5], leftMm - rightMm);
  }
}
