package trammel.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.trade.plates.Point2;

/**
 * Cuts a flat shape with holes into triangles between its own corners: each hole is joined to what
 * lies outside it by a bridge, then ears are cut off one after another (G. H. Meisters, Polygons
 * have ears, Amer. Math. Monthly 82, 1975; the bridges after D. Eberly, Triangulation by ear
 * clipping, 2002).
 */
final class Triangulation {
  private final List<Point2> points = new ArrayList<>();

  private Triangulation() {}

  /**
   * The triangles, anticlockwise, by the numbers of the corners in the order given.
   *
   * @param rings the outer path anticlockwise, then the holes clockwise
   */
  static List<Mesh.Face> of(List<List<Point2>> rings) {
    Triangulation all = new Triangulation();
    List<List<Integer>> numbers = new ArrayList<>();
    for (List<Point2> ring : rings) {
      List<Integer> ringNumbers = new ArrayList<>(ring.size());
      for (Point2 point : ring) {
        ringNumbers.add(all.points.size());
        all.points.add(point);
      }
      numbers.add(ringNumbers);
    }
    List<Integer> outer = numbers.get(0);
    List<List<Integer>> holes = new ArrayList<>(numbers.subList(1, numbers.size()));
    holes.sort(Comparator.comparingDouble(hole -> -all.x(all.rightmost(hole))));
    for (List<Integer> hole : holes) {
      outer = all.bridged(outer, hole);
    }
    return all.ears(outer);
  }

  private double x(int number) {
    return points.get(number).xMm();
  }

  private double y(int number) {
    return points.get(number).yMm();
  }

  private int rightmost(List<Integer> ring) {
    return ring.stream().max(Comparator.comparingDouble(this::x)).orElseThrow();
  }

  /** Outer path and hole as one path, there and back over the shortest bridge that is free. */
  private List<Integer> bridged(List<Integer> outer, List<Integer> hole) {
    int from = rightmost(hole);
    int best = -1;
    double bestMm = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outer.size(); i++) {
      double mm = points.get(from).distanceMm(points.get(outer.get(i)));
      if (mm < bestMm && opensTowards(outer, i, from) && free(outer, hole, from, outer.get(i))) {
        best = i;
        bestMm = mm;
      }
    }
    if (best < 0) {
      throw new IllegalStateException("A hole has no way to the edge of its plate: " + points);
    }
    List<Integer> joined = new ArrayList<>(outer.subList(0, best + 1));
    int start = hole.indexOf(from);
    for (int i = 0; i <= hole.size(); i++) {
      joined.add(hole.get((start + i) % hole.size()));
    }
    joined.addAll(outer.subList(best, outer.size()));
    return joined;
  }

  /** Whether a point lies inside the corner at a place of the path, as seen along it. */
  private boolean opensTowards(List<Integer> path, int at, int point) {
    int before = path.get((at + path.size() - 1) % path.size());
    int here = path.get(at);
    int after = path.get((at + 1) % path.size());
    boolean leftOfIn = turn(before, here, point) > 0;
    boolean leftOfOut = turn(here, after, point) > 0;
    return turn(before, here, after) >= 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
  }

  private boolean free(List<Integer> outer, List<Integer> hole, int from, int to) {
    return misses(outer, from, to) && misses(hole, from, to);
  }

  private boolean misses(List<Integer> path, int from, int to) {
    for (int i = 0; i < path.size(); i++) {
      int a = path.get(i);
      int b = path.get((i + 1) % path.size());
      boolean shares = same(a, from) || same(b, from) || same(a, to) || same(b, to);
      if (!shares
          && turn(from, to, a) * turn(from, to, b) <= 0
          && turn(a, b, from) * turn(a, b, to) <= 0) {
        return false;
      }
    }
    return true;
  }

  private boolean same(int a, int b) {
    return a == b || x(a) == x(b) && y(a) == y(b);
  }

  private double turn(int a, int b, int c) {
    return (x(b) - x(a)) * (y(c) - y(a)) - (y(b) - y(a)) * (x(c) - x(a));
  }

  private List<Mesh.Face> ears(List<Integer> path) {
    List<Integer> left = new ArrayList<>(path);
    List<Mesh.Face> faces = new ArrayList<>(path.size());
    while (left.size() > 2) {
      int ear = ear(left);
      int size = left.size();
      int before = left.get((ear + size - 1) % size);
      int after = left.get((ear + 1) % size);
      faces.add(new Mesh.Face(before, left.get(ear), after));
      left.remove(ear);
    }
    return faces;
  }

  /** The ear with the best-shaped corner; where rounding leaves none, the flattest corner. */
  private int ear(List<Integer> path) {
    int flattest = 0;
    double leastTurn = Double.POSITIVE_INFINITY;
    for (int i = 0; i < path.size(); i++) {
      int before = path.get((i + path.size() - 1) % path.size());
      int here = path.get(i);
      int after = path.get((i + 1) % path.size());
      double turn = turn(before, here, after);
      if (turn > 0 && empty(path, before, here, after)) {
        return i;
      }
      if (Math.abs(turn) < leastTurn) {
        leastTurn = Math.abs(turn);
        flattest = i;
      }
    }
    return flattest;
  }

  private boolean empty(List<Integer> path, int a, int b, int c) {
    for (int point : path) {
      boolean corner = same(point, a) || same(point, b) || same(point, c);
      if (!corner && turn(a, b, point) >= 0 && turn(b, c, point) >= 0 && turn(c, a, point) >= 0) {
        return false;
      }
    }
    return true;
  }
}
