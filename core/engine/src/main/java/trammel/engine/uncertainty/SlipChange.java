package trammel.engine.uncertainty;

import java.util.OptionalDouble;
import trammel.engine.layout.Driveline;

/** A driveline whose slip yoke was read wrong. */
final class SlipChange {
  private SlipChange() {}

  static Driveline room(Driveline driveline, double mm) {
    return with(driveline, driveline.slipEngagementMm(), more(driveline.slipRoomMm(), mm));
  }

  static Driveline engagement(Driveline driveline, double mm) {
    return with(driveline, more(driveline.slipEngagementMm(), mm), driveline.slipRoomMm());
  }

  /** Neither can be less than nothing. */
  private static OptionalDouble more(OptionalDouble length, double mm) {
    return length.isEmpty() ? length : OptionalDouble.of(Math.max(0, length.getAsDouble() + mm));
  }

  private static Driveline with(Driveline d, OptionalDouble engagementMm, OptionalDouble roomMm) {
    return new Driveline(
        d.pinionJoint(),
        d.pinionAxis(),
        d.transmissionJoint(),
        d.transmissionAxis(),
        d.shaftDiameterMm(),
        d.shaftWallMm(),
        engagementMm,
        roomMm);
  }
}
