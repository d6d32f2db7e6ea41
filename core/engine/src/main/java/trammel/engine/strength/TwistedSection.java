package trammel.engine.strength;

/**
 * The section of a rail as torsion meets it: how far a stretch of it turns, and how it is stressed,
 * between two places that are held from warping, or between one that is held and one that warps
 * freely.
 */
public sealed interface TwistedSection permits OpenChannel, ClosedBox {
  /**
   * How far one end turns against the other for a torque of 1 Nmm along the stretch (rad).
   *
   * @param lengthMm length of the stretch (mm), above 0
   * @param bothHeld true where neither end can warp, false where one of them warps freely
   */
  double turnPerNmm(double lengthMm, boolean bothHeld);

  /**
   * Greatest stress in the stretch, by von Mises (MPa).
   *
   * @param torqueNmm the torque along it (Nmm), either way
   * @param lengthMm length of the stretch (mm), above 0
   * @param bothHeld true where neither end can warp, false where one of them warps freely
   */
  double stressMPa(double torqueNmm, double lengthMm, boolean bothHeld);

  /** How far outside the rail's outer face its shear centre lies (mm), negative inside it. */
  double shearCentreOutMm();
}
