package trammel.app.documents;

import java.util.List;
import trammel.planning.given.Given;

/**
 * A line drawing with labels, to scale. X runs to the right, Y up, in millimetres of the real
 * thing.
 *
 * @param name short name, unique within a document
 * @param lines polylines
 * @param circles circles
 * @param labels short texts
 */
public record Sketch(String name, List<Line> lines, List<Circle> circles, List<Label> labels) {
  /** How a line is drawn. */
  public enum Stroke {
    /** What is made. */
    STRONG,
    /** What is there. */
    PLAIN,
    /** Where it moves to, and what only helps. */
    LIGHT
  }

  /**
   * Straight pieces through points.
   *
   * @param stroke how it is drawn
   * @param points X and Y in turn (mm)
   */
  public record Line(Stroke stroke, double... points) {
    public Line {
      points = points.clone();
      Given.count(points.length, 4, 10_000, "Numbers of a line", "Give two points at least.");
    }

    @Override
    public double[] points() {
      return points.clone();
    }
  }

  /**
   * A circle.
   *
   * @param stroke how it is drawn
   * @param xMm centre (mm)
   * @param yMm centre (mm)
   * @param radiusMm radius (mm)
   */
  public record Circle(Stroke stroke, double xMm, double yMm, double radiusMm) {}

  /**
   * A short text, centred on a point.
   *
   * @param xMm where (mm)
   * @param yMm where (mm)
   * @param text what
   */
  public record Label(double xMm, double yMm, String text) {}

  public Sketch {
    Given.text(name, "Name of a sketch", "Give it a short name.");
    lines = List.copyOf(lines);
    circles = List.copyOf(circles);
    labels = List.copyOf(labels);
    Given.count(lines.size(), 1, 100_000, "Lines of sketch '" + name + "'", "Draw one.");
  }

  /** Left, lower, right and upper edge of everything drawn (mm). */
  double[] bounds() {
    double[] bounds = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Line line : lines) {
      for (int i = 0; i < line.points.length; i += 2) {
        stretch(bounds, line.points[i], line.points[i + 1], 0);
      }
    }
    for (Circle circle : circles) {
      stretch(bounds, circle.xMm(), circle.yMm(), circle.radiusMm());
    }
    for (Label label : labels) {
      stretch(bounds, label.xMm(), label.yMm(), LABEL_MM);
    }
    return bounds;
  }

  private static final double LABEL_MM = 30;

  private static void stretch(double[] bounds, double xMm, double yMm, double radiusMm) {
    bounds[0] = Math.min(bounds[0], xMm - radiusMm);
    bounds[1] = Math.min(bounds[1], yMm - radiusMm);
    bounds[2] = Math.max(bounds[2], xMm + radiusMm);
    bounds[3] = Math.max(bounds[3], yMm + radiusMm);
  }
}
