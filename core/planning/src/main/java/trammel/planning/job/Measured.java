package trammel.planning.job;

import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.Tolerances;

/**
 * What was measured, as the frame sits on the stands.
 *
 * @param wheelbase axle mark to front wheel centre
 * @param rake slope of the straight run of the rail
 * @param rails the frame rails
 * @param axle the axle housing
 * @param tyre the rear tyre and wheel
 * @param transmission the front universal joint
 * @param driveshaft the shaft, if it is kept
 * @param weights the scales
 * @param engine what the engine can put on the axle, if stated
 * @param tyreGrip greatest friction of tyre on road, if stated; engine or tyreGrip is there
 * @param frontBrakeShare share of the braking force at the front wheels, 0 to 1
 * @param obstacles what is in the way
 * @param loads what the vehicle carries at most beyond what it was weighed with
 * @param hoses hoses from the frame to the axle
 * @param hitch a trailer hitch, if one is to be used
 * @param tolerances how well the instruments read
 */
public record Measured(
    Wheelbase wheelbase,
    Rake rake,
    Rails rails,
    Axle axle,
    Tyre tyre,
    Transmission transmission,
    Optional<Driveshaft> driveshaft,
    Weights weights,
    Optional<EngineDrive> engine,
    Optional<Double> tyreGrip,
    double frontBrakeShare,
    List<Obstacle> obstacles,
    List<CarriedLoad> loads,
    List<Hose> hoses,
    Optional<Hitch> hitch,
    Tolerances tolerances) {
  /** Refuses a vehicle with neither engine torque nor tyre grip. */
  public Measured {
    obstacles = List.copyOf(obstacles);
    loads = List.copyOf(loads);
    hoses = List.copyOf(hoses);
    if (engine.isEmpty() && tyreGrip.isEmpty()) {
      throw new IllegalArgumentException(
          "Neither engine torque nor tyre grip is given; give at least one, so that the launch load"
              + " is known.");
    }
  }
}
