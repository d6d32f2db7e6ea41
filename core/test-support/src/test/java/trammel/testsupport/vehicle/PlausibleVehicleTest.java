package trammel.testsupport.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class PlausibleVehicleTest {

  @Seeds(1000)
  void theMeasurementsOfAVehicleAgreeWithEachOther(Draw draw) {
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    RearAxle axle = vehicle.axle();
    TyreAndWheel tyre = vehicle.tyre();
    RailPair rails = vehicle.rails();
    CornerWeights weights = vehicle.weights();
    double tyreInsideIn = axle.flangeToFlangeIn() / 2 - tyre.wheelOffsetIn() - tyre.widthIn() / 2;

    assertTrue(tyre.loadedRadiusIn() < tyre.freeRadiusIn(), "a loaded tyre is lower");
    assertTrue(tyreInsideIn > rails.outsideAtAxleIn() / 2 + 1, "the tyre passes the rail");
    assertTrue(axle.innerLimitIn() < axle.outerLimitIn(), "brackets have room on the axle");
    assertTrue(axle.outerLimitIn() < axle.flangeToFlangeIn() / 2, "pads inside the flanges");
    assertTrue(
        axle.housingRadiusIn().orElse(6) > axle.tubeDiameterIn() / 2, "housing round the tube");
    assertTrue(axle.pinionForwardIn() < vehicle.driveline().jointForwardIn(), "a shaft between");
    assertTrue(
        vehicle.driveline().jointForwardIn() < vehicle.wheelbaseLeftIn() - 24,
        "the transmission's tail well inside the wheelbase");
    assertTrue(rails.frontMountsForwardIn() < vehicle.wheelbaseLeftIn() / 2, "mounts likewise");
    assertTrue(2 * rails.wallIn() < rails.flangeIn() / 2, "a rail is hollow");
    assertTrue(
        weights.unsprungRearLb() < (weights.rearLeftLb() + weights.rearRightLb()) / 2,
        "the axle is the lesser part of what the rear wheels carry");
    assertTrue(vehicle.undersideAtFrontAtRideIn() >= 5, "the rail is off the road");
    double overTheAxleIn =
        vehicle.stands().undersideAtRideIn() - tyre.loadedRadiusIn() - axle.tubeDiameterIn() / 2;
    assertTrue(vehicle.bumpIn() <= overTheAxleIn + rails.depthIn() / 2 + 0.25, "notch it needs");
  }

  @Seeds(1000)
  void whatIsInTheWayIsWhereSuchThingsAre(Draw draw) {
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    double railTopIn = vehicle.stands().undersideAtRideIn() + vehicle.rails().depthIn();
    for (Obstruction one : vehicle.obstructions()) {
      double insideIn = vehicle.rails().betweenAtAxleIn() / 2;
      switch (one.kind()) {
        case "tank" -> assertTrue(one.frontIn() < 0 && one.leftIn() < insideIn, "" + one);
        case "exhaust" -> assertTrue(-one.leftIn() + one.diameterIn() / 2 < insideIn, "" + one);
        case "running-board-support" ->
            assertTrue(
                Math.min(Math.abs(one.leftIn()), Math.abs(one.rightIn()))
                    > vehicle.rails().outsideAtFrontIn() / 2,
                "" + one);
        default -> assertTrue(one.lowIn() > railTopIn, "" + one);
      }
    }
  }

  /** By hand: 40 in ahead, turned nose up by 0.5 degrees: 40 sin 0.5 deg = 0.349 in higher. */
  @Test
  void theStandsTurnTheFrameAboutTheAxleMark() {
    Stands stands = new Stands(24, 18, 0.2, 0.7);

    assertEquals(0.5, stands.noseUpDeg(), 1e-12);
    assertEquals(24, stands.upIn(0, 18), 1e-12);
    assertEquals(24 + 0.349, stands.upIn(40, 18), 1e-3);
    assertEquals(-0.0873, stands.forwardIn(0, 28), 1e-4);
    assertEquals(3.5, stands.readDeg(3), 1e-12);
  }

  @Test
  void everyKindIsDrawnWithAndWithoutWhatMayBeThere() {
    Set<String> seen = new HashSet<>();
    for (long seed = 1; seed <= 200; seed++) {
      PlausibleVehicle vehicle = PlausibleVehicle.draw(new Draw(seed));
      Set<String> inTheWay = new HashSet<>();
      vehicle.obstructions().forEach(one -> inTheWay.add(one.kind()));
      seen.add(vehicle.kind().name() + (vehicle.rails().channel() ? " channel" : " box"));
      for (String kind : new String[] {"tank", "exhaust", "running-board-support", "bed-floor"}) {
        seen.add((inTheWay.contains(kind) ? "with " : "without ") + kind);
      }
    }
    assertEquals(16, seen.size(), () -> "" + seen);
  }

  @Test
  void theSameSeedIsTheSameJobFile() {
    assertEquals(job(17), job(17));
    assertNotEquals(job(17), job(18));
  }

  private static String job(long seed) {
    return JobText.of(
        PlausibleVehicle.draw(new Draw(seed)), "R-1", "triangulated", "coil-spring", "inboard");
  }
}
