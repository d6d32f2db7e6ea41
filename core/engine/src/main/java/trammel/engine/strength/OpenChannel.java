package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * An open channel twisted, by its middle lines: web and both flanges of their own thicknesses.
 *
 * <p>A thin open section is soft in uniform torsion, J = Σ b t³/3, and stiffer where its ends
 * cannot warp freely or its torque acts at one place: then flanges bend against each other, E Cw.
 * Sources: Beer and Johnston, Mechanics of Materials, ex. 6.05 and 6.07 (shear centre); Megson,
 * Aircraft Structures, ex. 18.3 (torsion); twist with warping derived again, Vlasov's theory.
 *
 * @param heightMm between the middle lines of the flanges (mm), above 0
 * @param flangeMm from the web's middle line to a flange's tip (mm), above 0
 * @param webThickMm thickness of the web (mm), above 0
 * @param flangeThickMm thickness of a flange (mm), above 0
 */
public record OpenChannel(double heightMm, double flangeMm, double webThickMm, double flangeThickMm)
    implements TwistedSection {
  /** Young's modulus of steel, 29e6 psi: AISC 360 (MPa). */
  public static final double YOUNG_MPA = 199_948;

  /** Shear modulus of steel, 11.2e6 psi: AISC 360 (MPa). */
  public static final double SHEAR_MPA = 77_221;

  public OpenChannel {
    Given.positive("height of the channel between its flanges (mm)", heightMm);
    Given.positive("width of a flange (mm)", flangeMm);
    Given.positive("thickness of the web (mm)", webThickMm);
    Given.positive("thickness of a flange (mm)", flangeThickMm);
  }

  /** The middle lines of a channel of square corners. */
  public static OpenChannel of(ChannelSection channel) {
    return new OpenChannel(
        channel.depthMm() - channel.flangeMm(),
        channel.flangeWidthMm() - channel.webMm() / 2,
        channel.webMm(),
        channel.flangeMm());
  }

  /**
   * Shear centre, outside the web's middle line: b² h² t/(4 I), 3 b²/(6 b + h) of even plate (mm).
   */
  public double shearCentreMm() {
    double flanges = flangeMm * flangeThickMm * heightMm * heightMm / 2;
    double second = flanges + webThickMm * Math.pow(heightMm, 3) / 12;
    return flangeMm * flangeMm * heightMm * heightMm * flangeThickMm / (4 * second);
  }

  /** Torsion constant, Σ b t³/3 (mm⁴). */
  public double torsionMm4() {
    return (heightMm * Math.pow(webThickMm, 3) + 2 * flangeMm * Math.pow(flangeThickMm, 3)) / 3;
  }

  /** Warping constant about the shear centre, ∫ ω² dA (mm⁶). */
  public double warpingMm6() {
    double e = shearCentreMm();
    double web = webThickMm * Math.pow(heightMm, 3) * e * e / 12;
    double outer = Math.pow(flangeMm - e, 3) + Math.pow(e, 3);
    return web + 2 * flangeThickMm * heightMm * heightMm / 4 * outer / 3;
  }

  /** Greatest shear of uniform torsion, T t/J (MPa). */
  public double uniformShearMPa(double torqueNmm) {
    return torqueNmm * Math.max(webThickMm, flangeThickMm) / torsionMm4();
  }

  /** Length over which warping dies away, √(E Cw/(G J)) (mm). */
  public double decayMm() {
    return Math.sqrt(YOUNG_MPA * warpingMm6() / (SHEAR_MPA * torsionMm4()));
  }

  /**
   * Twist under a torque at the middle of a bay whose ends cannot turn.
   *
   * @param torqueNmm the torque (Nmm)
   * @param bayMm length of the bay (mm), above 0
   * @param held true for ends that cannot warp either, such as a closed box or a deep crossmember
   * @return twist at the middle (rad)
   */
  public double twistRad(double torqueNmm, double bayMm, boolean held) {
    return twistRad(torqueNmm, bayMm, held, torsionMm4(), warpingMm6());
  }

  /** The same for a section whose constants are known from a table. */
  static double twistRad(
      double torqueNmm, double bayMm, boolean held, double torsionMm4, double warpingMm6) {
    Given.positive("length of the bay (mm)", bayMm);
    double decay = Math.sqrt(YOUNG_MPA * warpingMm6 / (SHEAR_MPA * torsionMm4));
    double reach = held ? 4 * decay : 2 * decay;
    double left = bayMm - reach * Math.tanh(bayMm / reach);
    return torqueNmm * left / (4 * SHEAR_MPA * torsionMm4);
  }

  /** Twist of uniform torsion alone, T L/(4 G J) (rad). */
  public double uniformTwistRad(double torqueNmm, double bayMm) {
    return torqueNmm * bayMm / (4 * SHEAR_MPA * torsionMm4());
  }

  /**
   * Greatest stress along the rail by the warping of a torque at the middle of a bay, at the tips
   * of the flanges: E ω θ″, ends free to warp (MPa).
   */
  public double warpingStressMPa(double torqueNmm, double bayMm) {
    return heldEndMPa(torqueNmm / 2, bayMm / 2);
  }

  /** Stress along the rail at an end that cannot warp, so far from where warping is free. */
  private double heldEndMPa(double torqueNmm, double freeMm) {
    double e = shearCentreMm();
    double area = heightMm / 2 * Math.max(flangeMm - e, e);
    double decay = decayMm();
    double curvature = torqueNmm * Math.tanh(freeMm / decay) / (SHEAR_MPA * torsionMm4() * decay);
    return YOUNG_MPA * area * curvature;
  }

  /**
   * {@inheritDoc}
   *
   * <p>T (l − a tanh(l/a))/(G J) with one end free to warp; the middle of a stretch that is held at
   * both ends is free to, so that it is two such halves.
   */
  @Override
  public double turnPerNmm(double lengthMm, boolean bothHeld) {
    Given.positive("length of the twisted stretch (mm)", lengthMm);
    double reach = (bothHeld ? 2 : 1) * decayMm();
    return (lengthMm - reach * Math.tanh(lengthMm / reach)) / (SHEAR_MPA * torsionMm4());
  }

  /**
   * {@inheritDoc}
   *
   * <p>The greater of what warping does at a held end and of the shear where warping is free, which
   * never meet: each is none where the other is greatest.
   */
  @Override
  public double stressMPa(double torqueNmm, double lengthMm, boolean bothHeld) {
    double freeMm = bothHeld ? lengthMm / 2 : lengthMm;
    double torque = Math.abs(torqueNmm);
    double shear = uniformShearMPa(torque) * (1 - 1 / Math.cosh(freeMm / decayMm()));
    return Math.max(heldEndMPa(torque, freeMm), Math.sqrt(3) * shear);
  }

  @Override
  public double shearCentreOutMm() {
    return shearCentreMm() - webThickMm / 2;
  }

  /** Torsion constant of the same channel closed by a plate on its tips, 4 A² /Σ(s/t) (mm⁴). */
  public double closedTorsionMm4(double plateMm) {
    Given.positive("thickness of the closing plate (mm)", plateMm);
    double wideMm = flangeMm + plateMm / 2;
    double around = heightMm / webThickMm + heightMm / plateMm + 2 * wideMm / flangeThickMm;
    double enclosed = heightMm * wideMm;
    return 4 * enclosed * enclosed / around;
  }
}
