package trammel.planning.job;

/**
 * What the engine can put on the axle.
 *
 * @param torqueNmm greatest engine torque, Nmm
 * @param firstGear ratio of the lowest gear that is used to launch
 * @param finalDrive ratio of the axle
 */
public record EngineDrive(double torqueNmm, double firstGear, double finalDrive) {
  /** Torque on the axle without losses, Nmm. */
  public double axleTorqueNmm() {
    return torqueNmm * firstGear * finalDrive;
  }
}
