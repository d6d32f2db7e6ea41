package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Open channels in torsion against textbooks and hand calculations. */
class OpenChannelTest {
  private static final double INCH = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double KSI = 6.894757293168;
  private static final double INCH_POUND = POUND_N * INCH;

  /** AISC C4x5.4: d 4, b 1.58, web 0.184, flange 0.296 (from memory). */
  private static final OpenChannel C4 =
      OpenChannel.of(new ChannelSection(4 * INCH, 1.58 * INCH, 0.184 * INCH, 0.296 * INCH));

  /** Beer and Johnston ex. 6.05: b 4, h 6, t 0.15 in: 1.6 in outside the web. */
  @Test
  void theShearCentreLiesOutsideTheWeb() {
    OpenChannel channel = new OpenChannel(6 * INCH, 4 * INCH, 0.15 * INCH, 0.15 * INCH);

    assertEquals(1.6, channel.shearCentreMm() / INCH, 1e-9);
    // b2 h2 tf/(4 I) is 0.492 with the listed I of 3.85 in4 in place of 3.80 of the middle lines.
    assertEquals(0.492, C4.shearCentreMm() / INCH * 3.8006 / 3.85 - 0.092, 0.001 * 0.492);
    // AISC lists 0.501 outside the back of the web; fillets and taper make 3 %.
    assertEquals(0.501, C4.shearCentreMm() / INCH - 0.092, 0.03 * 0.501);
  }

  /**
   * Beer and Johnston ex. 6.07: 2.5 kip through the centroid, 1.143 in inside the web, twists by
   * 6.858 kip in: 65.8 ksi by torsion of a plate 14 in long, c1 t² a with c1 0.3311.
   */
  @Test
  void aLoadThroughTheCentroidTwistsTheChannel() {
    OpenChannel channel = new OpenChannel(6 * INCH, 4 * INCH, 0.15 * INCH, 0.15 * INCH);
    double torqueNmm = 2_500 * (channel.shearCentreMm() / INCH + 1.143) * INCH_POUND;

    assertEquals(6_858, torqueNmm / INCH_POUND, 1);
    // The book's coefficient for a long plate is 0.3311 in place of 1/3.
    double bookKsi = 65.8;
    assertEquals(bookKsi, channel.uniformShearMPa(torqueNmm) / KSI / 3 / 0.3311, 0.005 * bookKsi);
  }

  /** Megson ex. 18.3: web 50 x 2.5, flanges 25 x 1.5 mm, 10 N m: 316.7 mm4, 78.9 MPa. */
  @Test
  void thickPartsCarryTheTwistOfAnOpenSection() {
    OpenChannel channel = new OpenChannel(50, 25, 2.5, 1.5);

    assertEquals(316.67, channel.torsionMm4(), 0.01);
    assertEquals(78.9, channel.uniformShearMPa(10_000), 0.1);
    // Sum of b t3/3; AISC lists 0.0399 with its fillets.
    assertEquals(0.0399, C4.torsionMm4() / Math.pow(INCH, 4), 0.17 * 0.0399);
  }

  /** 6 x 2 1/2 x 3/16 closed by a plate of 3/16: Bredt, J 0.02335 against 9.53, 408 times. */
  @Test
  void aPlateOverTheTipsMakesItFourHundredTimesStiffer() {
    OpenChannel channel =
        OpenChannel.of(new ChannelSection(6 * INCH, 2.5 * INCH, 0.1875 * INCH, 0.1875 * INCH));

    assertEquals(0.023346, channel.torsionMm4() / Math.pow(INCH, 4), 0.001 * 0.023346);
    double closed = channel.closedTorsionMm4(0.1875 * INCH) / Math.pow(INCH, 4);
    assertEquals(9.5259, closed, 0.001 * 9.5259);
    // 1,200 lb 6 in out at the middle of 30 in: 11.83 degrees open.
    double twist = channel.uniformTwistRad(7_200 * INCH_POUND, 30 * INCH);
    assertEquals(11.83, Math.toDegrees(twist), 0.01);
  }

  /**
   * C4x5.4, 30 in, 1,000 in lb at the middle: with the listed Cw 0.921 and J 0.0399 the twist is
   * 0.9616 deg without warping, 0.4860 with ends free to warp, 0.2194 with ends held.
   */
  @Test
  void warpingMakesShortBaysTwoToFourTimesStiffer() {
    double inches6 = Math.pow(INCH, 6);
    assertEquals(0.921, C4.warpingMm6() / inches6, 0.06 * 0.921);
    double torqueNmm = 1_000 * INCH_POUND;
    double listedJ = 0.0399 * Math.pow(INCH, 4);
    double listedCw = 0.921 * inches6;
    double uniform = Math.toDegrees(C4.uniformTwistRad(torqueNmm, 30 * INCH));
    assertEquals(0.9616, uniform * C4.torsionMm4() / listedJ, 0.0005);
    for (boolean held : new boolean[] {false, true}) {
      double expected = held ? 0.2194 : 0.4860;
      double listed = OpenChannel.twistRad(torqueNmm, 30 * INCH, held, listedJ, listedCw);
      assertEquals(expected, Math.toDegrees(listed), 0.0005);
      double own = Math.toDegrees(C4.twistRad(torqueNmm, 30 * INCH, held));
      assertEquals(expected, own, 0.13 * expected, "without the fillets");
    }
  }

  /** Warping stress by statics: flanges bend as beams between the ends where torsion is slight. */
  @Test
  void inAShortBayTheFlangesBendAsBeams() {
    OpenChannel thin = new OpenChannel(150, 60, 0.5, 0.5);
    double torqueNmm = 1e5;
    double bayMm = 200;
    // Bimoment of a couple of flange beams: T L/4; stress is that times the sectorial area over Cw.
    double bimoment = torqueNmm * bayMm / 4;
    double e = thin.shearCentreMm();
    double area = 150.0 / 2 * (60 - e);
    double byHand = bimoment * area / thin.warpingMm6();

    assertEquals(byHand, thin.warpingStressMPa(torqueNmm, bayMm), 0.01 * byHand);
  }
}
