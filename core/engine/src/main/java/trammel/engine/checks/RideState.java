package trammel.engine.checks;

import trammel.engine.layout.Layout;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.PoseSolver;
import trammel.engine.springs.RideFrequency;

/** Temporary. */
public record RideState(double antiSquatShare, double rollUndersteer, double rideFrequencyHz) {
  static RideState of(Layout layout) {
    PoseSolver s = new PoseSolver(layout.linkage());
    double h = 0.01;
    AxlePose a = s.solve(h, 0).required();
    AxlePose b = s.solve(-h, 0).required();
    double p = (a.pitchNoseUpRad() - b.pitchNoseUpRad()) / (2 * h);
    double x = (a.forwardMm() - b.forwardMm()) / (2 * h);
    double slope = -(x + p * layout.chassis().tyre().loadedRadiusMm());
    double as =
        slope
            / (layout.chassis().masses().centreOfGravityHeightMm()
                / layout.chassis().wheelbaseMm());
    AxlePose c = s.solve(0, 1e-4).required();
    AxlePose d = s.solve(0, -1e-4).required();
    double us = -(c.yawRad() - d.yawRad()) / 2e-4;
    double rate = 0;
    for (SpringUnit u : layout.springs()) {
      double dl =
          (u.frame().distanceMm(a.move(u.axle())) - u.frame().distanceMm(b.move(u.axle())))
              / (2 * h);
      rate += 0.5 * u.rateNPerMm() * dl * dl;
    }
    return new RideState(
        as, us, RideFrequency.hertz(rate, layout.chassis().masses().sprungPerRearCornerKg()));
  }
}
