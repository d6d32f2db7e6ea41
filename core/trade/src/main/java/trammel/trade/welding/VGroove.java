package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Two bevelled edges that open a V.
 *
 * @param thicknessMm thickness, mm, up to 100
 * @param rootGapMm gap at the root, mm, up to 20
 * @param landMm square part of each edge at the root, mm
 * @param includedRad angle between the two faces, rad, up to 120°
 * @param capHeightMm height of the cap over the face of the groove, mm
 */
public record VGroove(
    double thicknessMm, double rootGapMm, double landMm, double includedRad, double capHeightMm)
    implements BeadJoint {

  public VGroove {
    Groove.checkedEdge(thicknessMm, rootGapMm);
    Groove.checkedPreparation(thicknessMm, landMm, includedRad);
    Given.within("height of a weld cap", capHeightMm, 0, 10, "mm", "Give 0 when ground flush.");
  }

  /** Width of the groove at the face of the plate, mm. */
  public double faceWidthMm() {
    return rootGapMm + 2 * (thicknessMm - landMm) * Math.tan(includedRad / 2);
  }

  @Override
  public double areaMm2() {
    double depthMm = thicknessMm - landMm;
    return thicknessMm * rootGapMm
        + depthMm * depthMm * Math.tan(includedRad / 2)
        + faceWidthMm() * capHeightMm * 2 / 3;
  }

  @Override
  public String title() {
    return "V groove";
  }

  @Override
  public double sizeMm() {
    return thicknessMm;
  }
}
