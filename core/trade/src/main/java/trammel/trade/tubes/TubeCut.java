package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;

/**
 * One bar's tube: what to saw off so that the bar's joints come out at their centres with all
 * threads at mid-adjustment.
 *
 * @param name what the shop calls it
 * @param tube tube size
 * @param bar centre line from joint centre to joint centre
 * @param start end at the start of the centre line
 * @param end end at its end
 */
public record TubeCut(String name, RoundTube tube, BentBar bar, TubeEnd start, TubeEnd end) {
  public TubeCut {
    Dimension.text("bar name", name);
    start.requireFits(tube);
    end.requireFits(tube);
    double takenMm = start.takeUpMm(tube) + end.takeUpMm(tube);
    double lengthMm = bar.developedLengthMm() - takenMm;
    Dimension.atLeastMm(
        "tube left for " + name + " between its ends",
        lengthMm,
        Math.max(tube.wallMm(), start.insideMm() + end.insideMm()),
        "The ends take up "
            + Dimension.lengthText(takenMm)
            + " of the bar: use shorter joints or a longer bar.");
    requireLegs(name, tube, bar, start, end);
  }

  private static void requireLegs(
      String name, RoundTube tube, BentBar bar, TubeEnd start, TubeEnd end) {
    if (bar.bends().isEmpty()) {
      return;
    }
    String remedy = "Move the bend away from the end, or use a shorter joint.";
    Dimension.atLeastMm(
        "first leg of " + name,
        bar.legsMm().get(0),
        start.takeUpMm(tube) + start.insideMm(),
        remedy);
    Dimension.atLeastMm(
        "last leg of " + name,
        bar.legsMm().get(bar.legsMm().size() - 1),
        end.takeUpMm(tube) + end.insideMm(),
        remedy);
  }

  /** A straight bar. */
  public static TubeCut straight(
      String name, RoundTube tube, double centreToCentreMm, TubeEnd start, TubeEnd end) {
    return new TubeCut(name, tube, BentBar.straight(centreToCentreMm), start, end);
  }

  /** Length to saw, over the tips of any cope. */
  public double lengthMm() {
    return bar.developedLengthMm() - start.takeUpMm(tube) - end.takeUpMm(tube);
  }

  /** Bar length along its centre line with every thread screwed in to its limit. */
  public double shortestBarMm() {
    return bar.developedLengthMm() - start.canShortenMm() - end.canShortenMm();
  }

  /** Bar length along its centre line with every thread screwed out to its least engagement. */
  public double longestBarMm() {
    return bar.developedLengthMm() + start.canLengthenMm() + end.canLengthenMm();
  }

  /** Weight of the sawn tube, before coping. */
  public double weightKg() {
    return tube.massKg(lengthMm());
  }
}
