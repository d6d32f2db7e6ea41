package trammel.engine.clearance;

/**
 * Penetration depth of two convex cores: grows a hull inside their difference until the face
 * nearest to the origin lies on its surface. Works for cores that only touch as well, where the
 * depth comes out as zero or, if they are apart after all, as a gap.
 *
 * <p>Source: G. van den Bergen, Proximity queries and penetration depth computation on 3D game
 * objects (2001), the expanding polytope, from memory. Here the hull starts from extreme points
 * instead of the last simplex, so that it has volume from the first and the origin may lie outside.
 */
final class OverlapHull {

  private static final int GREATEST_CORNERS = 160;

  /** Twice the corners, and room for a ring of new faces before the hidden ones are dropped. */
  private static final int GREATEST_FACES = 3 * GREATEST_CORNERS;

  /**
   * The hull is near enough to the surface. Much finer would set the corners so close along a
   * curved rim that rounding tilts the faces between them.
   */
  private static final double TOLERANCE_MM = 1e-6;

  /** A new corner this little short of a face still replaces it, which keeps slivers out. */
  private static final double COPLANAR_MM = 1e-8;

  /** Cosine of the angle within which faces make up one flat side. */
  private static final double LEVEL_COSINE = 1 - 1e-12;

  private final double[] diff = new double[3 * GREATEST_CORNERS];
  private final double[] onA = new double[3 * GREATEST_CORNERS];
  private final double[] onB = new double[3 * GREATEST_CORNERS];
  private int corners;

  private final int[] faceI = new int[GREATEST_FACES];
  private final int[] faceJ = new int[GREATEST_FACES];
  private final int[] faceK = new int[GREATEST_FACES];
  private final double[] normalX = new double[GREATEST_FACES];
  private final double[] normalY = new double[GREATEST_FACES];
  private final double[] normalZ = new double[GREATEST_FACES];
  private final double[] offset = new double[GREATEST_FACES];
  private final boolean[] hidden = new boolean[GREATEST_FACES];
  private final boolean[] dropped = new boolean[GREATEST_FACES];
  private int faces;

  private final int[] edgeFrom = new int[3 * GREATEST_FACES];
  private final int[] edgeTo = new int[3 * GREATEST_FACES];
  private int edges;

  private double shareI;
  private double shareJ;
  private double shareK;

  /** Writes the signed gap (negative depth), the points and the direction that clears a from b. */
  void find(Placed a, Placed b, NearestPoints near) {
    corners = 0;
    faces = 0;
    start(a, b);
    int nearest = nearestFace();
    while (corners < GREATEST_CORNERS && grows(a, b, nearest)) {
      nearest = nearestFace();
    }
    int face = faceHoldingFoot(nearestFace());
    write(face, near);
    deepen(shortfallMm(a, b, face), near);
  }

  private void start(Placed a, Placed b) {
    addCorner(a, b, 1, 0, 0);
    addCorner(a, b, -1, 0, 0);
    double x = diff[3] - diff[0];
    double y = diff[4] - diff[1];
    double z = diff[5] - diff[2];
    // Square to the first edge: its vector product with the axis it follows least.
    if (Math.abs(y) <= Math.abs(z)) {
      addFurtherCorner(a, b, -z, 0, x);
    } else {
      addFurtherCorner(a, b, y, -x, 0);
    }
    double px = diff[6] - diff[0];
    double py = diff[7] - diff[1];
    double pz = diff[8] - diff[2];
    addFurtherCorner(a, b, y * pz - z * py, z * px - x * pz, x * py - y * px);
    addStartingFace(0, 1, 2, 3);
    addStartingFace(0, 1, 3, 2);
    addStartingFace(0, 2, 3, 1);
    addStartingFace(1, 2, 3, 0);
  }

  /**
   * Adds the extreme point in a direction or its opposite, whichever lies further from corner 0.
   */
  private void addFurtherCorner(Placed a, Placed b, double dx, double dy, double dz) {
    double base = dx * diff[0] + dy * diff[1] + dz * diff[2];
    int at = 3 * corners;
    addCorner(a, b, dx, dy, dz);
    double ahead = dx * diff[at] + dy * diff[at + 1] + dz * diff[at + 2] - base;
    corners--;
    addCorner(a, b, -dx, -dy, -dz);
    double behind = base - (dx * diff[at] + dy * diff[at + 1] + dz * diff[at + 2]);
    if (ahead > behind) {
      corners--;
      addCorner(a, b, dx, dy, dz);
    }
  }

  private void addCorner(Placed a, Placed b, double dx, double dy, double dz) {
    int at = 3 * corners;
    a.furthest(dx, dy, dz, onA, at);
    b.furthest(-dx, -dy, -dz, onB, at);
    diff[at] = onA[at] - onB[at];
    diff[at + 1] = onA[at + 1] - onB[at + 1];
    diff[at + 2] = onA[at + 2] - onB[at + 2];
    corners++;
  }

