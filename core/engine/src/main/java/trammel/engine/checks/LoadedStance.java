package trammel.engine.checks;

import java.util.Optional;
import trammel.engine.layout.Driveline;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.ShaftReading;

/**
 * An angle of the driveline where the axle stands at full load: higher in the body by what the
 * coils sag. Pinion and transmission are both read against the body, so that how it noses up drops
 * out.
 *
 * @param empty the check as it is made empty, under the name that it has at full load
 * @param angle which angle
 */
record LoadedStance(Check empty, Angle angle) implements Check {
  /** The angles of a driveline. */
  enum Angle {
    /** Pinion's axis against the transmission output's, in side view. */
    PARALLEL,
    /** At the front joint. */
    FRONT,
    /** At the rear joint. */
    REAR
  }

  @Override
  public String id() {
    return empty.id();
  }

  @Override
  public String title() {
    return empty.title();
  }

  @Override
  public Measure measure() {
    return empty.measure();
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().chassis().masses().payload().isNone()) {
      return new Reading.NotApplicable("no load is given");
    }
    double sagMm = FullLoad.sagMm(analysis);
    if (sagMm == 0) {
      return new Reading.NotApplicable(
          "air springs are raised back to their height, so that it stands as it does empty");
    }
    double reachedMm = Math.min(sagMm, analysis.layout().chassis().travel().bumpMm());
    Optional<AxlePose> pose = analysis.poseAt(reachedMm, 0);
    if (pose.isEmpty()) {
      return new Reading.Unknown("the bars do not let the axle stand there; see linkage-reach");
    }
    Driveline driveline = analysis.layout().chassis().driveline();
    ShaftReading shaft = RideState.shaft(driveline).at(pose.get());
    return switch (angle) {
      case PARALLEL -> {
        double off = shaft.pinionElevationRad() - driveline.transmissionAngleRad();
        String where = off > 0 ? "pinion's nose is high" : "pinion's nose is low";
        yield new Reading.Value(Math.abs(off), off == 0 ? "parallel" : where);
      }
      case FRONT -> new Reading.Value(shaft.frontJointRad(), "with the body down on its coils");
      case REAR -> new Reading.Value(shaft.rearJointRad(), "with the body down on its coils");
    };
  }

  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    return empty.limit(general, analysis);
  }

  @Override
  public String advice() {
    return "Set pinion and transmission between what they want empty and loaded, fit stiffer coils"
        + " or air springs, or carry less.";
  }
}
