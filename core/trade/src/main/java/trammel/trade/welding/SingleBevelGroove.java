package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * One bevelled edge against a square one.
 *
 * @param thicknessMm thickness, mm, up to 100
 * @param rootGapMm gap at the root, mm, up to 20
 * @param landMm square part of the bevelled edge at the root, mm
 * @param bevelRad angle of the bevel from square, rad, under 90°
 * @param capHeightMm height of the cap over the face of the groove, mm
 */
public record SingleBevelGroove(
    double thicknessMm, double rootGapMm, double landMm, double bevelRad, double capHeightMm)
    implements BeadJoint {

  public SingleBevelGroove {
    Groove.checkedEdge(thicknessMm, rootGapMm);
    Groove.checkedPreparation(thicknessMm, landMm, bevelRad);
    Given.positive(
        "bevel of a groove weld in rad", bevelRad, Math.toRadians(80), "", "Common is 30° to 45°.");
    Given.within("height of a weld cap", capHeightMm, 0, 10, "mm", "Give 0 when ground flush.");
  }

  /** Width of the groove at the face of the plate, mm. */
  public double faceWidthMm() {
    return rootGapMm + (thicknessMm - landMm) * Math.tan(bevelRad);
  }

  @Override
  public double areaMm2() {
    double depthMm = thicknessMm - landMm;
    return thicknessMm * rootGapMm
        + depthMm * depthMm * Math.tan(bevelRad) / 2
        + faceWidthMm() * capHeightMm * 2 / 3;
  }

  @Override
  public String title() {
    return "single bevel groove";
  }

  @Override
  public double sizeMm() {
    return thicknessMm;
  }
}
