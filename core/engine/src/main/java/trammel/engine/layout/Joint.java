package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * The joint at one end of a bar.
 *
 * @param name what it is, as it stands in the catalog
 * @param radialStiffnessNPerMm stiffness across the bolt (N/mm), above 0
 * @param misalignmentRad cone half-angle through which it swivels before it binds (rad), 0..pi/2
 * @param boltDiameterMm diameter of the bolt through it (mm), above 0
 * @param widthMm length of its sleeve or ball between the bracket plates (mm), above 0
 * @param barrelRadiusMm outside radius of its barrel or head (mm), above 0
 * @param staticRatingN radial load that it stands (N), above 0
 * @param workingN load that it may carry in service (N), above 0 and at most the static rating
 */
public record Joint(
    String name,
    double radialStiffnessNPerMm,
    double misalignmentRad,
    double boltDiameterMm,
    double widthMm,
    double barrelRadiusMm,
    double staticRatingN,
    double workingN) {
  /**
   * Share of its static rating that a rod end may carry in service: a rod-end maker's terms of use.
   */
  public static final double ROD_END_SHARE = 0.25;

  public Joint {
    Given.text("joint name", name);
    Given.positive("stiffness of joint " + name + " (N/mm)", radialStiffnessNPerMm);
    Given.within("misalignment of joint " + name + " (rad)", misalignmentRad, 0, Math.PI / 2);
    Given.positive("bolt of joint " + name + " (mm)", boltDiameterMm);
    Given.positive("width of joint " + name + " (mm)", widthMm);
    Given.positive("barrel radius of joint " + name + " (mm)", barrelRadiusMm);
    Given.positive("static rating of joint " + name + " (N)", staticRatingN);
    Given.within("working load of joint " + name + " (N)", workingN, 1e-6, staticRatingN);
  }

  /** A joint that is used as rod ends are, to a quarter of its static rating. */
  public Joint(
      String name,
      double radialStiffnessNPerMm,
      double misalignmentRad,
      double boltDiameterMm,
      double widthMm,
      double barrelRadiusMm,
      double staticRatingN) {
    this(
        name,
        radialStiffnessNPerMm,
        misalignmentRad,
        boltDiameterMm,
        widthMm,
        barrelRadiusMm,
        staticRatingN,
        ROD_END_SHARE * staticRatingN);
  }

  /** This joint with its ratings times a share, above 0. */
  public Joint rated(double share) {
    return new Joint(
        name,
        radialStiffnessNPerMm,
        misalignmentRad,
        boltDiameterMm,
        widthMm,
        barrelRadiusMm,
        share * staticRatingN,
        share * workingN);
  }
}
