package trammel.brackets.mount;

import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.PlateMaterial;
import trammel.trade.steel.RectangularTube;

/**
 * What mounts are made of.
 *
 * @param bracket plate of brackets, tabs, arms and seats
 * @param tube section of crossmembers
 * @param boxing plate that closes a channel rail
 * @param bolts the bolt sizes that can be bought
 * @param legs what a crossmember above or below the rails stands on
 */
public record MountStock(
    PlateMaterial bracket, BarMaterial tube, PlateMaterial boxing, BoltSizes bolts, Legs legs) {
  public MountStock {
    if (!(tube.form() instanceof RectangularTube)) {
      throw new IllegalArgumentException(
          "section '"
              + tube.key()
              + "' is no square or rectangular tube; a crossmember with tabs needs one. Choose"
              + " another section.");
    }
  }

  /** A crossmember that needs legs stands on pieces of its own tube. */
  public MountStock(
      PlateMaterial bracket, BarMaterial tube, PlateMaterial boxing, BoltSizes bolts) {
    this(bracket, tube, boxing, bolts, Legs.TUBE);
  }

  /** The same with other legs. */
  public MountStock on(Legs other) {
    return new MountStock(bracket, tube, boxing, bolts, other);
  }

  /** The same with brackets of another plate. */
  public MountStock of(PlateMaterial plate) {
    return new MountStock(plate, tube, boxing, bolts, legs);
  }

  /** The same with crossmembers of another section. */
  public MountStock of(BarMaterial section) {
    return new MountStock(bracket, section, boxing, bolts, legs);
  }

  /** The crossmember's section. */
  public RectangularTube section() {
    return (RectangularTube) tube.form();
  }

  /** Thickness of the bracket plate (mm). */
  public double plateMm() {
    return bracket.form().thicknessMm();
  }
}
