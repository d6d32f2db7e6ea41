package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A notch cut up into a rail from below on an arc, as it is made: a strip rolled to the arc lines
 * the cut from below; a plate on each side of the rail follows the cut, a half ring that reaches
 * the top of the rail in the middle and runs into flats beyond the cut. Plates that rise above the
 * rail are joined over it by a second strip of their own thickness, rolled to their upper edge. It
 * is symmetric about its middle.
 *
 * @param railDepthMm depth of the rail, mm, above 0
 * @param cutDepthMm depth of the cut at its middle, mm, above 0, under the depth of the rail
 * @param radiusMm radius of the cut, mm, at least its depth
 * @param stripMm thickness of the strip, mm, 0 for none
 * @param stripWidthMm width of the strip across the rail, mm, above 0
 * @param sidePlateMm thickness of each side plate, mm, 0 for none
 * @param riseMm how far the side plates rise above the rail in the middle, mm: 0, or more than
 *     their thickness and 1 in less than is cut, at most
 */
public record PlatedNotch(
    double railDepthMm,
    double cutDepthMm,
    double radiusMm,
    double stripMm,
    double stripWidthMm,
    double sidePlateMm,
    double riseMm) {
  private static final double INCH_MM = 25.4;

  /** Radius between ring and flat, 1 in: common practice, no source (mm). */
  private static final double ROOT_MM = INCH_MM;

  private static final double ROUNDING_MM = 1e-6;

  /** Flats run 2 in past the cut at least: common practice, no source (mm). */
  private static final double FLAT_MM = 2 * INCH_MM;

  /** And half an inch past the root: common practice, no source (mm). */
  private static final double PAST_ROOT_MM = INCH_MM / 2;

  /**
   * Checks the notch.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public PlatedNotch {
    Given.within("rail depth", railDepthMm, 1, 1000, "mm", "Measure over both flanges.");
    Given.within(
        "depth of the notch's cut",
        cutDepthMm,
        0.1,
        0.999 * railDepthMm,
        "mm",
        "Cut less, or step the frame instead.");
    Given.within(
        "radius of the notch",
        radiusMm,
        cutDepthMm * (1 - 1e-9),
        2000,
        "mm",
        "A deeper cut needs a larger radius.");
    Given.within("strip of the notch", stripMm, 0, 50, "mm", "Give 0 for none.");
    Given.within("width of the strip", stripWidthMm, 1, 1000, "mm", "Measure across the rail.");
    Given.within("side plate of the notch", sidePlateMm, 0, 50, "mm", "Give 0 for none.");
    Given.within(
        "rise of the notch's side plates",
        riseMm,
        0,
        Math.max(0, cutDepthMm - ROOT_MM) + ROUNDING_MM,
        "mm",
        "Plates that rise further are higher than the rail beside the cut too.");
    if (riseMm > 0 && riseMm <= sidePlateMm) {
      throw Given.refusal(
          "rise of the notch's side plates",
          Given.text(riseMm) + " mm",
          "0 or more than their " + Given.text(sidePlateMm) + " mm",
          "The strip that joins them over the rail needs room under it.");
    }
  }

  /** Half the length of the cut along the underside (mm). */
  public double halfOpeningMm() {
    return Math.sqrt(cutDepthMm * (2 * radiusMm - cutDepthMm));
  }

  /**
   * Width of the side plates' ring (mm): what is left of the rail over the middle, and what they
   * rise above it.
   */
  public double ringMm() {
    return railDepthMm - cutDepthMm + riseMm;
  }

  /** Radius between ring and flat (mm). */
  public double rootMm() {
    return ROOT_MM;
  }

  /** Length of each flat beyond the cut (mm). */
  public double flatMm() {
    return Math.max(FLAT_MM, rootAtMm() - halfOpeningMm() + PAST_ROOT_MM);
  }

  /** Distance of the ends of the side plates from the middle (mm). */
  public double endMm() {
    return halfOpeningMm() + flatMm();
  }

  /** Where the root's centre stands: its circle touches the flat and the outer arc. */
  private double rootAtMm() {
    double heightMm = ringMm() + ROOT_MM - centreUpMm();
    double reachMm = radiusMm + ringMm() + ROOT_MM;
    return Math.sqrt(Math.max(0, reachMm * reachMm - heightMm * heightMm));
  }

  private double centreUpMm() {
    return cutDepthMm - radiusMm;
  }

  /**
   * Depth of the cut at a distance from its middle.
   *
   * @param alongMm distance along the rail, mm, either way
   * @return depth, mm, 0 beside the cut
   */
  public double cutAtMm(double alongMm) {
    double along = Math.abs(alongMm);
    return along >= halfOpeningMm()
        ? 0
        : Math.max(0, centreUpMm() + Math.sqrt(radiusMm * radiusMm - along * along));
  }

  /**
   * Height of the side plates' upper edge over the rail's underside.
   *
   * @param alongMm distance from the middle along the rail, mm, either way
   * @return height, mm, 0 beyond their ends
   */
  public double sidePlateTopAtMm(double alongMm) {
    double along = Math.abs(alongMm);
    if (along > endMm()) {
      return 0;
    }
    double outerMm = radiusMm + ringMm();
    double rootMm = rootAtMm();
    if (along >= rootMm) {
      return ringMm();
    }
    double rootUpMm = ringMm() + ROOT_MM;
    double touchMm = outerMm * rootMm / Math.hypot(rootMm, rootUpMm - centreUpMm());
    return along <= touchMm
        ? centreUpMm() + Math.sqrt(outerMm * outerMm - along * along)
        : rootUpMm - Math.sqrt(ROOT_MM * ROOT_MM - (rootMm - along) * (rootMm - along));
  }

  /** Radius of the upper edge of side plates over the middle (mm). */
  double outerRadiusMm() {
    return radiusMm + ringMm();
  }

  /**
   * Height of the lower face of the strip that joins raised side plates over the rail.
   *
   * @param alongMm distance from the middle along the rail, mm, either way
   * @return height, mm; NaN where there is no such strip
   */
  double topStripAtMm(double alongMm) {
    double outerMm = outerRadiusMm();
    double along = Math.abs(alongMm);
    if (riseMm == 0 || along >= outerMm) {
      return Double.NaN;
    }
    double upperMm = centreUpMm() + Math.sqrt(outerMm * outerMm - along * along);
    double lowerMm = upperMm - sidePlateMm * outerMm / (upperMm - centreUpMm());
    return lowerMm >= railDepthMm ? lowerMm : Double.NaN;
  }

  /** Cosine of the slope of the cut at a distance from the middle; 1 in the middle. */
  double cosineAt(double alongMm) {
    return Math.sqrt(Math.max(0, radiusMm * radiusMm - alongMm * alongMm)) / radiusMm;
  }
}