  private void addStartingFace(int i, int j, int k, int rest) {
    addFace(i, j, k);
    if (heightOver(faces - 1, rest) > 0) {
      faces--;
      addFace(i, k, j);
    }
  }

  private void addFace(int i, int j, int k) {
    int p = 3 * i;
    int q = 3 * j;
    int r = 3 * k;
    double abX = diff[q] - diff[p];
    double abY = diff[q + 1] - diff[p + 1];
    double abZ = diff[q + 2] - diff[p + 2];
    double acX = diff[r] - diff[p];
    double acY = diff[r + 1] - diff[p + 1];
    double acZ = diff[r + 2] - diff[p + 2];
    double x = abY * acZ - abZ * acY;
    double y = abZ * acX - abX * acZ;
    double z = abX * acY - abY * acX;
    double length = Math.sqrt(x * x + y * y + z * z);
    faceI[faces] = i;
    faceJ[faces] = j;
    faceK[faces] = k;
    if (length > 0) {
      normalX[faces] = x / length;
      normalY[faces] = y / length;
      normalZ[faces] = z / length;
      offset[faces] = (x * diff[p] + y * diff[p + 1] + z * diff[p + 2]) / length;
    } else {
      // A sliver without area bounds nothing: never the nearest, never seen from a new corner.
      normalX[faces] = 0;
      normalY[faces] = 0;
      normalZ[faces] = 0;
      offset[faces] = Double.POSITIVE_INFINITY;
    }
    faces++;
  }

  private double heightOver(int face, int corner) {
    int at = 3 * corner;
    return normalX[face] * diff[at]
        + normalY[face] * diff[at + 1]
        + normalZ[face] * diff[at + 2]
        - offset[face];
  }

  private int nearestFace() {
    int nearest = 0;
    for (int face = 1; face < faces; face++) {
      if (offset[face] < offset[nearest]) {
        nearest = face;
      }
    }
    return nearest;
  }

  /** Pushes the hull out over one face; false if that face lies on the surface already. */
  private boolean grows(Placed a, Placed b, int nearest) {
    addCorner(a, b, normalX[nearest], normalY[nearest], normalZ[nearest]);
    int corner = corners - 1;
    if (heightOver(nearest, corner) <= TOLERANCE_MM) {
      corners--;
      return false;
    }
    dropFacesSeenFrom(corner, nearest);
    if (faces + edges > GREATEST_FACES) {
      return false;
    }
    for (int edge = 0; edge < edges; edge++) {
      addFace(edgeFrom[edge], edgeTo[edge], corner);
    }
    return true;
  }

  /** Leaves the rim of the dropped faces in the edge list, in their winding. */
  private void dropFacesSeenFrom(int corner, int nearest) {
    for (int face = 0; face < faces; face++) {
      hidden[face] = heightOver(face, corner) <= -COPLANAR_MM;
      dropped[face] = false;
    }
    dropped[nearest] = true;
    while (dropsNeighbours()) {
      // Only faces joined to the nearest go, so that rounding cannot tear a second hole.
    }
    edges = 0;
    int kept = 0;
    for (int face = 0; face < faces; face++) {
      if (dropped[face]) {
        addRimEdge(faceI[face], faceJ[face]);
        addRimEdge(faceJ[face], faceK[face]);
        addRimEdge(faceK[face], faceI[face]);
      } else {
        copyFace(face, kept++);
      }
    }
    faces = kept;
  }

  private boolean dropsNeighbours() {
    boolean isAny = false;
    for (int face = 0; face < faces; face++) {
      if (!hidden[face] && !dropped[face] && touchesDropped(face)) {
        dropped[face] = true;
        isAny = true;
      }
    }
    return isAny;
  }

  private boolean touchesDropped(int face) {
    for (int other = 0; other < faces; other++) {
      if (dropped[other] && sharesEdge(face, other)) {
        return true;
      }
    }
    return false;
  }

  private boolean sharesEdge(int face, int other) {
    int shared = 0;
    shared += isCornerOf(other, faceI[face]) ? 1 : 0;
    shared += isCornerOf(other, faceJ[face]) ? 1 : 0;
    shared += isCornerOf(other, faceK[face]) ? 1 : 0;
    return shared >= 2;
  }

  private boolean isCornerOf(int face, int corner) {
    return faceI[face] == corner || faceJ[face] == corner || faceK[face] == corner;
  }

