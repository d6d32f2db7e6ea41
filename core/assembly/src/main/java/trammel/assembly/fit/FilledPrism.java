package trammel.assembly.fit;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.Prism;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Point2;

/** An outline drawn out: a plate, a rectangular tube, a block. */
final class FilledPrism extends Filled {
  private final Prism prism;
  private final boolean hollow;
  private List<Point2> outer;
  private Rings rings;

  private FilledPrism(Prism prism, boolean hollow, double[] least, double[] most) {
    super(least, most);
    this.prism = prism;
    this.hollow = hollow;
  }

  static FilledPrism of(Prism prism, boolean hollow) {
    Bounds bounds = prism.section().bounds();
    double lowMm =
        Math.min(prism.startSlope() * bounds.minXMm(), prism.startSlope() * bounds.maxXMm());
    double highMm =
        prism.lengthMm()
            + Math.max(prism.endSlope() * bounds.minXMm(), prism.endSlope() * bounds.maxXMm());
    return new FilledPrism(
        prism,
        hollow,
        new double[] {bounds.minXMm(), bounds.minYMm(), lowMm},
        new double[] {bounds.maxXMm(), bounds.maxYMm(), highMm});
  }

  private List<Point2> outer() {
    if (outer == null) {
      outer = prism.section().polygon(CHORD_MM);
    }
    return outer;
  }

  private Rings rings() {
    if (rings == null) {
      List<List<Point2>> loops = new ArrayList<>();
      loops.add(outer());
      if (hollow) {
        for (Loop hole : prism.section().holeLoops()) {
          loops.add(hole.polygon(CHORD_MM));
        }
      }
      rings = new Rings(loops);
    }
    return rings;
  }

  /** Round both ends and along the sides. */
  @Override
  double[] drawnEdges() {
    List<Point2> outer = outer();
    double[] edges = new double[18 * outer.size()];
    int at = 0;
    for (int i = 0; i < outer.size(); i++) {
      Point2 here = outer.get(i);
      Point2 next = outer.get((i + 1) % outer.size());
      at = add(edges, at, prism, here, false, next, false);
      at = add(edges, at, prism, here, true, next, true);
      at = add(edges, at, prism, here, false, here, true);
    }
    return edges;
  }

  private static int add(
      double[] edges, int at, Prism prism, Point2 from, boolean fromEnd, Point2 to, boolean toEnd) {
    edges[at] = from.xMm();
    edges[at + 1] = from.yMm();
    edges[at + 2] = along(prism, from.xMm(), fromEnd);
    edges[at + 3] = to.xMm();
    edges[at + 4] = to.yMm();
    edges[at + 5] = along(prism, to.xMm(), toEnd);
    return at + 6;
  }

  private static double along(Prism prism, double xMm, boolean end) {
    return end ? prism.lengthMm() + prism.endSlope() * xMm : prism.startSlope() * xMm;
  }

  @Override
  double depthMm(double xMm, double yMm, double zMm) {
    double endsMm = Math.min(zMm - along(prism, xMm, false), along(prism, xMm, true) - zMm);
    return endsMm <= 0 ? endsMm : Math.min(endsMm, rings().depthMm(xMm, yMm));
  }
}
