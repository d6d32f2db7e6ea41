package trammel.brackets.rail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.brackets.SampleBasis;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;

/**
 * Rails of 150 x 4 mm, straight and level: a plate that closes one is as high as the clear inside,
 * 142 mm, less a gap of 1.5875 mm for the weld at each flange, 138.825 mm. Plates go on 50.8 mm
 * beyond the brackets that they stand behind.
 */
class RailBoxingTest {
  private static final double HEIGHT_MM = 138.825;
  private static final Footprint REAR = new Footprint(true, 400, 500, "lower-left bracket");
  private static final Footprint FRONT = new Footprint(true, 700, 800, "upper-left bracket");
  private static final Footprint RIGHT = new Footprint(false, 400, 500, "lower-right bracket");

  private static WorkPlan closed(RailBoxing boxing) {
    return RailClosings.closed(boxing.plan(), SampleBasis.rails(false), Optional.empty());
  }

  private static double lengthMm(PlateNeed plate) {
    return plate.plate().outline().areaMm2() / HEIGHT_MM;
  }

  @Test
  void oneLongPlateASideEndsBeyondTheOutermostBrackets() {
    WorkPlan plan =
        closed(RailBoxing.along(List.of(REAR, FRONT, RIGHT), List.of(), SampleBasis.of(false)));

    // Left 800 - 400 + 2 x 50.8, right 500 - 400 + 2 x 50.8.
    assertEquals(2, plan.plates().size());
    assertEquals(501.6, lengthMm(plan.plates().get(0)), 1e-6);
    assertEquals(201.6, lengthMm(plan.plates().get(1)), 1e-6);
    OperationNeed boxing = plan.operations().get(0);
    assertEquals("box-rail", boxing.operationKey());
    // 703.2 mm at 304.8 mm a foot.
    assertEquals(703.2 / 304.8, boxing.quantity(), 1e-9);
    // Upper and lower edge of each plate.
    double weldsMm = plan.welds().stream().mapToDouble(weld -> weld.totalLengthMm()).sum();
    assertEquals(2 * 703.2, weldsMm, 1e-6);
  }

  @Test
  void shortPlatesThatWouldMeetAreOne() {
    Footprint near = new Footprint(true, 550, 600, "shackle bracket");
    RailBoxing boxing = RailBoxing.local(List.of(REAR, near), SampleBasis.of(false));

    assertEquals(1, closed(boxing).plates().size());
    // 600 - 400 + 2 x 50.8.
    assertEquals(301.6, lengthMm(closed(boxing).plates().get(0)), 1e-6);
    assertEquals(boxing.behind(REAR), boxing.behind(near));
  }

  @Test
  void shortPlatesFarApartStayApart() {
    Footprint far = new Footprint(true, 800, 900, "upper-left bracket");
    RailBoxing boxing = RailBoxing.local(List.of(REAR, far), SampleBasis.of(false));

    // 800 - 500 leaves 198.4 mm between two plates, more than the 150 mm that the rail is deep.
    List<PlateNeed> plates = closed(boxing).plates();
    assertEquals(2, plates.size());
    assertEquals(201.6, lengthMm(plates.get(0)), 1e-6);
    assertEquals(201.6, lengthMm(plates.get(1)), 1e-6);
    assertTrue(boxing.behind(far).contains("upper-left bracket"), boxing.behind(far));
  }

  @Test
  void theLongPlateReachesOthersThatAreNearAndLeavesThoseFarAway() {
    // The long plate ends at 349.2; from there to the near bracket is less than two leads of 50.8.
    Footprint near = new Footprint(true, 250, 270, "near bracket");
    Footprint far = new Footprint(true, -160, -100, "far bracket");
    RailBoxing boxing = RailBoxing.along(List.of(REAR), List.of(near, far), SampleBasis.of(false));

    List<PlateNeed> plates = closed(boxing).plates();
    // 500 - 250 + 2 x 50.8, then -100 + 160 + 2 x 50.8.
    assertEquals(351.6, lengthMm(plates.get(0)), 1e-6);
    assertEquals(161.6, lengthMm(plates.get(1)), 1e-6);
    assertEquals(boxing.behind(REAR), boxing.behind(near));
    assertTrue(boxing.behind(far).contains("far bracket"), boxing.behind(far));
  }

  @Test
  void aBoxedRailIsWeldedToAsItIs() {
    RailBoxing boxing =
        RailBoxing.along(List.of(REAR, FRONT), List.of(RIGHT), SampleBasis.of(true));

    assertEquals(WorkPlan.NONE, boxing.plan());
    assertEquals("left rail", boxing.behind(REAR));
    assertEquals("right rail", boxing.behind(RIGHT));
  }
}
