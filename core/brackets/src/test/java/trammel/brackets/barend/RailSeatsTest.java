package trammel.brackets.barend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.brackets.SampleBasis;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.JointSeat;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Joint;

/** Brackets of one rail keep 1/4 in, 6.35 mm, between each other for their welds. */
class RailSeatsTest {
  private static final Joint JOINT = new Joint("joint", 12_000, 0.1, 12.7, 50.8, 25.4, 35_000);

  private static RailSeat seat(String bar, double forwardMm, double leftMm, double baseMm) {
    Point3 joint = new Point3(forwardMm, leftMm, 380);
    return new RailSeat(bar, joint, new JointSeat(JOINT, 6.35), true, 450, 100, baseMm);
  }

  @Test
  void theLongerBaseGivesWay() {
    List<RailSeat> apart =
        RailSeats.apart(
            List.of(seat("lower-left", 600, 350, 160), seat("upper-left", 480, 350, 100)));

    // Half a base each side of 120 mm less 6.35 mm: 2 x 113.65 - 100.
    assertEquals(127.3, apart.get(0).baseLengthMm(), 1e-9);
    assertEquals(100, apart.get(1).baseLengthMm(), 1e-9);
  }

  @Test
  void basesWithRoomBetweenThemStayAsTheyAre() {
    // (160 + 100) / 2 + 6.35 = 136.35.
    List<RailSeat> seats =
        List.of(seat("lower-left", 636.35, 350, 160), seat("upper-left", 500, 350, 100));

    assertEquals(seats, RailSeats.apart(seats));
  }

  @Test
  void bracketsOfTheOtherRailAreNotInTheWay() {
    List<RailSeat> seats =
        List.of(seat("lower-left", 600, 350, 160), seat("upper-right", 600, -350, 100));

    assertEquals(seats, RailSeats.apart(seats));
  }

  @Test
  void jointsTooCloseForAnyBaseAreRefusedWithWhatIsMissing() {
    String message =
        assertThrows(
                UnworkableLayoutException.class,
                () ->
                    RailSeats.apart(
                        List.of(
                            seat("lower-left", 530, 350, 160), seat("upper-left", 480, 350, 100))))
            .reason()
            .in(SampleBasis.PRINT);

    assertTrue(message.contains("lower-left and upper-left are 50"), message);
    assertTrue(message.contains("longer or shorter by"), message);
  }
}
