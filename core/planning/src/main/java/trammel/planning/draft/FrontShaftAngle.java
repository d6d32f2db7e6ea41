package trammel.planning.draft;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.planning.catalog.PlanCheck;

/**
 * Angle of the front joint of a driveshaft of two pieces, which has no partner. The rear piece is
 * what the other checks of the shaft judge.
 *
 * @param front the front piece; empty for a shaft of one
 */
record FrontShaftAngle(Optional<FrontShaft> front) implements CatalogCheck {

  @Override
  public PlanCheck check() {
    return PlanCheck.FRONT_SHAFT_ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return front.isEmpty()
        ? FrontShaft.OF_ONE_PIECE
        : new Reading.Value(front.get().angleRad(), "at the transmission");
  }

  /** Never more than the published largest angle for the shaft's speed. */
  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    OptionalDouble rpm = ShaftAtSpeed.rpm(analysis);
    if (rpm.isEmpty()) {
      return general;
    }
    double largestRad = ShaftAtSpeed.largestJointAngleRad(rpm.getAsDouble());
    return Limit.atMost(
        Math.min(general.goodMax(), largestRad),
        Math.min(general.stopMax(), largestRad),
        general.source());
  }

  @Override
  public String advice() {
    return "Shim the centre bearing or the transmission until the front piece runs on straight.";
  }
}
