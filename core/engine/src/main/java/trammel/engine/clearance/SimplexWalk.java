package trammel.engine.clearance;

/**
 * Least distance of two convex cores that lie apart, by walking simplexes of their difference
 * towards the origin.
 *
 * <p>Source: E. G. Gilbert, D. W. Johnson, S. S. Keerthi, A fast procedure for computing the
 * distance between complex objects in three-dimensional space, IEEE Journal of Robotics and
 * Automation 4 (1988); the nearest point of a triangle after C. Ericson, Real-Time Collision
 * Detection (2005), section 5.1.5; both from memory.
 */
final class SimplexWalk {

  /** Bounds the walk; curved rims need some thirty steps, blocks under ten. */
  private static final int GREATEST_STEPS = 250;

  /** The walk ends when upper and lower bound of the distance are this close. */
  private static final double TOLERANCE_MM = 1e-9;

  /** Nearer than this the direction is noise: the cores count as touching. */
  private static final double TOUCH_MM = 1e-7;

  /** Squared height, mm², under which a corner lies in the plane of the other three. */
  private static final double FLAT_SQUARED = 1e-16;

  // Corner k of the simplex: the difference at diff[3k], its two points at onA[3k] and onB[3k].
  private final double[] diff = new double[12];
  private final double[] onA = new double[12];
  private final double[] onB = new double[12];
  private final double[] weight = new double[4];
  private final double[] bestWeight = new double[4];
  private int corners;

  /** A plane has been found with the two cores on its two sides. */
  private boolean isApart;

  private double nearX;
  private double nearY;
  private double nearZ;

  /** How a walk ended. */
  private enum End {
    /** At the nearest points. */
    NEAREST,
    /** The cores touch or overlap. */
    TOUCHING,
    /** Sooner, as the cores are seen to be closer than the limit. */
    CLOSER,
    /** Sooner, as they are seen not to be. */
    NOT_CLOSER
  }

  /** A limit that nothing is compared with. */
  private static final double NO_LIMIT = Double.NaN;

  private double square;

  /**
   * Finds the nearest points of the cores.
   *
   * @param startX first guess of the direction from b to a, of any length
   * @return false if the cores touch or overlap; {@code near} is then not written
   */
  boolean find(
      Placed a, Placed b, double startX, double startY, double startZ, NearestPoints near) {
    if (walk(a, b, startX, startY, startZ, NO_LIMIT) == End.TOUCHING) {
      return false;
    }
    write(near);
    return true;
  }

  /**
   * Whether the cores are closer than a limit, which is sooner known than how close.
   *
   * @param limitMm 0 or more; at 0 cores that touch count
   */
  boolean isCloser(Placed a, Placed b, double limitMm) {
    double x = a.centreX() - b.centreX();
    double y = a.centreY() - b.centreY();
    double z = a.centreZ() - b.centreZ();
    return switch (walk(a, b, x, y, z, limitMm)) {
      case NEAREST -> Math.sqrt(square) < limitMm;
      case TOUCHING, CLOSER -> true;
      case NOT_CLOSER -> false;
    };
  }

  private End walk(
      Placed a, Placed b, double startX, double startY, double startZ, double limitMm) {
    corners = 0;
    nearX = startX;
    nearY = startY;
    nearZ = startZ;
    isApart = false;
    square = Double.POSITIVE_INFINITY;
    for (int step = 0; step < GREATEST_STEPS; step++) {
      addCorner(a, b);
      double along = alongNewest();
      double lengthMm = Math.sqrt(nearX * nearX + nearY * nearY + nearZ * nearZ);
      isApart |= along > TOUCH_MM * lengthMm;
      if (lengthMm > 0 && along >= limitMm * lengthMm) {
        return End.NOT_CLOSER;
      }
      boolean cannotImprove = square - along <= TOLERANCE_MM * Math.sqrt(square);
      if (corners > 1 && cannotImprove) {
        corners--;
        break;
      }
      if (corners > 1 && isRepeated()) {
        corners--;
        if (!collapse()) {
          break;
        }
        continue;
      }
      if (!reduce()) {
        return End.TOUCHING;
      }
      double nextSquare = nearX * nearX + nearY * nearY + nearZ * nearZ;
      if (nextSquare <= TOUCH_MM * TOUCH_MM) {
        return End.TOUCHING;
      }
      if (nextSquare < limitMm * limitMm) {
        return End.CLOSER;
      }
      if (nextSquare >= square && !collapse()) {
        break;
      }
      square = nextSquare;
    }
    return End.NEAREST;
  }

  private void addCorner(Placed a, Placed b) {
    int at = 3 * corners;
    a.furthest(-nearX, -nearY, -nearZ, onA, at);
    b.furthest(nearX, nearY, nearZ, onB, at);
    diff[at] = onA[at] - onB[at];
    diff[at + 1] = onA[at + 1] - onB[at + 1];
    diff[at + 2] = onA[at + 2] - onB[at + 2];
    corners++;
  }

