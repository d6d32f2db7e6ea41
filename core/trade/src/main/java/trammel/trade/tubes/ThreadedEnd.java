package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;

/**
 * A joint screwed into a weld-in threaded tube end, set at the middle of its adjustment.
 *
 * @param joint joint and jam nut
 * @param proudMm how far the weld-in end stands out of the tube
 * @param insideMm how far it goes into the tube
 * @param boreDepthMm full thread in it, from its face
 * @param engagementMm least engagement of the joint
 * @param spigotMm outside diameter of the part in the tube; 0 when not checked
 */
public record ThreadedEnd(
    ThreadedShank joint,
    double proudMm,
    double insideMm,
    double boreDepthMm,
    double engagementMm,
    double spigotMm)
    implements TubeEnd {
  public ThreadedEnd {
    Dimension.notNegativeMm("weld-in end outside the tube", proudMm);
    Dimension.notNegativeMm("weld-in end inside the tube", insideMm);
    Dimension.notNegativeMm("spigot of the weld-in end", spigotMm);
    ThreadRange.of(joint, boreDepthMm, engagementMm);
  }

  /** A weld-in end with one thread diameter of least engagement. */
  public static ThreadedEnd of(
      ThreadedShank joint, double proudMm, double insideMm, double boreDepthMm) {
    double engagementMm = ThreadRange.STEEL_ENGAGEMENT * joint.thread().diameterMm();
    return new ThreadedEnd(joint, proudMm, insideMm, boreDepthMm, engagementMm, 0.0);
  }

  public ThreadRange range() {
    return ThreadRange.of(joint, boreDepthMm, engagementMm);
  }

  @Override
  public double takeUpMm(RoundTube tube) {
    return range().middleMm() + proudMm;
  }

  @Override
  public double canShortenMm() {
    return range().halfMm();
  }

  @Override
  public double canLengthenMm() {
    return range().halfMm();
  }

  @Override
  public void requireFits(RoundTube tube) {
    if (spigotMm > 0.0) {
      Dimension.atMostMm(
          "spigot of the weld-in end for " + joint.name(),
          spigotMm,
          tube.insideMm(),
          "Use the weld-in end made for this wall, or a thinner wall.");
    }
  }
}
