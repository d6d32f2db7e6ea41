package trammel.assembly.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines that lie on each other are drawn once: what is seen before what is hidden (ISO 128-2, order
 * of coinciding lines).
 */
final class Overdrawn {
  private static final double ONE_DIRECTION = 1e-4;
  private static final double ONE_LINE_MM = 0.2;
  private static final double LEAST_MM = 0.3;

  /** A straight line without ends: its direction and its distance from the origin, rounded. */
  private record Course(long direction, long distance) {}

  /** Where along its course a line begins and ends (mm). */
  private record Reach(double from, double to) {
    boolean meets(Reach other) {
      return to > other.from && from < other.to;
    }
  }

  private Overdrawn() {}

  static List<SeenLine> without(List<SeenLine> lines) {
    List<SeenLine> sorted = new ArrayList<>(lines);
    sorted.sort(Comparator.comparing(SeenLine::hidden));
    Map<Course, List<Reach>> drawn = new HashMap<>();
    List<SeenLine> kept = new ArrayList<>();
    for (SeenLine line : sorted) {
      double angle = Math.atan2(line.toY() - line.fromY(), line.toX() - line.fromX());
      // Both ways along a line are one course.
      double direction = angle < 0 ? angle + Math.PI : angle;
      if (direction > Math.PI - ONE_DIRECTION / 2) {
        direction = 0;
      }
      double cosine = Math.cos(direction);
      double sine = Math.sin(direction);
      double distanceMm = line.fromY() * cosine - line.fromX() * sine;
      Course course =
          new Course(Math.round(direction / ONE_DIRECTION), Math.round(distanceMm / ONE_LINE_MM));
      double startMm = line.fromX() * cosine + line.fromY() * sine;
      double endMm = line.toX() * cosine + line.toY() * sine;
      List<Reach> before = drawn.computeIfAbsent(course, unknown -> new ArrayList<>());
      kept.addAll(rest(line, startMm, endMm, before));
      before.add(new Reach(Math.min(startMm, endMm), Math.max(startMm, endMm)));
    }
    return kept;
  }

  private static List<SeenLine> rest(
      SeenLine line, double startMm, double endMm, List<Reach> before) {
    Reach whole = new Reach(Math.min(startMm, endMm), Math.max(startMm, endMm));
    List<Reach> open = List.of(whole);
    for (Reach drawn : before) {
      if (drawn.meets(whole)) {
        List<Reach> left = new ArrayList<>();
        open.forEach(reach -> left.addAll(less(reach, drawn)));
        open = left;
      }
    }
    double runMm = endMm - startMm;
    double leastMm = Math.min(LEAST_MM, Math.abs(runMm) / 2);
    List<SeenLine> pieces = new ArrayList<>(open.size());
    for (Reach reach : open) {
      if (reach.to - reach.from > leastMm) {
        double one = (reach.from - startMm) / runMm;
        double other = (reach.to - startMm) / runMm;
        pieces.add(line.piece(Math.min(one, other), Math.max(one, other), line.hidden()));
      }
    }
    return pieces;
  }

  private static List<Reach> less(Reach reach, Reach drawn) {
    if (!drawn.meets(reach)) {
      return List.of(reach);
    }
    List<Reach> left = new ArrayList<>(2);
    if (drawn.from > reach.from) {
      left.add(new Reach(reach.from, drawn.from));
    }
    if (drawn.to < reach.to) {
      left.add(new Reach(drawn.to, reach.to));
    }
    return left;
  }
}
