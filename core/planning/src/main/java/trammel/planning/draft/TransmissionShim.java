package trammel.planning.draft;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Limit;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;

/**
 * Turns transmission and pinion alike, so that both universal joints work within their range: by
 * shims under the transmission's mount, and no more of them than it takes.
 */
public final class TransmissionShim {
  /** Kept off the limit, 0.1 deg. */
  private static final double CLEAR_RAD = Math.toRadians(0.1);

  /** A transmission is not shimmed by more than 4 deg: common practice, no source. */
  private static final double MOST_RAD = Math.toRadians(4);

  /** Angles are set in quarters of a degree. */
  private static final double STEP_RAD = Math.toRadians(0.25);

  private TransmissionShim() {}

  /**
   * The angle of the transmission's output with which both joints are within a limit; empty where
   * no shim brings them there.
   */
  public static Optional<Double> angleRad(Chassis chassis, Limit limit) {
    double wasRad = chassis.driveline().transmissionAngleRad();
    double firstRad = STEP_RAD * Math.rint(wasRad / STEP_RAD);
    for (int step = 1; step * STEP_RAD <= MOST_RAD + 1e-9; step++) {
      for (int sign : new int[] {1, -1}) {
        double wantedRad = firstRad + sign * step * STEP_RAD;
        if (isWithin(turned(chassis, wantedRad).driveline(), limit)) {
          return Optional.of(wantedRad);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The chassis with its joints shimmed into their range where one of them, as found, is over the
   * greatest angle for the shaft's speed; as it was where none is.
   */
  static Chassis shimmed(Chassis found, Map<String, Limit> limits, AnalysisSettings settings) {
    Limit front = limits.get("front-joint-angle");
    OptionalDouble rpm = ShaftAtSpeed.rpm(found, settings);
    if (front == null || rpm.isEmpty()) {
      return found;
    }
    double largestRad = ShaftAtSpeed.largestJointAngleRad(rpm.getAsDouble());
    Driveline driveline = found.driveline();
    if (Math.max(front(driveline), rear(driveline)) <= largestRad) {
      return found;
    }
    Limit within =
        new Limit(
            front.goodMin(),
            Math.min(front.goodMax(), largestRad),
            front.stopMin(),
            largestRad,
            front.source());
    return angleRad(found, within).map(wantedRad -> turned(found, wantedRad)).orElse(found);
  }

  private static Chassis turned(Chassis chassis, double wantedRad) {
    Driveline driveline = chassis.driveline();
    return chassis.withDriveline(
        driveline
            .withTransmissionTilted(wantedRad - driveline.transmissionAngleRad())
            .withPinionTurned(chassis.axleCentre(), wantedRad - driveline.pinionAngleRad()));
  }

  private static double front(Driveline driveline) {
    return shaft(driveline).angleToLineRad(driveline.transmissionAxis());
  }

  private static double rear(Driveline driveline) {
    return shaft(driveline).angleToLineRad(driveline.pinionAxis());
  }

  private static Vector3 shaft(Driveline driveline) {
    return driveline.pinionJoint().to(driveline.transmissionJoint());
  }

  private static boolean isWithin(Driveline driveline, Limit limit) {
    return limit.margin(front(driveline)) >= CLEAR_RAD
        && limit.margin(rear(driveline)) >= CLEAR_RAD;
  }
}
