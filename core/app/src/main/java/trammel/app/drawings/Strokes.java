package trammel.app.drawings;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lines that meet end to end, drawn as one stroke each, so that dashes run on round a curve. */
final class Strokes {
  /** Ends this near on the paper are one. */
  private static final double ONE_POINT_MM = 0.02;

  private final Paper paper;
  private final Map<Pen, List<Piece>> pieces = new LinkedHashMap<>();

  private record Spot(long x, long y) {}

  private record Piece(double fromX, double fromY, double toX, double toY) {
    Spot from() {
      return spot(fromX, fromY);
    }

    Spot to() {
      return spot(toX, toY);
    }

    Piece turned() {
      return new Piece(toX, toY, fromX, fromY);
    }
  }

  Strokes(Paper paper) {
    this.paper = paper;
  }

  private static Spot spot(double x, double y) {
    return new Spot(Math.round(x / ONE_POINT_MM), Math.round(y / ONE_POINT_MM));
  }

  void add(double fromX, double fromY, double toX, double toY, Pen pen) {
    pieces
        .computeIfAbsent(pen, unknown -> new ArrayList<>())
        .add(new Piece(fromX, fromY, toX, toY));
  }

  /** Fine pens first, so that a strong line runs over a fine one. */
  void draw() {
    pieces.entrySet().stream()
        .sorted((one, other) -> Double.compare(one.getKey().widthMm(), other.getKey().widthMm()))
        .forEach(entry -> draw(entry.getValue(), entry.getKey()));
  }

  private void draw(List<Piece> all, Pen pen) {
    Map<Spot, Deque<Integer>> ends = new HashMap<>();
    for (int i = 0; i < all.size(); i++) {
      ends.computeIfAbsent(all.get(i).from(), unknown -> new ArrayDeque<>()).add(i);
      ends.computeIfAbsent(all.get(i).to(), unknown -> new ArrayDeque<>()).add(i);
    }
    boolean[] drawn = new boolean[all.size()];
    for (int i = 0; i < all.size(); i++) {
      if (!drawn[i]) {
        drawn[i] = true;
        Deque<Piece> stroke = new ArrayDeque<>(List.of(all.get(i)));
        Optional<Piece> next = next(stroke.getLast().to(), all, ends, drawn);
        while (next.isPresent()) {
          stroke.addLast(next.get());
          next = next(stroke.getLast().to(), all, ends, drawn);
        }
        next = next(stroke.getFirst().from(), all, ends, drawn);
        while (next.isPresent()) {
          stroke.addFirst(next.get().turned());
          next = next(stroke.getFirst().from(), all, ends, drawn);
        }
        draw(stroke, pen);
      }
    }
  }

  /** A piece not drawn yet that begins at a spot, turned so if need be; empty if there is none. */
  private static Optional<Piece> next(
      Spot spot, List<Piece> all, Map<Spot, Deque<Integer>> ends, boolean[] drawn) {
    Deque<Integer> here = ends.getOrDefault(spot, new ArrayDeque<>());
    while (!here.isEmpty()) {
      int number = here.poll();
      if (!drawn[number]) {
        drawn[number] = true;
        Piece piece = all.get(number);
        return Optional.of(piece.from().equals(spot) ? piece : piece.turned());
      }
    }
    return Optional.empty();
  }

  private void draw(Deque<Piece> stroke, Pen pen) {
    double[] xs = new double[stroke.size() + 1];
    double[] ys = new double[stroke.size() + 1];
    xs[0] = stroke.getFirst().fromX();
    ys[0] = stroke.getFirst().fromY();
    int count = 1;
    for (Piece piece : stroke) {
      xs[count] = piece.toX();
      ys[count++] = piece.toY();
    }
    paper.path(xs, ys, pen);
  }
}
