package trammel.engine.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.strength.TwistedRails.Borne;
import trammel.engine.strength.TwistedRails.Push;
import trammel.engine.strength.TwistedRails.Stretch;
import trammel.engine.strength.TwistedRails.Torque;

/** Rails twisted between crossmembers, against handbooks of beams and hand calculations. */
class TwistedRailsTest {
  private static final double INCH = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double INCH_POUND = POUND_N * INCH;
  private static final double PSI = 6.894757293168e-3;

  /** 6 x 2 1/4 x 0.15: between middle lines 5.85 and 2.175 in. */
  private static final OpenChannel CHANNEL =
      new OpenChannel(5.85 * INCH, 2.175 * INCH, 0.15 * INCH, 0.15 * INCH);

  private static TwistedRails rails(
      TwistedSection section, double endMm, List<Stretch> stretches, List<RailTie> ties) {
    return new TwistedRails(section, 2.25 * INCH, -endMm, endMm, stretches, ties);
  }

  /** One torque at the middle of a bay: the handbook's bay with ends free to warp, both ways. */
  @Test
  void aStationInTheMiddleOfABayIsTheHandbooksBay() {
    double torqueNmm = 1_000 * INCH_POUND;
    TwistedRails rails = rails(CHANNEL, 15 * INCH, List.of(Stretch.at(true, 0)), List.of());

    Borne borne = rails.under(List.of(new Torque(true, 0, torqueNmm)), List.of());

    assertEquals(CHANNEL.twistRad(torqueNmm, 30 * INCH, false), borne.turnRad(), 1e-9);
    assertEquals(torqueNmm / 2, borne.spanNmm()[0], 1e-6 * torqueNmm);
    double stress = CHANNEL.warpingStressMPa(torqueNmm, 30 * INCH);
    assertEquals(stress, borne.spanMPa()[0], 1e-6 * stress);
    assertEquals(2, borne.spanMPa().length, "the other rail carries nothing");
  }

  /**
   * 12,000 lb in at the middle of 17 in that are closed, 13.5 in open on either side: e 0.751, Cw
   * 4.244 in6, J 0.011475 in4, a 30.93 in; half of it over 13.5 in with one end free turns 6,000 x
   * (13.5 - 30.93 tanh 0.4365)/(11.2e6 x 0.011475) and bends the tips by 29e6 x 4.165 x 6,000 x
   * tanh 0.4365/(128,520 x 30.93) psi.
   */
  @Test
  void onlyWhatIsOpenIsTwisted() {
    double torqueNmm = 12_000 * INCH_POUND;
    TwistedRails rails =
        rails(
            CHANNEL,
            22 * INCH,
            List.of(new Stretch(true, -8.5 * INCH, 4 * INCH), new Stretch(true, 0, 8.5 * INCH)),
            List.of());

    Borne borne = rails.under(List.of(new Torque(true, 2 * INCH, torqueNmm)), List.of());

    assertEquals(6_000 * (13.5 - 30.93 * Math.tanh(0.4365)) / 128_520, borne.turnRad(), 0.0006);
    double psi = 29e6 * 4.165 * 6_000 * Math.tanh(0.4365) / (128_520 * 30.93);
    assertEquals(psi, borne.spanMPa()[0] / PSI, 0.01 * psi);
  }

  /** A short open gap is two flanges that bend as beams held at both ends: 12 E Cw/l³. */
  @Test
  void aShortGapBetweenClosedPiecesIsStiffByItsFlanges() {
    double lengthMm = 100;
    double stiff = 12 * OpenChannel.YOUNG_MPA * CHANNEL.warpingMm6() / Math.pow(lengthMm, 3);
    assertEquals(1 / stiff, CHANNEL.turnPerNmm(lengthMm, true), 0.01 / stiff);
    assertEquals(4, CHANNEL.turnPerNmm(lengthMm, false) / CHANNEL.turnPerNmm(lengthMm, true), 0.05);
  }

  /** Boresi ex. 9 (whole tube by 2 A t): a box 10 in from a torque that is 20 in from its end. */
  @Test
  void aBoxTakesTwistByBredt() {
    ClosedBox box = new ClosedBox(5.8125 * INCH, 2.3125 * INCH, 0.1875 * INCH);
    double torqueNmm = 7_200 * INCH_POUND;
    // J = 4 (5.8125 x 2.3125)² x 0.1875/(2 x 8.125) = 8.339 in4.
    assertEquals(8.339, box.torsionMm4() / Math.pow(INCH, 4), 0.001);
    TwistedRails rails = rails(box, 15 * INCH, List.of(Stretch.at(false, 5 * INCH)), List.of());

    Borne borne = rails.under(List.of(new Torque(false, 5 * INCH, torqueNmm)), List.of());

    // T a b/(L G J), a 20, b 10, L 30; a third goes the long way.
    double rad = 7_200 * 20 * 10 / (30 * 11.2e6 * 8.339);
    assertEquals(rad, borne.turnRad(), 0.001 * rad);
    assertEquals(torqueNmm / 3, borne.spanNmm()[0], 1e-6 * torqueNmm);
    // 4,800/(2 x 13.441 x 0.1875) psi of shear.
    double psi = Math.sqrt(3) * 4_800 / (2 * 5.8125 * 2.3125 * 0.1875);
    assertEquals(psi, borne.spanMPa()[1] / PSI, 0.001 * psi);
  }

