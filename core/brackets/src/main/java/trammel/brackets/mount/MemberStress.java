package trammel.brackets.mount;

import trammel.engine.strength.RectangularTubeSection;
import trammel.trade.steel.RectangularTube;

/**
 * Stresses of beams and plates for a force of one newton: elementary bending, Bredt's formula for
 * the torsion of a closed tube, and von Mises for both together.
 */
public final class MemberStress {
  private MemberStress() {}

  /** Bending of an upright plate, a moment over t d²/6 (MPa for N mm). */
  public static double plate(double momentNmm, double thicknessMm, double deepMm) {
    return momentNmm * 6 / (thicknessMm * deepMm * deepMm);
  }

  /**
   * Two upright plates welded under or over a level one, bent together: the stress at the edges of
   * the upright plates that are far from it.
   *
   * @param momentNmm the moment on both
   * @param thicknessMm thickness of all three plates (mm)
   * @param deepMm depth of the upright plates (mm)
   * @param wideMm width of the level plate (mm)
   */
  public static double pairUnderPlate(
      double momentNmm, double thicknessMm, double deepMm, double wideMm) {
    double webs = 2 * thicknessMm * deepMm;
    double flange = wideMm * thicknessMm;
    double flangeAt = deepMm + thicknessMm / 2;
    double middle = (webs * deepMm / 2 + flange * flangeAt) / (webs + flange);
    double second =
        webs * deepMm * deepMm / 12
            + webs * (middle - deepMm / 2) * (middle - deepMm / 2)
            + flange * thicknessMm * thicknessMm / 12
            + flange * (flangeAt - middle) * (flangeAt - middle);
    return momentNmm * middle / second;
  }

  /**
   * A rectangular tube bent and twisted, its wall counted at 0.93 as welded sections are (AISC 360
   * B4.2).
   *
   * @param uprightNmm moment that bends it in the upright plane
   * @param levelNmm moment that bends it in the level plane
   * @param torqueNmm moment that twists it
   * @param alongN force along it
   */
  public static double tube(
      RectangularTube tube, double uprightNmm, double levelNmm, double torqueNmm, double alongN) {
    RectangularTubeSection section =
        new RectangularTubeSection(tube.heightMm(), tube.widthMm(), tube.wallMm()).withDesignWall();
    double bending =
        Math.abs(uprightNmm) / section.modulusTopMm3()
            + Math.abs(levelNmm) / (section.secondMomentYMm4() / (section.widthMm() / 2))
            + Math.abs(alongN) / section.areaMm2();
    double enclosedMm2 =
        (section.heightMm() - section.wallMm()) * (section.widthMm() - section.wallMm());
    double shear = Math.abs(torqueNmm) / (2 * enclosedMm2 * section.wallMm());
    return Math.sqrt(bending * bending + 3 * shear * shear);
  }
}
