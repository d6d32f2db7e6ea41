package trammel.assembly.fit;

import java.util.Optional;
import trammel.assembly.CopedTube;
import trammel.trade.tubes.Cope;

/** A round tube, its bore filled, between its sawn or coped ends. */
final class FilledTube extends Filled {
  private static final int LINES = 16;
  private static final double LEAST_RADIUS_MM = 1;

  private final CopedTube tube;
  private final double radiusMm;
  private final double startTipsMm;
  private final double endTipsMm;

  private FilledTube(CopedTube tube, double radiusMm) {
    super(
        new double[] {-radiusMm, -radiusMm, 0}, new double[] {radiusMm, radiusMm, tube.lengthMm()});
    this.tube = tube;
    this.radiusMm = radiusMm;
    startTipsMm = tips(tube.start());
    endTipsMm = tips(tube.end());
  }

  static FilledTube of(CopedTube tube) {
    return new FilledTube(tube, tube.tube().outsideMm() / 2);
  }

  @Override
  double[] drawnEdges() {
    double[] edges = new double[18 * LINES];
    int at = 0;
    for (int k = 0; k < LINES; k++) {
      double[] here = ends(tube, radiusMm, startTipsMm, endTipsMm, k);
      double[] next = ends(tube, radiusMm, startTipsMm, endTipsMm, (k + 1) % LINES);
      at = add(edges, at, here, 2, here, 3);
      at = add(edges, at, here, 2, next, 2);
      at = add(edges, at, here, 3, next, 3);
    }
    return edges;
  }

  private static int add(double[] edges, int at, double[] from, int end, double[] to, int other) {
    edges[at] = from[0];
    edges[at + 1] = from[1];
    edges[at + 2] = from[end];
    edges[at + 3] = to[0];
    edges[at + 4] = to[1];
    edges[at + 5] = to[other];
    return at + 6;
  }

  /** A line along the tube: x, y, where it starts and where it ends. */
  private static double[] ends(
      CopedTube tube, double radiusMm, double startTipsMm, double endTipsMm, int line) {
    double roundRad = 2 * Math.PI * line / LINES;
    return new double[] {
      radiusMm * Math.cos(roundRad),
      radiusMm * Math.sin(roundRad),
      behindMm(tube.start(), startTipsMm, roundRad),
      tube.lengthMm() - behindMm(tube.end(), endTipsMm, roundRad)
    };
  }

  private static double tips(Optional<Cope> cope) {
    return cope.map(Cope::nearestMm).orElse(0.0);
  }

  private static double behindMm(Optional<Cope> cope, double tipsMm, double roundRad) {
    return cope.isEmpty() ? 0 : cope.get().edgeMm(roundRad) - tipsMm;
  }

  /** Where a cope ends the bore's filling, at a distance from the tube's middle. */
  private static double behindMm(Optional<Cope> cope, double tipsMm, double atMm, double roundRad) {
    if (cope.isEmpty()) {
      return 0;
    }
    return cope.get().edgeMm(Math.max(LEAST_RADIUS_MM, atMm), roundRad) - tipsMm;
  }

  @Override
  double depthMm(double xMm, double yMm, double zMm) {
    double sideMm = radiusMm - Math.hypot(xMm, yMm);
    if (sideMm <= 0) {
      return sideMm;
    }
    double roundRad = Math.atan2(yMm, xMm);
    double atMm = radiusMm - sideMm;
    double fromStartMm = zMm - behindMm(tube.start(), startTipsMm, atMm, roundRad);
    double fromEndMm = tube.lengthMm() - behindMm(tube.end(), endTipsMm, atMm, roundRad) - zMm;
    return Math.min(sideMm, Math.min(fromStartMm, fromEndMm));
  }
}
