package trammel.trade.hardware;

import trammel.engine.strength.BoltGrade;
import trammel.trade.given.Dimension;

/**
 * Torque for a wanted preload: T = K D F, with F a share of the proof load (Shigley, Mechanical
 * Engineering Design, bolted joints, from memory).
 *
 * @param nutFactor K: 0.2 for clean dry steel
 * @param proofShare preload as a share of the proof load
 */
public record Tightening(double nutFactor, double proofShare) {
  /** A joint that is taken apart again: 75 % of proof, K = 0.2. */
  public static final Tightening REUSABLE = new Tightening(0.2, 0.75);

  public Tightening {
    if (!(nutFactor >= 0.08 && nutFactor <= 0.35)) {
      throw Dimension.refuse(
          "nut factor", Double.toString(nutFactor), "0.08 to 0.35", "Use 0.2 for dry steel.");
    }
    if (!(proofShare > 0.0 && proofShare <= 0.9)) {
      throw Dimension.refuse(
          "preload as a share of the proof load",
          Double.toString(proofShare),
          "more than 0, to 0.9",
          "Use 0.75 for a joint that is taken apart again.");
    }
  }

  /** Pull of the tightened bolt (N). */
  public double preloadN(ScrewThread thread, BoltGrade grade) {
    return proofShare * grade.proofMPa(thread.diameterMm()) * thread.stressAreaMm2();
  }

  /** Torque on the wrench (Nmm). */
  public double torqueNmm(ScrewThread thread, BoltGrade grade) {
    return nutFactor * thread.diameterMm() * preloadN(thread, grade);
  }
}
