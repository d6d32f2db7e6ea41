package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Angle iron as two rectangles, the fillet between its legs left out. Source: parallel axis
 * theorem; principal axes by Mohr's circle.
 *
 * @param longerMm the longer leg (mm), stood upright
 * @param shorterMm the shorter leg (mm), level
 * @param thicknessMm thickness of both (mm), under half the shorter leg
 */
public record AngleSection(double longerMm, double shorterMm, double thicknessMm) {
  public AngleSection {
    Given.within("longer leg", longerMm, 1, 1000, "mm", "Measure it over the other leg.");
    Given.within("shorter leg", shorterMm, 1, longerMm, "mm", "Give the longer leg as leg.");
    Given.within(
        "thickness of the angle", thicknessMm, 0.1, 0.5 * shorterMm, "mm", "Measure one leg.");
  }

  private double uprightMm2() {
    return longerMm * thicknessMm;
  }

  private double levelMm2() {
    return (shorterMm - thicknessMm) * thicknessMm;
  }

  /** Area, t (a + b - t) (mm²). */
  public double areaMm2() {
    return uprightMm2() + levelMm2();
  }

  /** Centroid above the outer face of the shorter leg (mm). */
  public double centroidMm() {
    return (uprightMm2() * longerMm / 2 + levelMm2() * thicknessMm / 2) / areaMm2();
  }

  private double sidewaysMm() {
    double levelAt = thicknessMm + (shorterMm - thicknessMm) / 2;
    return (uprightMm2() * thicknessMm / 2 + levelMm2() * levelAt) / areaMm2();
  }

  /** Second moment about the level axis through the centroid (mm⁴). */
  public double secondMomentMm4() {
    double up = longerMm / 2 - centroidMm();
    double down = centroidMm() - thicknessMm / 2;
    return uprightMm2() * (longerMm * longerMm / 12 + up * up)
        + levelMm2() * (thicknessMm * thicknessMm / 12 + down * down);
  }

  private double sidewaysMm4() {
    double near = sidewaysMm() - thicknessMm / 2;
    double reach = shorterMm - thicknessMm;
    double far = thicknessMm + reach / 2 - sidewaysMm();
    return uprightMm2() * (thicknessMm * thicknessMm / 12 + near * near)
        + levelMm2() * (reach * reach / 12 + far * far);
  }

  private double productMm4() {
    double reach = shorterMm - thicknessMm;
    return uprightMm2() * (longerMm / 2 - centroidMm()) * (thicknessMm / 2 - sidewaysMm())
        + levelMm2() * (thicknessMm / 2 - centroidMm()) * (thicknessMm + reach / 2 - sidewaysMm());
  }

  /** Section modulus to the tip of the longer leg (mm³). */
  public double modulusMm3() {
    return secondMomentMm4() / (longerMm - centroidMm());
  }

  /** Radius of gyration about the weaker principal axis (mm). */
  public double leastRadiusMm() {
    double mean = (secondMomentMm4() + sidewaysMm4()) / 2;
    double half = (secondMomentMm4() - sidewaysMm4()) / 2;
    return Math.sqrt((mean - Math.hypot(half, productMm4())) / areaMm2());
  }
}