  private static RailTie tie(double legRadPerNmm) {
    return new RailTie(0, 36 * INCH, 29e6 * PSI * 1.77 * Math.pow(INCH, 4), legRadPerNmm);
  }

  /**
   * Two loads of 1,500 lb, each 8 in from its end of 36 in, I 1.77 in4: with ends that hold 9,333
   * lb in there and 2,667 in the middle, handbooks of beams; 2 I of rail keep the ends from
   * turning.
   */
  @Test
  void railsThatDoNotTurnHoldTheEndsOfACrossmember() {
    ClosedBox stiff = new ClosedBox(1000 * INCH, 1000 * INCH, 10 * INCH);
    TwistedRails rails = rails(stiff, INCH, List.of(), List.of(tie(0)));

    Borne borne =
        rails.under(
            List.of(),
            List.of(
                new Push(0, 8 * INCH, 1_500 * POUND_N), new Push(0, 28 * INCH, 1_500 * POUND_N)));

    assertEquals(9_333.3, borne.tieEndNmm()[0] / INCH_POUND, 1);
    assertEquals(9_333.3, borne.tieMostNmm()[0] / INCH_POUND, 1);
  }

  /**
   * The same on rails that hardly hold it: 12,000 lb in in the middle as on pinned ends, and what
   * the ends' 1,500 lb put in by their distance from the shear centre besides, for it is the
   * crossmember that keeps a soft rail upright.
   */
  @Test
  void aCrossmemberKeepsSoftRailsUpright() {
    OpenChannel soft = new OpenChannel(5.85 * INCH, 2.175 * INCH, 0.01 * INCH, 0.01 * INCH);
    TwistedRails rails = rails(soft, 2_000 * INCH, List.of(), List.of(tie(0)));

    Borne borne =
        rails.under(
            List.of(),
            List.of(
                new Push(0, 8 * INCH, 1_500 * POUND_N), new Push(0, 28 * INCH, 1_500 * POUND_N)));

    double armInches = 2.25 + soft.shearCentreOutMm() / INCH;
    assertEquals(1_500 * armInches, borne.tieEndNmm()[0] / INCH_POUND, 40);
    assertEquals(12_000 + 1_500 * armInches, borne.tieMostNmm()[0] / INCH_POUND, 40);
  }

  /** Legs give: a beam of 2 E I/L on legs that turn by 1/k each holds as two springs in a row. */
  @Test
  void legsMakeATieSofter() {
    RailTie bare = tie(0);
    double give = 3 / bare.leaningNmm();
    assertEquals(bare.leaningNmm() / 4, tie(give).leaningNmm(), 1e-6 * bare.leaningNmm());
    assertEquals(3 * bare.leaningNmm(), bare.swayingNmm(), 1e-6 * bare.swayingNmm());
    assertTrue(tie(give).swayingNmm() < bare.leaningNmm());
  }

  /**
   * Handbooks of beams: ends that lean towards each other take 2 E I/L for each radian, ends that
   * lean the same way 6 E I/L, so that the same moments turn them a third as far.
   */
  @Test
  void oppositeTwistsSwayTheCrossmember() {
    OpenChannel soft = new OpenChannel(5.85 * INCH, 2.175 * INCH, 0.01 * INCH, 0.01 * INCH);
    TwistedRails rails = rails(soft, 2_000 * INCH, List.of(), List.of(tie(0)));
    double torqueNmm = 1_000 * INCH_POUND;

    Borne leaning =
        rails.under(
            List.of(new Torque(true, 0, torqueNmm), new Torque(false, 0, torqueNmm)), List.of());
    Borne swaying =
        rails.under(
            List.of(new Torque(true, 0, torqueNmm), new Torque(false, 0, -torqueNmm)), List.of());

    double byHand = torqueNmm * 36 * INCH / (2 * tie(0).bendingNmm2());
    assertEquals(byHand, leaning.turnRad(), 0.01 * byHand);
    assertEquals(byHand / 3, swaying.turnRad(), 0.01 * byHand);
  }

  /** The mirror image of a load turns the mirror image as far. */
  @Test
  void rightMirrorsLeft() {
    List<Stretch> stretches =
        List.of(new Stretch(true, 0, 200), new Stretch(true, 300, 400), new Stretch(false, 0, 200));
    List<Stretch> mirrored =
        List.of(
            new Stretch(false, 0, 200), new Stretch(false, 300, 400), new Stretch(true, 0, 200));
    RailTie tie = new RailTie(100, 800, 5e10, 1e-9);
    Borne one =
        rails(CHANNEL, 600, stretches, List.of(tie))
            .under(List.of(new Torque(true, 350, 1e6)), List.of(new Push(0, 100, 3000)));
    Borne other =
        rails(CHANNEL, 600, mirrored, List.of(tie))
            .under(List.of(new Torque(false, 350, 1e6)), List.of(new Push(0, 700, 3000)));

    assertEquals(one.turnRad(), other.turnRad(), 1e-12);
    assertEquals(one.tieMostNmm()[0], other.tieMostNmm()[0], 1e-6);
  }

  /** Where a closed piece reaches a crossmember, the rail is held there and nothing is twisted. */
  @Test
  void whatIsClosedUpToACrossmemberIsHeld() {
    TwistedRails rails = rails(CHANNEL, 300, List.of(new Stretch(true, -100, 400)), List.of());
    Borne borne = rails.under(List.of(new Torque(true, 0, 1e6)), List.of());
    assertEquals(0, borne.turnRad());
    assertEquals(0, borne.spanMPa()[0]);
  }
}
