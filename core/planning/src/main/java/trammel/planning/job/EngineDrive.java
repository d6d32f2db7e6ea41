package trammel.planning.job;

/**
 * What the engine can put on the axle.
 *
 * @param torqueNmm greatest engine torque, Nmm
 * @param firstGear ratio of the lowest gear that is used to launch
 * @param stallRatio what the torque converter multiplies torque by at stall, 1 for a clutch
 * @param lowRange ratio of the transfer case in low range, 1 without one
 * @param finalDrive ratio of the axle
 */
public record EngineDrive(
    double torqueNmm, double firstGear, double stallRatio, double lowRange, double finalDrive) {
  /** Torque on the axle without losses and without the converter, in high range, Nmm. */
  public double axleTorqueNmm() {
    return torqueNmm * firstGear * finalDrive;
  }
}
