package trammel.assembly.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import trammel.engine.geometry.Point3;

/** Facets by the square of the picture that they reach into, so that few are asked for an edge. */
final class FacetGrid {
  private static final int MOST_SQUARES = 96;
  private static final double ROUNDING_MM = 1e-6;

  private final List<Facet> facets;
  private final List<List<Integer>> squares = new ArrayList<>();
  private final int[] askedFor;
  private double left = Double.POSITIVE_INFINITY;
  private double bottom = Double.POSITIVE_INFINITY;
  private double sideMm;
  private int columns;
  private int rows;
  private int asking;

  FacetGrid(List<Facet> facets) {
    this.facets = facets;
    askedFor = new int[facets.size()];
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Facet facet : facets) {
      left = Math.min(left, facet.leftMm());
      right = Math.max(right, facet.rightMm());
      bottom = Math.min(bottom, facet.bottomMm());
      top = Math.max(top, facet.topMm());
    }
    if (facets.isEmpty()) {
      return;
    }
    sideMm = Math.max(Math.max(right - left, top - bottom) / MOST_SQUARES, ROUNDING_MM);
    columns = column(right) + 1;
    rows = row(top) + 1;
    for (int i = 0; i < columns * rows; i++) {
      squares.add(new ArrayList<>());
    }
    for (int i = 0; i < facets.size(); i++) {
      put(i);
    }
  }

  private int column(double x) {
    return (int) Math.floor((x - left) / sideMm);
  }

  private int row(double y) {
    return (int) Math.floor((y - bottom) / sideMm);
  }

  private void put(int number) {
    Facet facet = facets.get(number);
    int firstColumn = column(facet.leftMm());
    int lastColumn = column(facet.rightMm());
    int firstRow = row(facet.bottomMm());
    int lastRow = row(facet.topMm());
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        squares.get(row * columns + column).add(number);
      }
    }
  }

  /** Every facet, each once, that may hide something of an edge. */
  void along(Point3 from, Point3 to, Consumer<Facet> asked) {
    if (facets.isEmpty()) {
      return;
    }
    asking++;
    double leftX = Math.min(from.xMm(), to.xMm());
    double rightX = Math.max(from.xMm(), to.xMm());
    for (int column = Math.max(0, column(leftX));
        column <= Math.min(columns - 1, column(rightX));
        column++) {
      // The edge's own rise within this column.
      double one = height(from, to, left + column * sideMm, from);
      double other = height(from, to, left + (column + 1) * sideMm, to);
      int first = Math.max(0, row(Math.min(one, other) - ROUNDING_MM));
      int last = Math.min(rows - 1, row(Math.max(one, other) + ROUNDING_MM));
      for (int row = first; row <= last; row++) {
        ask(squares.get(row * columns + column), from, to, asked);
      }
    }
  }

  /** Height of an edge at x; beyond its ends that of the end, and of an upright one that given. */
  private static double height(Point3 from, Point3 to, double x, Point3 ifUpright) {
    double run = to.xMm() - from.xMm();
    if (Math.abs(run) < ROUNDING_MM) {
      return ifUpright.yMm();
    }
    double share = Math.max(0, Math.min(1, (x - from.xMm()) / run));
    return from.yMm() + share * (to.yMm() - from.yMm());
  }

  private void ask(List<Integer> square, Point3 from, Point3 to, Consumer<Facet> asked) {
    for (int number : square) {
      if (askedFor[number] != asking) {
        askedFor[number] = asking;
        Facet facet = facets.get(number);
        if (facet.mayHide(from, to)) {
          asked.accept(facet);
        }
      }
    }
  }
}
