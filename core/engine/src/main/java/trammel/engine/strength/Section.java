package trammel.engine.strength;

/**
 * A steel cross-section. X runs across, Y up; both second moments are about axes through the
 * centroid. Bending in the vertical plane is about X.
 */
public interface Section {
  /**
   * Area.
   *
   * @return area, mm²
   */
  double areaMm2();

  /**
   * Second moment of area about the horizontal axis X.
   *
   * @return second moment, mm⁴
   */
  double secondMomentXMm4();

  /**
   * Second moment of area about the vertical axis Y.
   *
   * @return second moment, mm⁴
   */
  double secondMomentYMm4();

  /**
   * Distance from the centroid to the top.
   *
   * @return distance, mm
   */
  double toTopMm();

  /**
   * Distance from the centroid to the bottom.
   *
   * @return distance, mm
   */
  double toBottomMm();

  /**
   * Section modulus at the top for bending in the vertical plane.
   *
   * @return section modulus, mm³
   */
  default double modulusTopMm3() {
    return secondMomentXMm4() / toTopMm();
  }

  /**
   * Section modulus at the bottom for bending in the vertical plane.
   *
   * @return section modulus, mm³
   */
  default double modulusBottomMm3() {
    return secondMomentXMm4() / toBottomMm();
  }

  /**
   * The smaller of the section moduli at top and bottom.
   *
   * @return section modulus, mm³
   */
  default double leastModulusMm3() {
    return Math.min(modulusTopMm3(), modulusBottomMm3());
  }

  /**
   * Smaller of the two second moments.
   *
   * @return second moment, mm⁴
   */
  default double leastSecondMomentMm4() {
    return Math.min(secondMomentXMm4(), secondMomentYMm4());
  }

  /**
   * Radius of gyration about X.
   *
   * @return radius, mm
   */
  default double radiusOfGyrationXMm() {
    return Math.sqrt(secondMomentXMm4() / areaMm2());
  }

  /**
   * Smaller of the two radii of gyration, the one a column buckles about.
   *
   * @return radius, mm
   */
  default double leastRadiusOfGyrationMm() {
    return Math.sqrt(leastSecondMomentMm4() / areaMm2());
  }

  /**
   * Mass of one metre.
   *
   * @return mass, kg/m
   */
  default double massKgPerM() {
    return areaMm2() * SteelMass.DENSITY_KG_PER_MM3 * 1000.0;
  }
}