  /** Room between the planes through the newest corner's points, times the length of nearest. */
  private double alongNewest() {
    int at = 3 * (corners - 1);
    return nearX * diff[at] + nearY * diff[at + 1] + nearZ * diff[at + 2];
  }

  private boolean isRepeated() {
    int last = 3 * (corners - 1);
    for (int at = 0; at < last; at += 3) {
      if (diff[at] == diff[last]
          && diff[at + 1] == diff[last + 1]
          && diff[at + 2] == diff[last + 2]) {
        return true;
      }
    }
    return false;
  }

  /** Keeps only the corners that carry the point nearest to the origin; false if it is inside. */
  private boolean reduce() {
    for (int k = 0; k < 4; k++) {
      weight[k] = 0;
    }
    if (corners == 1) {
      weight[0] = 1;
    } else if (corners == 2) {
      weighEdge(0, 1);
    } else if (corners == 3) {
      weighTriangle(0, 1, 2);
    } else if (!weighTetrahedron()) {
      return false;
    }
    compact();
    return true;
  }

  private void compact() {
    int kept = 0;
    nearX = 0;
    nearY = 0;
    nearZ = 0;
    for (int k = 0; k < corners; k++) {
      double share = weight[k];
      if (share > 0) {
        int from = 3 * k;
        nearX += share * diff[from];
        nearY += share * diff[from + 1];
        nearZ += share * diff[from + 2];
        if (kept < k) {
          copyCorner(from, 3 * kept);
        }
        weight[kept++] = share;
      }
    }
    corners = kept;
  }

  /**
   * Goes on from the nearest point alone, which is a point of the difference too, when the simplex
   * has become too thin to find a nearer one; false if it is a single point already.
   */
  private boolean collapse() {
    if (corners == 1) {
      return false;
    }
    for (int axis = 0; axis < 3; axis++) {
      double a = 0;
      double b = 0;
      for (int k = 0; k < corners; k++) {
        a += weight[k] * onA[3 * k + axis];
        b += weight[k] * onB[3 * k + axis];
      }
      onA[axis] = a;
      onB[axis] = b;
      diff[axis] = a - b;
    }
    corners = 1;
    weight[0] = 1;
    return true;
  }

  private void copyCorner(int from, int to) {
    for (int k = 0; k < 3; k++) {
      diff[to + k] = diff[from + k];
      onA[to + k] = onA[from + k];
      onB[to + k] = onB[from + k];
    }
  }

  private void weighEdge(int i, int j) {
    int p = 3 * i;
    int q = 3 * j;
    double x = diff[q] - diff[p];
    double y = diff[q + 1] - diff[p + 1];
    double z = diff[q + 2] - diff[p + 2];
    double along = -(x * diff[p] + y * diff[p + 1] + z * diff[p + 2]);
    double square = x * x + y * y + z * z;
    double share = square > 0 ? Math.max(0, Math.min(1, along / square)) : 0;
    weight[i] = 1 - share;
    weight[j] = share;
  }

  private void weighTriangle(int i, int j, int k) {
    int p = 3 * i;
    int q = 3 * j;
    int r = 3 * k;
    double abX = diff[q] - diff[p];
    double abY = diff[q + 1] - diff[p + 1];
    double abZ = diff[q + 2] - diff[p + 2];
    double acX = diff[r] - diff[p];
    double acY = diff[r + 1] - diff[p + 1];
    double acZ = diff[r + 2] - diff[p + 2];
    double abA = -(abX * diff[p] + abY * diff[p + 1] + abZ * diff[p + 2]);
    double acA = -(acX * diff[p] + acY * diff[p + 1] + acZ * diff[p + 2]);
    if (abA <= 0 && acA <= 0) {
      weight[i] = 1;
      return;
    }
    double abB = -(abX * diff[q] + abY * diff[q + 1] + abZ * diff[q + 2]);
    double acB = -(acX * diff[q] + acY * diff[q + 1] + acZ * diff[q + 2]);
    if (abB >= 0 && acB <= abB) {
      weight[j] = 1;
      return;
    }
    double areaC = abA * acB - abB * acA;
    if (areaC <= 0 && abA >= 0 && abB <= 0) {
      setEdge(i, j, abA, abA - abB);
      return;
    }
    double abC = -(abX * diff[r] + abY * diff[r + 1] + abZ * diff[r + 2]);
    double acC = -(acX * diff[r] + acY * diff[r + 1] + acZ * diff[r + 2]);
    if (acC >= 0 && abC <= acC) {
      weight[k] = 1;
      return;
    }
    double areaB = abC * acA - abA * acC;
    if (areaB <= 0 && acA >= 0 && acC <= 0) {
      setEdge(i, k, acA, acA - acC);
      return;
    }
    double areaA = abB * acC - abC * acB;
    double bToC = acB - abB;
    double cToB = abC - acC;
    if (areaA <= 0 && bToC >= 0 && cToB >= 0) {
      setEdge(j, k, bToC, bToC + cToB);
      return;
    }
    if (!(areaA > 0 && areaB > 0 && areaC > 0)) {
      weighNearestEdge(i, j, k);
      return;
    }
    double area = areaA + areaB + areaC;
    weight[j] = areaB / area;
    weight[k] = areaC / area;
    weight[i] = Math.max(0, 1 - weight[j] - weight[k]);
  }

