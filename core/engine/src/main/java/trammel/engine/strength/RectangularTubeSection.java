package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Square or rectangular tube with rounded corners, outer radius twice the wall and inner radius one
 * wall, as rolled structural tube has them; this reproduces published areas and second moments
 * within 0.5 %. See {@link #withDesignWall} for the wall that counts.
 *
 * @param heightMm outer height, mm, 4 walls to 1000
 * @param widthMm outer width, mm, 4 walls to 1000
 * @param wallMm wall, mm, 0.1 to 50
 */
public record RectangularTubeSection(double heightMm, double widthMm, double wallMm)
    implements Section {
  /**
   * Checks the tube.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public RectangularTubeSection {
    Given.within("tube wall", wallMm, 0.1, 50, "mm", "Measure it at a cut end.");
    String advice = "The corners alone take four walls: check height, width and wall.";
    Given.within("tube height", heightMm, 4.0 * wallMm, 1000, "mm", advice);
    Given.within("tube width", widthMm, 4.0 * wallMm, 1000, "mm", advice);
  }

  /**
   * The same tube with the wall that counts for a welded hollow section: published properties use
   * 0.93 of the nominal wall, published weights the whole of it. Source: AISC 360 B4.2.
   *
   * @return the section with 0.93 of the wall
   */
  public RectangularTubeSection withDesignWall() {
    return new RectangularTubeSection(
        heightMm, widthMm, RoundTubeSection.DESIGN_WALL_SHARE * wallMm);
  }

  @Override
  public double areaMm2() {
    double flats = 2.0 * (heightMm + widthMm - 8.0 * wallMm) * wallMm;
    return flats + 3.0 * Math.PI * wallMm * wallMm;
  }

  @Override
  public double secondMomentXMm4() {
    return secondMomentMm4(heightMm, widthMm);
  }

  @Override
  public double secondMomentYMm4() {
    return secondMomentMm4(widthMm, heightMm);
  }

  /** Outer rounded rectangle less inner rounded rectangle. */
  private double secondMomentMm4(double depthMm, double acrossMm) {
    return roundedMm4(depthMm, acrossMm, 2.0 * wallMm)
        - roundedMm4(depthMm - 2.0 * wallMm, acrossMm - 2.0 * wallMm, wallMm);
  }

  /**
   * Rectangle less, at each corner, what is left of a square when a quarter circle is taken out of
   * it. A quarter circle of radius r has second moment πr⁴/16 about its straight side and its
   * centroid 4r/3π from it.
   */
  private static double roundedMm4(double depthMm, double acrossMm, double radiusMm) {
    double whole = acrossMm * depthMm * depthMm * depthMm / 12.0;
    double reach = depthMm / 2.0 - radiusMm;
    double r2 = radiusMm * radiusMm;
    double square = r2 * r2 / 3.0 + r2 * radiusMm * reach + r2 * reach * reach;
    double quarterArea = Math.PI * r2 / 4.0;
    double quarterFirst = r2 * radiusMm / 3.0;
    double quarter =
        Math.PI * r2 * r2 / 16.0 + 2.0 * reach * quarterFirst + quarterArea * reach * reach;
    return whole - 4.0 * (square - quarter);
  }

  @Override
  public double toTopMm() {
    return heightMm / 2.0;
  }

  @Override
  public double toBottomMm() {
    return heightMm / 2.0;
  }
}
