package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A closed rectangular rail of even wall, twisted: Bredt's formulas, J = 4 A² t/s and τ = T/(2 A t)
 * along the middle line. It hardly warps, so how its ends are held makes no difference. Source:
 * Bredt, as in Boresi and Schmidt, Advanced Mechanics of Materials, ch. 6.
 *
 * @param heightMm between the middle lines of top and bottom (mm), above 0
 * @param widthMm between the middle lines of the sides (mm), above 0
 * @param wallMm its wall (mm), above 0
 */
public record ClosedBox(double heightMm, double widthMm, double wallMm) implements TwistedSection {
  public ClosedBox {
    Given.positive("height of the box between its middle lines (mm)", heightMm);
    Given.positive("width of the box between its middle lines (mm)", widthMm);
    Given.positive("wall of the box (mm)", wallMm);
  }

  /** Torsion constant (mm⁴). */
  public double torsionMm4() {
    double enclosed = heightMm * widthMm;
    return 2 * enclosed * enclosed * wallMm / (heightMm + widthMm);
  }

  /** Shear along the middle line (MPa). */
  public double shearMPa(double torqueNmm) {
    return Math.abs(torqueNmm) / (2 * heightMm * widthMm * wallMm);
  }

  @Override
  public double turnPerNmm(double lengthMm, boolean bothHeld) {
    return lengthMm / (OpenChannel.SHEAR_MPA * torsionMm4());
  }

  @Override
  public double stressMPa(double torqueNmm, double lengthMm, boolean bothHeld) {
    return Math.sqrt(3) * shearMPa(torqueNmm);
  }

  @Override
  public double shearCentreOutMm() {
    return -(widthMm + wallMm) / 2;
  }
}
