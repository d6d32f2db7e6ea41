package trammel.brackets.work;

import java.util.Objects;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;

/**
 * What every bracket of a job is planned on.
 *
 * @param chassis the vehicle that the brackets are welded to
 * @param boxing plate that closes its rails where they are channels
 * @param bolts the bolt sizes that can be bought
 */
public record BracketBasis(Chassis chassis, BracketStock boxing, BoltSizes bolts) {
  public BracketBasis {
    Objects.requireNonNull(chassis, "chassis");
    Objects.requireNonNull(boxing, "boxing");
    Objects.requireNonNull(bolts, "bolts");
  }

  /** The same with channel rails closed by whole sheets of a plate. */
  public BracketBasis(Chassis chassis, PlateMaterial boxing, BoltSizes bolts) {
    this(chassis, new BracketStock(boxing), bolts);
  }

  /** The vehicle's rails. */
  public Rails rails() {
    return chassis.rails();
  }

  /** What stands at a rail's inner face: the wall of a boxed rail, or the plate that closes it. */
  public double innerFaceThicknessMm() {
    return rails().boxed() ? rails().wallMm() : boxing.thicknessMm();
  }
}
