package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Round tube, or a round bar when the wall is half the diameter.
 *
 * <p>Structural pipe and welded hollow sections are rolled under their nominal wall: published
 * properties use 0.93 of it, published weights the whole of it; see {@link #withDesignWall}. Drawn
 * tube is used as it is.
 *
 * @param outerDiameterMm outer diameter, mm, 1 to 1000
 * @param wallMm wall, mm, over 0, up to half the outer diameter
 */
public record RoundTubeSection(double outerDiameterMm, double wallMm) implements Section {
  /** Share of the nominal wall that counts in a welded hollow section. Source: AISC 360 B4.2. */
  public static final double DESIGN_WALL_SHARE = 0.93;

  /**
   * Checks the tube.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public RoundTubeSection {
    Given.within("tube outer diameter", outerDiameterMm, 1, 1000, "mm", "Measure across.");
    Given.within(
        "tube wall", wallMm, 0.01, outerDiameterMm / 2.0, "mm", "Half the diameter is solid bar.");
  }

  /**
   * A solid round bar.
   *
   * @param diameterMm diameter, mm, 1 to 1000
   * @return the section
   * @throws IllegalArgumentException if the diameter is outside its range
   */
  public static RoundTubeSection bar(double diameterMm) {
    return new RoundTubeSection(diameterMm, diameterMm / 2.0);
  }

  /**
   * The same tube with the wall that counts for a welded hollow section.
   *
   * @return the section with 0.93 of the wall
   */
  public RoundTubeSection withDesignWall() {
    return new RoundTubeSection(outerDiameterMm, DESIGN_WALL_SHARE * wallMm);
  }

  /**
   * Inner diameter.
   *
   * @return diameter, mm, 0 for a bar
   */
  public double innerDiameterMm() {
    return outerDiameterMm - 2.0 * wallMm;
  }

  @Override
  public double areaMm2() {
    return Math.PI * (outerDiameterMm - wallMm) * wallMm;
  }

  @Override
  public double secondMomentXMm4() {
    double outer2 = outerDiameterMm * outerDiameterMm;
    double inner2 = innerDiameterMm() * innerDiameterMm();
    return areaMm2() * (outer2 + inner2) / 16.0;
  }

  @Override
  public double secondMomentYMm4() {
    return secondMomentXMm4();
  }

  @Override
  public double toTopMm() {
    return outerDiameterMm / 2.0;
  }

  @Override
  public double toBottomMm() {
    return outerDiameterMm / 2.0;
  }
}
