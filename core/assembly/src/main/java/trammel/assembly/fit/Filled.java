package trammel.assembly.fit;

import trammel.assembly.CopedTube;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.assembly.Turned;

/**
 * A simple solid in its own axes, made for two questions: how deep a point lies in it, and where
 * its edges run. Not for use by several threads at once.
 */
abstract class Filled {
  /** Chords stay this near to an arc (mm): far below what counts as an overlap. */
  static final double CHORD_MM = 0.25;

  private final double[] least;
  private final double[] most;
  private double[] edges;

  /**
   * @param least lower corner of the block round it (mm)
   * @param most upper corner
   */
  Filled(double[] least, double[] most) {
    this.least = least;
    this.most = most;
  }

  /**
   * The form of a simple solid.
   *
   * @param hollow true where what stands inside of it is beside it: a tube's bore counts as solid
   *     otherwise, since nothing passes through a tube's wall into it
   * @throws IllegalArgumentException for a compound, whose members are asked for one by one
   */
  static Filled of(Solid solid, boolean hollow) {
    if (solid instanceof Prism prism) {
      return FilledPrism.of(prism, hollow);
    }
    if (solid instanceof CopedTube tube) {
      return FilledTube.of(tube);
    }
    if (solid instanceof Turned turned) {
      return FilledTurned.of(turned, hollow);
    }
    throw new IllegalArgumentException("A compound is looked at member by member. Walk members().");
  }

  double least(int axis) {
    return least[axis];
  }

  double most(int axis) {
    return most[axis];
  }

  /** Its edges, six numbers each: from and to (mm); not to be changed. */
  double[] edges() {
    if (edges == null) {
      edges = drawnEdges();
    }
    return edges;
  }

  /** Draws its edges, which only a solid that something is near to is asked for. */
  abstract double[] drawnEdges();

  /** How far a point in its block is from its surface, inside positive, outside 0 or less (mm). */
  abstract double depthMm(double xMm, double yMm, double zMm);
}
