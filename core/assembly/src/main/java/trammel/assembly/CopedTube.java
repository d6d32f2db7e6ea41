package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;
import trammel.trade.tubes.Cope;

/**
 * A round tube from z = 0 to its sawn length, over the tips of its copes. A cope's barrel lies
 * along the tube's own x axis where it is square to the tube, and leans from it towards z
 * otherwise.
 *
 * @param tube diameter and wall
 * @param lengthMm sawn length (mm), above 0
 * @param start what its start is cut to; empty for a square end
 * @param end what its end is cut to; empty for a square end
 */
public record CopedTube(RoundTube tube, double lengthMm, Optional<Cope> start, Optional<Cope> end)
    implements Solid {
  private static final int SEGMENTS = 24;

  /** Rings and rays of the exact sums; with these the volume is right to 1e-9 of it. */
  private static final int RAYS = 144;

  private static final double[] POINTS = {
    -0.9324695142031521, -0.6612093864662645, -0.2386191860831969,
    0.2386191860831969, 0.6612093864662645, 0.9324695142031521
  };

  private static final double[] WEIGHTS = {
    0.1713244923791704, 0.3607615730481386, 0.4679139345726910,
    0.4679139345726910, 0.3607615730481386, 0.1713244923791704
  };

  public CopedTube {
    Dimension.positiveMm("length of a tube", lengthMm);
    double cutMm = start.map(Cope::depthMm).orElse(0.0) + end.map(Cope::depthMm).orElse(0.0);
    Dimension.positiveMm("tube left between its copes", lengthMm - cutMm);
  }

  /** A tube with square ends. */
  public static CopedTube square(RoundTube tube, double lengthMm) {
    return new CopedTube(tube, lengthMm, Optional.empty(), Optional.empty());
  }

  /** What one end is cut to, its tips worked out once. */
  private record Cut(Cope cope, double tipsMm) {
    static Optional<Cut> of(Optional<Cope> cope) {
      return cope.map(cut -> new Cut(cut, cut.nearestMm()));
    }

    /** How far behind its tips the cope cuts on a line along the tube (mm). */
    double behindMm(double radiusMm, double roundRad) {
      return cope.edgeMm(radiusMm, roundRad) - tipsMm;
    }
  }

  /** Where the metal starts or ends on a line along the tube. */
  private static double behindMm(Optional<Cut> cut, double radiusMm, double roundRad) {
    return cut.isPresent() ? cut.get().behindMm(radiusMm, roundRad) : 0;
  }

  private double[] sums() {
    Optional<Cut> startCut = Cut.of(start);
    Optional<Cut> endCut = Cut.of(end);
    double insideMm = tube.insideMm() / 2;
    double[] sums = new double[4];
    for (int i = 0; i < POINTS.length; i++) {
      double radiusMm = insideMm + tube.wallMm() * (1 + POINTS[i]) / 2;
      for (int k = 0; k < RAYS; k++) {
        double roundRad = 2 * Math.PI * k / RAYS;
        double areaMm2 = WEIGHTS[i] / 2 * tube.wallMm() * radiusMm * 2 * Math.PI / RAYS;
        double fromMm = behindMm(startCut, radiusMm, roundRad);
        double toMm = lengthMm - behindMm(endCut, radiusMm, roundRad);
        sums[0] += areaMm2 * (toMm - fromMm);
        sums[1] += areaMm2 * (toMm - fromMm) * radiusMm * Math.cos(roundRad);
        sums[2] += areaMm2 * (toMm - fromMm) * radiusMm * Math.sin(roundRad);
        sums[3] += areaMm2 * (toMm * toMm - fromMm * fromMm) / 2;
      }
    }
    return sums;
  }

  @Override
  public double volumeMm3() {
    return start.isEmpty() && end.isEmpty() ? tube.sectionAreaMm2() * lengthMm : sums()[0];
  }

  @Override
  public Point3 centre() {
    double[] sums = sums();
    return new Point3(sums[1] / sums[0], sums[2] / sums[0], sums[3] / sums[0]);
  }

  @Override
  public Mesh mesh() {
    List<Point3> corners = new ArrayList<>(4 * SEGMENTS);
    List<Mesh.Face> faces = new ArrayList<>(8 * SEGMENTS);
    Optional<Cut> startCut = Cut.of(start);
    Optional<Cut> endCut = Cut.of(end);
    double outsideMm = tube.outsideMm() / 2;
    double insideMm = tube.insideMm() / 2;
    for (int k = 0; k < SEGMENTS; k++) {
      double roundRad = 2 * Math.PI * k / SEGMENTS;
      corners.add(corner(outsideMm, roundRad, behindMm(startCut, outsideMm, roundRad)));
      corners.add(corner(outsideMm, roundRad, lengthMm - behindMm(endCut, outsideMm, roundRad)));
      corners.add(corner(insideMm, roundRad, lengthMm - behindMm(endCut, insideMm, roundRad)));
      corners.add(corner(insideMm, roundRad, behindMm(startCut, insideMm, roundRad)));
      int next = (k + 1) % SEGMENTS;
      for (int side = 0; side < 4; side++) {
        int a = 4 * k + side;
        int b = 4 * next + side;
        int c = 4 * next + (side + 1) % 4;
        int d = 4 * k + (side + 1) % 4;
        faces.add(new Mesh.Face(a, b, c));
        faces.add(new Mesh.Face(a, c, d));
      }
    }
    return new Mesh(corners, faces);
  }

  private static Point3 corner(double radiusMm, double roundRad, double alongMm) {
    double outMm = Turned.equalArea(SEGMENTS) * radiusMm;
    return new Point3(outMm * Math.cos(roundRad), outMm * Math.sin(roundRad), alongMm);
  }
}
