package trammel.engine.clearance;

import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;

/**
 * The notch that a frame rail needs in its underside so that the axle tube keeps its distance over
 * the whole travel: an arc about the tube where it stands highest against the rail, of the tube's
 * radius plus the required gap, with straight flanks where the tube's middle rises above the
 * underside.
 *
 * @param depthMm up from the rail's underside, square to it; zero if none is needed
 * @param lengthMm along the rail at its underside; zero if none is needed
 * @param arcRadiusMm radius of the arc: tube radius plus required gap
 * @param leftAboveMm rail height left over the notch; zero or less if it would cut the rail through
 * @param middleForwardMm middle of the opening, measured along the rail to the front from the
 *     middle of the rail given; zero if none is needed
 * @param deepestAt pose that asks for the depth; empty if none is needed
 */
public record NotchNeed(
    double depthMm,
    double lengthMm,
    double arcRadiusMm,
    double leftAboveMm,
    double middleForwardMm,
    Optional<AxlePose> deepestAt) {

  /**
   * The notch for a tube and a rail.
   *
   * @param axleTube the tube at ride, running across the rail
   * @param rail the run of the rail over the axle, at ride
   * @param requiredGapMm room to keep between tube and rail, at least 0
   * @param envelope every pose that the axle can take, at least one
   * @throws IllegalArgumentException if the gap is negative or not finite, there are no poses, or
   *     the tube lies more than 60 degrees from square across the rail
   */
  public static NotchNeed of(
      Capsule axleTube, Box rail, double requiredGapMm, List<AxlePose> envelope) {
    if (!(requiredGapMm >= 0 && requiredGapMm <= Limits.GREATEST_SIZE_MM)) {
      throw new IllegalArgumentException(
          "The required gap between tube and rail is "
              + requiredGapMm
              + " mm; it must be from 0 to "
              + Limits.GREATEST_SIZE_MM
              + " mm. Give the room to keep at full bump.");
    }
    if (envelope.isEmpty()) {
      throw new IllegalArgumentException(
          "The notch was asked for over 0 poses of the axle; it needs at least 1."
              + " Check that the linkage reaches its ride height.");
    }
    NotchTrace trace = new NotchTrace(rail, axleTube.radiusMm() + requiredGapMm);
    for (AxlePose pose : envelope) {
      trace.add(axleTube.moved(pose.placement()), pose);
    }
    return trace.need();
  }

  /** Whether the rail must be notched at all. */
  public boolean isNeeded() {
    return depthMm > 0;
  }

  /** The cuts that single poses ask for, joined, in the axes of the rail. */
  private static final class NotchTrace {

    /** Cosine of 60 degrees: a tube further round runs along the rail rather than across it. */
    private static final double LEAST_ACROSS = 0.5;

    private final Point3 centre;
    private final Vector3 along;
    private final Vector3 across;
    private final Vector3 up;
    private final double halfAlongMm;
    private final double halfAcrossMm;
    private final double heightMm;
    private final double arcRadiusMm;

    private double depthMm;
    private double frontMm = Double.NEGATIVE_INFINITY;
    private double rearMm = Double.POSITIVE_INFINITY;
    private Optional<AxlePose> deepestAt = Optional.empty();

    NotchTrace(Box rail, double arcRadiusMm) {
      this.arcRadiusMm = arcRadiusMm;
      centre = rail.centre();
      Vector3[] axes = {rail.lengthwise(), rail.crosswise(), rail.upright()};
      double[] halvesMm = {rail.halfLengthMm(), rail.halfWidthMm(), rail.halfHeightMm()};
      int upAxis = 0;
      for (int k = 1; k < 3; k++) {
        upAxis = Math.abs(axes[k].z()) > Math.abs(axes[upAxis].z()) ? k : upAxis;
      }
      int oneAxis = (upAxis + 1) % 3;
      int otherAxis = (upAxis + 2) % 3;
      boolean isOneAlong = Math.abs(axes[oneAxis].x()) >= Math.abs(axes[otherAxis].x());
      int alongAxis = isOneAlong ? oneAxis : otherAxis;
      int acrossAxis = isOneAlong ? otherAxis : oneAxis;
      up = axes[upAxis].scaled(axes[upAxis].z() < 0 ? -1 : 1);
      along = axes[alongAxis].scaled(axes[alongAxis].x() < 0 ? -1 : 1);
      across = axes[acrossAxis];
      halfAlongMm = halvesMm[alongAxis];
      halfAcrossMm = halvesMm[acrossAxis];
      heightMm = 2 * halvesMm[upAxis];
    }

    void add(Capsule tube, AxlePose pose) {
      Vector3 axis = axis(tube);
      Vector3 fromCentre = centre.to(tube.from());
      double startAcross = fromCentre.dot(across);
      double slopeAcross = axis.dot(across);
      double endAcross = startAcross + slopeAcross * tube.lengthMm();
      // The tube's end rounds are taken as straight, which errs to the safe side.
      double left = Math.max(startAcross, endAcross) + arcRadiusMm;
      double right = Math.min(startAcross, endAcross) - arcRadiusMm;
      double low = Math.max(-halfAcrossMm, right);
      double high = Math.min(halfAcrossMm, left);
      if (low > high) {
        return;
      }
      // The tube is straight, so it stands highest against one of the rail's two side faces.
      addSection(fromCentre, axis, (low - startAcross) / slopeAcross, pose);
      addSection(fromCentre, axis, (high - startAcross) / slopeAcross, pose);
    }

    private Vector3 axis(Capsule tube) {
      double lengthMm = tube.lengthMm();
      if (lengthMm < Limits.LEAST_SIZE_MM) {
        throw new IllegalArgumentException(
            "The axle tube is "
                + lengthMm
                + " mm long; it must be longer than "
                + Limits.LEAST_SIZE_MM
                + " mm. Give its two ends.");
      }
      Vector3 axis = tube.from().to(tube.to()).scaled(1 / lengthMm);
      if (Math.abs(axis.dot(across)) < LEAST_ACROSS) {
        throw new IllegalArgumentException(
            "The axle tube lies "
                + Math.toDegrees(Math.acos(Math.min(1, Math.abs(axis.dot(across)))))
                + " degrees from square across the rail; at most 60 can be notched for."
                + " Check the ends of the tube and the axes of the rail.");
      }
      return axis;
    }

    /**
     * Takes in the section of the thickened tube at one face of the rail: the ellipse (1 - a²) s² -
     * 2 a u s t + (1 - u²) t² = r² about the axis, with s along the rail, t up, and a, u the axis'
     * components along and up.
     */
    private void addSection(Vector3 fromCentre, Vector3 axis, double distanceMm, AxlePose pose) {
      double a = axis.dot(along);
      double u = axis.dot(up);
      double n = Math.abs(axis.dot(across));
      double axisAlongMm = fromCentre.dot(along) + distanceMm * a;
      double axisUpMm = fromCentre.dot(up) + distanceMm * u + heightMm / 2;
      double halfUpMm = arcRadiusMm * Math.sqrt(1 - a * a) / n;
      double topMm = axisUpMm + halfUpMm;
      boolean isUnder = topMm <= 0;
      boolean isOver = axisUpMm - halfUpMm >= heightMm;
      if (isUnder || isOver) {
        return;
      }
      double middleMm = axisAlongMm;
      double halfOpeningMm = arcRadiusMm * Math.sqrt(1 - u * u) / n;
      // Where the ellipse is widest it has the height t = a u r² / (n² halfOpening), near zero.
      if (axisUpMm < 0) {
        double square = 1 - a * a;
        double root = Math.max(0, arcRadiusMm * arcRadiusMm * square - n * n * axisUpMm * axisUpMm);
        middleMm -= a * u * axisUpMm / square;
        halfOpeningMm = Math.sqrt(root) / square;
      }
      take(middleMm - halfOpeningMm, middleMm + halfOpeningMm, topMm, pose);
    }

    private void take(double sectionRearMm, double sectionFrontMm, double topMm, AxlePose pose) {
      double clippedRearMm = Math.max(-halfAlongMm, sectionRearMm);
      double clippedFrontMm = Math.min(halfAlongMm, sectionFrontMm);
      if (clippedRearMm >= clippedFrontMm) {
        return;
      }
      rearMm = Math.min(rearMm, clippedRearMm);
      frontMm = Math.max(frontMm, clippedFrontMm);
      if (topMm > depthMm) {
        depthMm = topMm;
        deepestAt = Optional.of(pose);
      }
    }

    NotchNeed need() {
      if (deepestAt.isEmpty()) {
        return new NotchNeed(0, 0, arcRadiusMm, heightMm, 0, deepestAt);
      }
      return new NotchNeed(
          depthMm,
          frontMm - rearMm,
          arcRadiusMm,
          heightMm - depthMm,
          (frontMm + rearMm) / 2,
          deepestAt);
    }
  }
}
