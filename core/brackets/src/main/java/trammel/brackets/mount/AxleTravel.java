package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.CornerLoads;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.Placement;
import trammel.engine.motion.SpringPoint;

/** How the axle moves on its bars: every pose that its two wheels can take within the travel. */
public final class AxleTravel {
  /** Stations of each wheel's travel, as many as the checks look at. */
  private static final int STATIONS = 5;

  private final Chassis chassis;
  private final MotionRates ratesAtRide;
  private final List<Placement> placements = new ArrayList<>(STATIONS * STATIONS);
  private final AxlePose ride;
  private final List<Placement> corners = new ArrayList<>(5);

  /**
   * @param chassis the vehicle with the travel wanted
   * @param guide what holds the axle
   * @throws IllegalArgumentException if it does not hold the axle
   */
  public AxleTravel(Chassis chassis, AxleGuide guide) {
    this.chassis = chassis;
    AxleMotion motion = guide.motion(chassis);
    ride = motion.atRide();
    ratesAtRide = motion.ratesAtRide();
    corners.add(ride.placement());
    placements.add(ride.placement());
    for (int left = 0; left < STATIONS; left++) {
      for (int right = 0; right < STATIONS; right++) {
        add(motion, left, right);
      }
    }
  }

  private void add(AxleMotion motion, int left, int right) {
    double leftMm = wheelMm(left);
    double rightMm = wheelMm(right);
    double sin = (leftMm - rightMm) / chassis.axle().trackMm();
    double rollRad = Math.asin(Math.max(-1, Math.min(1, sin)));
    boolean corner = left % (STATIONS - 1) == 0 && right % (STATIONS - 1) == 0;
    Optional<AxlePose> pose = motion.solve((leftMm + rightMm) / 2, rollRad).found();
    if (pose.isPresent()) {
      Placement placement = pose.get().placement();
      placements.add(placement);
      if (corner) {
        corners.add(placement);
      }
    }
  }

  private double wheelMm(int station) {
    double droopMm = chassis.travel().droopMm();
    return -droopMm + station / (STATIONS - 1.0) * (chassis.travel().bumpMm() + droopMm);
  }

  /** Where a point of the axle, given at ride, and its twin on the other side go. */
  public AxlePath path(Point3 axle) {
    return new AxlePath(axle, placements);
  }

  /** Compression of a spring between two points per travel of the wheels in heave, at ride. */
  public double motionRatio(Point3 frame, Point3 axle) {
    return new SpringPoint("spring", frame, axle, 0)
        .at(ride, ratesAtRide, chassis.axle().trackMm())
        .motionRatioHeave();
  }

  /**
   * What a spring between two points on the left and its twin on the right carry at ride, so that
   * the tyres stand as they were weighed (N), left first.
   */
  public List<Double> loadsN(Point3 frame, Point3 axle) {
    double trackMm = chassis.axle().trackMm();
    SpringPoint left = new SpringPoint("left", frame, axle, 0);
    SpringPoint right = new SpringPoint("right", frame.mirrored(), axle.mirrored(), 0);
    return CornerLoads.onSpringsN(
        chassis.masses(),
        trackMm,
        List.of(left.at(ride, ratesAtRide, trackMm), right.at(ride, ratesAtRide, trackMm)));
  }

  /** Ride height and the ends of the travel: both wheels up or down, and one of each. */
  List<Placement> corners() {
    return corners;
  }
}
