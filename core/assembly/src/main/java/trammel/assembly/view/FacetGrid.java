package trammel.assembly.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import trammel.engine.geometry.Point3;

/**
 * Facets by the square of the picture that they reach into, those nearest to the eye first, so that
 * few are asked for an edge.
 */
final class FacetGrid {
  private static final int MOST_SQUARES = 96;
  private static final double ROUNDING_MM = 1e-6;

  private final List<Facet> facets;

  /** Numbers of the facets, square after square; those of square i from {@code firsts[i]} on. */
  private int[] numbers = {};

  private int[] firsts = {};

  private final int[] askedFor;
  private double left = Double.POSITIVE_INFINITY;
  private double bottom = Double.POSITIVE_INFINITY;
  private double sideMm;
  private int columns;
  private int rows;
  private int asking;

  FacetGrid(List<Facet> facets) {
    this.facets = new ArrayList<>(facets);
    this.facets.sort(Comparator.comparingDouble(Facet::nearestMm).reversed());
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
    fill();
  }

  private int column(double x) {
    return (int) Math.floor((x - left) / sideMm);
  }

  private int row(double y) {
    return (int) Math.floor((y - bottom) / sideMm);
  }

  /** Counts the facets of each square, then puts their numbers in. */
  private void fill() {
    firsts = new int[columns * rows + 1];
    for (Facet facet : facets) {
      Squares squares = squares(facet);
      for (int row = squares.firstRow; row <= squares.lastRow; row++) {
        for (int column = squares.firstColumn; column <= squares.lastColumn; column++) {
          firsts[row * columns + column + 1]++;
        }
      }
    }
    for (int square = 0; square < columns * rows; square++) {
      firsts[square + 1] += firsts[square];
    }
    numbers = new int[firsts[columns * rows]];
    int[] next = firsts.clone();
    for (int number = 0; number < facets.size(); number++) {
      Squares squares = squares(facets.get(number));
      for (int row = squares.firstRow; row <= squares.lastRow; row++) {
        for (int column = squares.firstColumn; column <= squares.lastColumn; column++) {
          numbers[next[row * columns + column]++] = number;
        }
      }
    }
  }

  /** The squares that a facet's box reaches into. */
  private record Squares(int firstColumn, int lastColumn, int firstRow, int lastRow) {}

  private Squares squares(Facet facet) {
    return new Squares(
        column(facet.leftMm()), column(facet.rightMm()), row(facet.bottomMm()), row(facet.topMm()));
  }

  /**
   * The facets that may hide something of an edge, each once.
   *
   * @param goesOn is given one after the other until it answers that it has seen enough
   */
  void along(Point3 from, Point3 to, Predicate<Facet> goesOn) {
    if (facets.isEmpty()) {
      return;
    }
    asking++;
    Facet.Box box = Facet.Box.round(from, to);
    for (int column = Math.max(0, column(box.leftMm()));
        column <= Math.min(columns - 1, column(box.rightMm()));
        column++) {
      // The edge's own rise within this column.
      double one = height(from, to, left + column * sideMm, from);
      double other = height(from, to, left + (column + 1) * sideMm, to);
      int first = Math.max(0, row(Math.min(one, other) - ROUNDING_MM));
      int last = Math.min(rows - 1, row(Math.max(one, other) + ROUNDING_MM));
      for (int row = first; row <= last; row++) {
        if (!goesOn(row * columns + column, box, goesOn)) {
          return;
        }
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

  private boolean goesOn(int square, Facet.Box box, Predicate<Facet> goesOn) {
    for (int i = firsts[square]; i < firsts[square + 1]; i++) {
      int number = numbers[i];
      Facet facet = facets.get(number);
      if (!facet.isBefore(box)) {
        // Nor is any that comes after it.
        return true;
      }
      if (askedFor[number] != asking) {
        askedFor[number] = asking;
        if (facet.meets(box) && !goesOn.test(facet)) {
          return false;
        }
      }
    }
    return true;
  }
}
