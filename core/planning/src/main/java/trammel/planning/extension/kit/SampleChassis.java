package trammel.planning.extension.kit;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;

/** Vehicles about the one given, some of which leave no room. */
final class SampleChassis {
  private static final double INCH_MM = 25.4;

  private SampleChassis() {}

  static List<Chassis> about(Chassis chassis) {
    List<Chassis> vehicles = new ArrayList<>();
    vehicles.add(SampleVehicle.withBoxedRails(chassis));
    for (double wider : new double[] {-16, -8, -3, 4, 12}) {
      vehicles.add(SampleVehicle.withRailsMoved(chassis, wider * INCH_MM, 0));
    }
    for (double higher : new double[] {-4, -1, 3, 8}) {
      vehicles.add(SampleVehicle.withRailsMoved(chassis, 0, higher * INCH_MM));
    }
    for (double depth : new double[] {2, 3.5, 8}) {
      vehicles.add(chassis.withRails(ofDepth(chassis.rails(), depth * INCH_MM)));
    }
    return vehicles;
  }

  private static Rails ofDepth(Rails rails, double depthMm) {
    return new Rails(
        rails.boxed(),
        rails.outsideAtAxleMm(),
        rails.outsideAtFrontMm(),
        rails.undersideAtAxleMm(),
        rails.undersideAtFrontMm(),
        rails.frontMountsForwardMm(),
        depthMm,
        rails.flangeMm(),
        rails.wallMm(),
        0);
  }
}