  private void setEdge(int i, int j, double part, double whole) {
    double share = whole > 0 ? Math.max(0, Math.min(1, part / whole)) : 0;
    weight[i] = 1 - share;
    weight[j] = share;
  }

  /** For a triangle so thin that rounding decides on which side of an edge the origin lies. */
  private void weighNearestEdge(int i, int j, int k) {
    double ij = edgeSquare(i, j);
    double jk = edgeSquare(j, k);
    double ki = edgeSquare(k, i);
    if (ij <= jk && ij <= ki) {
      weighEdge(i, j);
    } else if (jk <= ki) {
      weighEdge(j, k);
    } else {
      weighEdge(k, i);
    }
  }

  /** Squared distance of the origin from an edge. */
  private double edgeSquare(int i, int j) {
    weighEdge(i, j);
    double x = weight[i] * diff[3 * i] + weight[j] * diff[3 * j];
    double y = weight[i] * diff[3 * i + 1] + weight[j] * diff[3 * j + 1];
    double z = weight[i] * diff[3 * i + 2] + weight[j] * diff[3 * j + 2];
    weight[i] = 0;
    weight[j] = 0;
    return x * x + y * y + z * z;
  }

  private boolean weighTetrahedron() {
    double best = Double.POSITIVE_INFINITY;
    for (int rest = 0; rest < 4; rest++) {
      int i = rest == 0 ? 1 : 0;
      int j = rest <= 1 ? 2 : 1;
      int k = rest == 3 ? 2 : 3;
      // Of a thin simplex rounding may say that it holds the origin; a plane in between knows
      // better.
      if (isApart || isBeyond(i, j, k, rest)) {
        weight[0] = 0;
        weight[1] = 0;
        weight[2] = 0;
        weight[3] = 0;
        weighTriangle(i, j, k);
        best = keepBest(best);
      }
    }
    if (best == Double.POSITIVE_INFINITY) {
      return false;
    }
    useBest();
    return true;
  }

  /** Whether the origin lies on the other side of a face from the remaining corner. */
  private boolean isBeyond(int i, int j, int k, int rest) {
    int p = 3 * i;
    int q = 3 * j;
    int r = 3 * k;
    int o = 3 * rest;
    double abX = diff[q] - diff[p];
    double abY = diff[q + 1] - diff[p + 1];
    double abZ = diff[q + 2] - diff[p + 2];
    double acX = diff[r] - diff[p];
    double acY = diff[r + 1] - diff[p + 1];
    double acZ = diff[r + 2] - diff[p + 2];
    double normalX = abY * acZ - abZ * acY;
    double normalY = abZ * acX - abX * acZ;
    double normalZ = abX * acY - abY * acX;
    double origin = -(normalX * diff[p] + normalY * diff[p + 1] + normalZ * diff[p + 2]);
    double corner =
        normalX * (diff[o] - diff[p])
            + normalY * (diff[o + 1] - diff[p + 1])
            + normalZ * (diff[o + 2] - diff[p + 2]);
    double square = normalX * normalX + normalY * normalY + normalZ * normalZ;
    return corner * corner <= FLAT_SQUARED * square || origin * corner < 0;
  }

  private double keepBest(double best) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (int k = 0; k < corners; k++) {
      x += weight[k] * diff[3 * k];
      y += weight[k] * diff[3 * k + 1];
      z += weight[k] * diff[3 * k + 2];
    }
    double square = x * x + y * y + z * z;
    if (square >= best) {
      return best;
    }
    for (int k = 0; k < 4; k++) {
      bestWeight[k] = weight[k];
    }
    return square;
  }

  private void useBest() {
    for (int k = 0; k < 4; k++) {
      weight[k] = bestWeight[k];
    }
  }

  private void write(NearestPoints near) {
    double ax = 0;
    double ay = 0;
    double az = 0;
    double bx = 0;
    double by = 0;
    double bz = 0;
    for (int k = 0; k < corners; k++) {
      double share = weight[k];
      ax += share * onA[3 * k];
      ay += share * onA[3 * k + 1];
      az += share * onA[3 * k + 2];
      bx += share * onB[3 * k];
      by += share * onB[3 * k + 1];
      bz += share * onB[3 * k + 2];
    }
    near.ax = ax;
    near.ay = ay;
    near.az = az;
    near.bx = bx;
    near.by = by;
    near.bz = bz;
    near.gapMm = Math.sqrt(nearX * nearX + nearY * nearY + nearZ * nearZ);
    near.setClear(nearX, nearY, nearZ);
  }
}
