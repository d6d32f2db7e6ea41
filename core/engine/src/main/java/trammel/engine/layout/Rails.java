package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * The two frame rails as they stand at ride, described at two stations: above the axle ({@code x =
 * 0}) and at the front mounts. Between and beyond the stations the rails run straight.
 *
 * @param boxed true for a closed rail, false for a channel that opens to the inside
 * @param outsideAtAxleMm width over both rails above the axle (mm), above 0
 * @param outsideAtFrontMm width over both rails at the front mounts (mm), above 0
 * @param undersideAtAxleMm height of the rail's underside above ground over the axle (mm), above 0
 * @param undersideAtFrontMm the same at the front mounts (mm), above 0
 * @param frontMountsForwardMm the front-mount station ahead of the axle (mm), above 0
 * @param depthMm height of the rail (mm), above 0
 * @param flangeMm width of the rail (mm), above 0
 * @param wallMm thickness of the rail's steel (mm), above 0
 * @param notchDepthMm depth of the notch over the axle that the axle tube sees, up from the
 *     underside to the lower face of the cap plate (mm), 0 for none, less than the depth
 * @param notchCapMm thickness of the cap plate that lines the cut (mm), 0 for none; the rail is cut
 *     deeper by it
 * @param notchSidePlateMm thickness of the plates on both sides of the rail round the notch (mm), 0
 *     for none
 * @param notchRadiusMm radius that the notch is cut to (mm), 0 for a half circle
 * @param notchRiseMm how far the side plates rise above the top of the rail over the notch (mm), 0
 *     where they end with it; less than the rail is cut
 */
public record Rails(
    boolean boxed,
    double outsideAtAxleMm,
    double outsideAtFrontMm,
    double undersideAtAxleMm,
    double undersideAtFrontMm,
    double frontMountsForwardMm,
    double depthMm,
    double flangeMm,
    double wallMm,
    double notchDepthMm,
    double notchCapMm,
    double notchSidePlateMm,
    double notchRadiusMm,
    double notchRiseMm) {
  public Rails {
    Given.positive("rail outside width at the axle (mm)", outsideAtAxleMm);
    Given.positive("rail outside width at the front mounts (mm)", outsideAtFrontMm);
    Given.positive("rail underside at the axle (mm)", undersideAtAxleMm);
    Given.positive("rail underside at the front mounts (mm)", undersideAtFrontMm);
    Given.positive("front-mount station ahead of the axle (mm)", frontMountsForwardMm);
    Given.positive("rail depth (mm)", depthMm);
    Given.positive("rail flange (mm)", flangeMm);
    Given.within("rail wall (mm)", wallMm, Double.MIN_NORMAL, Math.min(depthMm, flangeMm) / 2);
    Given.notNegative("notch depth (mm)", notchDepthMm);
    Given.notNegative("cap plate of the notch (mm)", notchCapMm);
    Given.notNegative("side plate of the notch (mm)", notchSidePlateMm);
    Given.notNegative("radius of the notch (mm)", notchRadiusMm);
    Given.notNegative("rise of the notch's side plates (mm)", notchRiseMm);
    if (notchDepthMm >= depthMm) {
      throw new IllegalArgumentException(
          "notch depth is "
              + notchDepthMm
              + " mm; a rail of "
              + depthMm
              + " mm depth takes less than that. Raise the frame at ride or ask for less bump"
              + " travel.");
    }
  }

  /** Rails whose notch, if there is one, has no plates. */
  public Rails(
      boolean boxed,
      double outsideAtAxleMm,
      double outsideAtFrontMm,
      double undersideAtAxleMm,
      double undersideAtFrontMm,
      double frontMountsForwardMm,
      double depthMm,
      double flangeMm,
      double wallMm,
      double notchDepthMm) {
    this(
        boxed,
        outsideAtAxleMm,
        outsideAtFrontMm,
        undersideAtAxleMm,
        undersideAtFrontMm,
        frontMountsForwardMm,
        depthMm,
        flangeMm,
        wallMm,
        notchDepthMm,
        0,
        0,
        0,
        0);
  }

  /** Distance of the rails' outer faces from the centre plane at a station (mm). */
  public double outerFaceMm(double forwardMm) {
    return along(forwardMm, outsideAtAxleMm, outsideAtFrontMm) / 2;
  }

  /** Distance of the rails' inner faces from the centre plane at a station (mm). */
  public double innerFaceMm(double forwardMm) {
    return outerFaceMm(forwardMm) - flangeMm;
  }

  /** Height of the rails' underside above ground at a station, notch left out (mm). */
  public double undersideMm(double forwardMm) {
    return along(forwardMm, undersideAtAxleMm, undersideAtFrontMm);
  }

  /** Height of the rails' top above ground at a station (mm). */
  public double topMm(double forwardMm) {
    return undersideMm(forwardMm) + depthMm;
  }

  /** Depth to which the rail itself is cut, the cap plate's thickness included (mm); 0 for none. */
  public double cutDepthMm() {
    return notchDepthMm > 0 ? notchDepthMm + notchCapMm : 0;
  }

  /** These rails with a notch of another depth (mm), lined and plated as before. */
  public Rails withNotchDepth(double newNotchDepthMm) {
    return notched(newNotchDepthMm, notchCapMm, notchSidePlateMm, notchRadiusMm, notchRiseMm);
  }

  /**
   * These rails with another notch, its side plates no higher than the rail.
   *
   * @param newDepthMm depth that the axle tube sees (mm), 0 for none
   * @param newCapMm thickness of the cap plate (mm), 0 for none
   * @param newSidePlateMm thickness of the side plates (mm), 0 for none
   * @param newRadiusMm radius of the cut (mm), 0 for a half circle
   */
  public Rails withNotch(
      double newDepthMm, double newCapMm, double newSidePlateMm, double newRadiusMm) {
    return notched(newDepthMm, newCapMm, newSidePlateMm, newRadiusMm, 0);
  }

  /**
   * These rails with side plates of the notch that rise above their top.
   *
   * @param riseMm how far (mm), 0 for not
   */
  public Rails withNotchRise(double riseMm) {
    return notched(notchDepthMm, notchCapMm, notchSidePlateMm, notchRadiusMm, riseMm);
  }

  private Rails notched(
      double newDepthMm,
      double newCapMm,
      double newSidePlateMm,
      double newRadiusMm,
      double newRiseMm) {
    return new Rails(
        boxed,
        outsideAtAxleMm,
        outsideAtFrontMm,
        undersideAtAxleMm,
        undersideAtFrontMm,
        frontMountsForwardMm,
        depthMm,
        flangeMm,
        wallMm,
        newDepthMm,
        newCapMm,
        newSidePlateMm,
        newRadiusMm,
        newRiseMm);
  }

  private double along(double forwardMm, double atAxle, double atFront) {
    return atAxle + (atFront - atAxle) * forwardMm / frontMountsForwardMm;
  }
}
