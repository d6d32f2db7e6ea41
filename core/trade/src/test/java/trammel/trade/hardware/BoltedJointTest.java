package trammel.trade.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class BoltedJointTest {
  private static final double INCH = 25.4;
  private static final ScrewThread THREAD = ScrewThread.of("5/8-18");

  /** Quarter inches from 2 to 5, out of order as bins are. */
  private static StockedLengths bin() {
    return new StockedLengths(
        List.of(
            5.0 * INCH, 2.0 * INCH, 2.5 * INCH, 3.0 * INCH, 3.5 * INCH, 4.0 * INCH, 4.5 * INCH));
  }

  @Test
  void boltIsTheGripWithWashersNutAndTwoThreadsRoundedUp() {
    // Two 1/4 plates and a 2 in sleeve, two .095 washers, nut .547: 3.237 + 2/18 = 3.348 in.
    BoltedJoint joint = new BoltedJoint(THREAD, 2.5 * INCH, 2, 0.095 * INCH, 0.547 * INCH);
    assertEquals(3.348, joint.neededLengthMm() / INCH, 5e-4);
    BoltChoice choice = joint.choose(bin());
    assertEquals(3.5, choice.lengthMm() / INCH, 1e-9);
    assertEquals(3.5 - 3.237, choice.beyondNutMm() / INCH, 1e-9);
  }

  @Test
  void boltThatJustReachesIsTaken() {
    double nut = 0.5 * INCH;
    double grip = 3.0 * INCH - nut - 2.0 * INCH / 18.0;
    BoltedJoint joint = new BoltedJoint(THREAD, grip, 0, 0.0, nut);
    assertEquals(3.0, joint.choose(bin()).lengthMm() / INCH, 1e-9);
    assertEquals(2.0, joint.choose(bin()).threadsShowing(), 1e-6);
  }

  @Seeds(200)
  void chosenBoltIsLongEnoughAndTheNextShorterIsNot(Draw draw) {
    double gripMm = draw.between(20.0, 100.0);
    double nutMm = draw.between(5.0, 16.0);
    BoltedJoint joint = new BoltedJoint(THREAD, gripMm, 2, 2.4, nutMm);
    double needed = gripMm + 4.8 + nutMm + 2.0 * INCH / 18.0;
    double chosen = joint.choose(bin()).lengthMm();
    assertTrue(chosen >= needed - 1e-6);
    for (double length : bin().lengthsMm()) {
      assertTrue(length >= chosen || length < needed);
    }
  }

  @Test
  void gripBeyondTheLongestStockedBoltIsRefused() {
    BoltedJoint joint = new BoltedJoint(THREAD, 5.0 * INCH, 2, 2.4, 14.0);
    String message =
        assertThrows(IllegalArgumentException.class, () -> joint.choose(bin())).getMessage();
    assertTrue(message.contains("127 mm (5 in)"), message);
    assertTrue(message.contains("Order a longer bolt"), message);
  }

  @Test
  void emptyBinIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new StockedLengths(List.of()));
  }
}