  private void addRimEdge(int from, int to) {
    for (int edge = 0; edge < edges; edge++) {
      if (edgeFrom[edge] == to && edgeTo[edge] == from) {
        edges--;
        edgeFrom[edge] = edgeFrom[edges];
        edgeTo[edge] = edgeTo[edges];
        return;
      }
    }
    edgeFrom[edges] = from;
    edgeTo[edges] = to;
    edges++;
  }

  private void copyFace(int from, int to) {
    faceI[to] = faceI[from];
    faceJ[to] = faceJ[from];
    faceK[to] = faceK[from];
    normalX[to] = normalX[from];
    normalY[to] = normalY[from];
    normalZ[to] = normalZ[from];
    offset[to] = offset[from];
  }

  /**
   * Among the triangles that make up one flat side, the one that holds the foot of the origin's
   * normal; its corners carry the nearest points.
   */
  private int faceHoldingFoot(int nearest) {
    int holding = nearest;
    double mostInside = Double.NEGATIVE_INFINITY;
    for (int face = 0; face < faces; face++) {
      if (isLevelWith(face, nearest)) {
        setShares(face);
        double inside = Math.min(shareI, Math.min(shareJ, shareK));
        if (inside > mostInside) {
          mostInside = inside;
          holding = face;
        }
      }
    }
    return holding;
  }

  /** How far the surface still lies beyond a face; next to nothing unless the corners ran out. */
  private double shortfallMm(Placed a, Placed b, int face) {
    corners = Math.min(corners, GREATEST_CORNERS - 1);
    addCorner(a, b, normalX[face], normalY[face], normalZ[face]);
    return Math.max(0, heightOver(face, corners - 1));
  }

  /** Makes the depth a way out for certain. */
  private static void deepen(double moreMm, NearestPoints near) {
    near.gapMm -= moreMm;
    near.ax -= near.clearX * moreMm;
    near.ay -= near.clearY * moreMm;
    near.az -= near.clearZ * moreMm;
  }

  private boolean isLevelWith(int face, int other) {
    double cosine =
        normalX[face] * normalX[other]
            + normalY[face] * normalY[other]
            + normalZ[face] * normalZ[other];
    return Math.abs(offset[face] - offset[other]) <= TOLERANCE_MM && cosine > LEVEL_COSINE;
  }

  /** Weights of a face's corners at the foot of the origin's normal; negative outside an edge. */
  private void setShares(int face) {
    int p = 3 * faceI[face];
    int q = 3 * faceJ[face];
    int r = 3 * faceK[face];
    double x = normalX[face] * offset[face];
    double y = normalY[face] * offset[face];
    double z = normalZ[face] * offset[face];
    shareI = area(face, q, r, x, y, z);
    shareJ = area(face, r, p, x, y, z);
    shareK = area(face, p, q, x, y, z);
    double whole = shareI + shareJ + shareK;
    shareI /= whole;
    shareJ /= whole;
    shareK /= whole;
  }

  private void write(int face, NearestPoints near) {
    int p = 3 * faceI[face];
    int q = 3 * faceJ[face];
    int r = 3 * faceK[face];
    setShares(face);
    double insideI = Math.max(0, shareI);
    double insideJ = Math.max(0, shareJ);
    double insideK = Math.max(0, shareK);
    double whole = insideI + insideJ + insideK;
    double shareP = insideI / whole;
    double shareQ = insideJ / whole;
    double shareR = insideK / whole;
    near.ax = shareP * onA[p] + shareQ * onA[q] + shareR * onA[r];
    near.ay = shareP * onA[p + 1] + shareQ * onA[q + 1] + shareR * onA[r + 1];
    near.az = shareP * onA[p + 2] + shareQ * onA[q + 2] + shareR * onA[r + 2];
    near.bx = shareP * onB[p] + shareQ * onB[q] + shareR * onB[r];
    near.by = shareP * onB[p + 1] + shareQ * onB[q + 1] + shareR * onB[r + 1];
    near.bz = shareP * onB[p + 2] + shareQ * onB[q + 2] + shareR * onB[r + 2];
    near.gapMm = -offset[face];
    near.clearX = -normalX[face];
    near.clearY = -normalY[face];
    near.clearZ = -normalZ[face];
  }

  /** Twice the area of the triangle between an edge of a face and a point in its plane. */
  private double area(int face, int from, int to, double x, double y, double z) {
    double fromX = diff[from] - x;
    double fromY = diff[from + 1] - y;
    double fromZ = diff[from + 2] - z;
    double toX = diff[to] - x;
    double toY = diff[to + 1] - y;
    double toZ = diff[to + 2] - z;
    return normalX[face] * (fromY * toZ - fromZ * toY)
        + normalY[face] * (fromZ * toX - fromX * toZ)
        + normalZ[face] * (fromX * toY - fromY * toX);
  }
}
