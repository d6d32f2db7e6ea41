package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.SpringKind;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Shaft;
import trammel.engine.motion.ShaftReading;

/**
 * Joint angles of the driveshaft when an air spring has lost its air at speed and the body lies on
 * its bump stop on that side, or on both: share of the largest angle for the shaft's speed.
 */
record AirLost(String id, String title) implements Check {
  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().springs().stream().noneMatch(one -> one.kind() == SpringKind.AIR)) {
      return new Reading.NotApplicable("there is no air spring");
    }
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (rpm.isEmpty()) {
      return new Reading.Unknown("the shaft's speed is not known; give measured.drive.final_drive");
    }
    double allowedRad = ShaftAtSpeed.largestJointAngleRad(rpm.getAsDouble());
    Chassis chassis = analysis.layout().chassis();
    double bumpMm = chassis.travel().bumpMm();
    double leanRad = Math.asin(Math.min(1, bumpMm / chassis.axle().trackMm()));
    Shaft shaft = RideState.shaft(chassis.driveline());
    double most = 0;
    String where = "";
    List<Detail> details = new ArrayList<>();
    for (Lost lost : Lost.values()) {
      AxlePose pose = analysis.poseAt(lost.heave * bumpMm, lost.roll * leanRad).orElse(null);
      if (pose == null) {
        continue;
      }
      ShaftReading reading = shaft.at(pose);
      double angleRad = Math.max(reading.frontJointRad(), reading.rearJointRad());
      String joint = reading.frontJointRad() >= reading.rearJointRad() ? "front" : "rear";
      details.add(new Detail(joint + " joint, " + lost.words, Measure.ANGLE, angleRad));
      if (angleRad / allowedRad > most) {
        most = angleRad / allowedRad;
        where = joint + " joint, " + lost.words + ", " + ShaftAtSpeed.at(rpm.getAsDouble());
      }
    }
    if (details.isEmpty()) {
      return new Reading.Unknown("the bars stop the axle before the bump stops; see their travel");
    }
    details.add(new Detail("allowed", Measure.ANGLE, allowedRad));
    details.add(new Detail("the body leans, one side empty", Measure.ANGLE, leanRad));
    return new Reading.Value(most, where, details);
  }

  /** Which springs are empty: one wheel at full bump, the other at ride, or both. */
  private enum Lost {
    LEFT("left side empty", 0.5, 1),
    RIGHT("right side empty", 0.5, -1),
    BOTH("both sides empty", 1, 0);

    private final String words;
    private final double heave;
    private final double roll;

    Lost(String words, double heave, double roll) {
      this.words = words;
      this.heave = heave;
      this.roll = roll;
    }
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeBump());
  }

  @Override
  public String advice() {
    return "Fit taller bump stops, so that the body is held up nearer to ride without air.";
  }
}
