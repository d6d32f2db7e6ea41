package trammel.planning.draft;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Limit;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ShaftTube;
import trammel.planning.job.Job;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;

/**
 * A driveshaft of another tube: the one that the job names, else the slenderest of the catalog that
 * turns as fast as it must, where the one that was measured would whirl.
 */
public final class NewShaft {
  private static final String CHECK = "shaft-critical-speed";
  private static final String FIELD = "chosen.shaft_tube";

  private NewShaft() {}

  /**
   * The slenderest driveshaft with which the shaft may turn as fast as a limit asks for; empty
   * where none may, or its speed is not known.
   *
   * @param chassis the vehicle with its driveline
   * @param tubes those to choose from
   * @param leastShare speed that it may be used at over its speed at the top speed, at least
   */
  public static Optional<ShaftTube> slenderest(
      Chassis chassis, Collection<ShaftTube> tubes, AnalysisSettings settings, double leastShare) {
    OptionalDouble rpm = ShaftAtSpeed.rpm(chassis, settings);
    if (rpm.isEmpty()) {
      return Optional.empty();
    }
    return tubes.stream()
        .sorted(Comparator.comparingDouble(ShaftTube::outsideMm).thenComparing(ShaftTube::key))
        .filter(tube -> share(with(chassis.driveline(), tube), rpm.getAsDouble()) >= leastShare)
        .findFirst();
  }

  /** The chassis of a job with its new shaft; as it is where it keeps its own. */
  static Chassis fitted(Job job, Chassis found, Catalog catalog, AnalysisSettings settings) {
    boolean isOfTwo = job.measured().driveshaft().flatMap(shaft -> shaft.centreJoint()).isPresent();
    Optional<ShaftTube> tube =
        job.chosen().shaftTube().isPresent()
            ? Optional.of(chosen(job, catalog, isOfTwo))
            : isOfTwo ? Optional.empty() : needed(found, catalog, settings);
    return tube.map(one -> found.withDriveline(with(found.driveline(), one))).orElse(found);
  }

  private static Optional<ShaftTube> needed(
      Chassis found, Catalog catalog, AnalysisSettings settings) {
    Limit limit = catalog.limits().get(CHECK);
    OptionalDouble rpm = ShaftAtSpeed.rpm(found, settings);
    boolean isWhirling =
        limit != null
            && rpm.isPresent()
            && share(found.driveline(), rpm.getAsDouble()) < limit.stopMin();
    return isWhirling
        ? slenderest(found, catalog.shaftTubes().values(), settings, limit.goodMin())
        : Optional.empty();
  }

  private static ShaftTube chosen(Job job, Catalog catalog, boolean isOfTwo) {
    String name = job.chosen().shaftTube().orElseThrow();
    if (isOfTwo) {
      throw refused(
          job,
          "no shaft_tube: the shaft that was measured is of two pieces, which are not planned",
          "Take shaft_tube out and have a driveline shop make the shaft, or take"
              + " measured.driveshaft.centre_joint out for a shaft of one piece.");
    }
    ShaftTube tube = catalog.shaftTubes().get(name);
    if (tube == null) {
      throw refused(
          job,
          catalog.shaftTubes().isEmpty()
              ? "a driveshaft of the catalog, which has none"
              : "a driveshaft of the catalog: " + String.join(", ", catalog.shaftTubes().keySet()),
          "Choose one of these, or add it to shaft_tubes of the shop's catalog.");
    }
    return tube;
  }

  private static BadInputException refused(Job job, String allowed, String remedy) {
    return new BadInputException(
        List.of(
            Problem.error(
                job.source().locationOf(FIELD),
                "'" + job.chosen().shaftTube().orElseThrow() + "'",
                allowed,
                remedy)));
  }

  private static Driveline with(Driveline driveline, ShaftTube tube) {
    return driveline.withShaftTube(tube.outsideMm(), tube.wallMm());
  }

  /** Infinite where the tube is not known. */
  private static double share(Driveline driveline, double rpm) {
    return ShaftAtSpeed.tube(driveline)
        .map(tube -> tube.usableSpeedRpm() / rpm)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
