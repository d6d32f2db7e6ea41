package trammel.brackets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * A plate sketched without the code that draws plates: the band stretched round corners and round
 * noses, each nose as 3,600 points, less what is cut out of it, less its holes.
 */
final class Sketch {
  private static final int POINTS = 3600;

  private final List<double[]> points = new ArrayList<>();
  private final List<double[]> holes = new ArrayList<>();
  private double cutOutMm2;

  Sketch corner(double xMm, double yMm) {
    points.add(new double[] {xMm, yMm});
    return this;
  }

  /** A corner by its distance from the origin and its direction. */
  Sketch cornerAt(double radiusMm, double degrees) {
    double rad = Math.toRadians(degrees);
    return corner(radiusMm * Math.cos(rad), radiusMm * Math.sin(rad));
  }

  /** A round nose with a hole in its middle. */
  Sketch nose(double xMm, double yMm, double radiusMm, double holeMm) {
    for (int i = 0; i < POINTS; i++) {
      double rad = 2 * Math.PI * i / POINTS;
      corner(xMm + radiusMm * Math.cos(rad), yMm + radiusMm * Math.sin(rad));
    }
    holes.add(new double[] {xMm, yMm, holeMm});
    return this;
  }

  /** Four corners of a rectangle from the origin. */
  static Sketch rectangle(double lengthMm, double widthMm) {
    return new Sketch()
        .corner(0, 0)
        .corner(lengthMm, 0)
        .corner(lengthMm, widthMm)
        .corner(0, widthMm);
  }

  /** What is cut out of the band (mm2). */
  Sketch less(double areaMm2) {
    cutOutMm2 += areaMm2;
    return this;
  }

  /** The round of a tube between two corners of a saddle: a segment of a circle. */
  Sketch lessSegment(double radiusMm, double degrees) {
    double rad = Math.toRadians(degrees);
    return less(radiusMm * radiusMm / 2 * (rad - Math.sin(rad)));
  }

  List<double[]> holes() {
    return holes;
  }

  double areaMm2() {
    List<double[]> band = band();
    double twice = 0;
    for (int i = 0; i < band.size(); i++) {
      double[] from = band.get(i);
      double[] to = band.get((i + 1) % band.size());
      twice += from[0] * to[1] - to[0] * from[1];
    }
    double holesMm2 = holes.stream().mapToDouble(hole -> Math.PI * hole[2] * hole[2] / 4).sum();
    return twice / 2 - cutOutMm2 - holesMm2;
  }

  double least(int axis) {
    return points.stream().mapToDouble(point -> point[axis]).min().orElseThrow();
  }

  double most(int axis) {
    return points.stream().mapToDouble(point -> point[axis]).max().orElseThrow();
  }

  /** The points that a band stretched round all of them touches, anticlockwise (Andrew 1979). */
  private List<double[]> band() {
    List<double[]> sorted = new ArrayList<>(points);
    sorted.sort(
        Comparator.<double[]>comparingDouble(point -> point[0])
            .thenComparingDouble(point -> point[1]));
    List<double[]> band = new ArrayList<>(half(sorted));
    List<double[]> back = new ArrayList<>(sorted);
    Collections.reverse(back);
    band.addAll(half(back));
    return band;
  }

  private static List<double[]> half(List<double[]> sorted) {
    List<double[]> half = new ArrayList<>();
    for (double[] point : sorted) {
      while (half.size() > 1 && !turnsLeft(half, point)) {
        half.remove(half.size() - 1);
      }
      half.add(point);
    }
    return half.subList(0, half.size() - 1);
  }

  private static boolean turnsLeft(List<double[]> half, double[] next) {
    double[] from = half.get(half.size() - 2);
    double[] by = half.get(half.size() - 1);
    return (by[0] - from[0]) * (next[1] - from[1]) - (by[1] - from[1]) * (next[0] - from[0]) > 0;
  }
}
