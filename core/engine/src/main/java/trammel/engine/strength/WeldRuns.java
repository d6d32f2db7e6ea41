package trammel.engine.strength;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Given;

/**
 * Welds anywhere in space that hold one stiff part, treated as lines that give alike in every
 * direction: the part shifts and turns about their centroid, and the force flow at a place goes
 * with how far it moves there. In one plane this is the treatment of welds as lines: even flow from
 * direct force, flow with the distance from the centroid or the axis from moments. Source:
 * Blodgett, Design of Welded Structures, section 7.4, from memory; in space the same sums about
 * three axes.
 */
public final class WeldRuns {
  /** The smaller share of stiffness that still counts as some. */
  private static final double NO_STIFFNESS = 1e-9;

  private record Line(Vector3 from, Vector3 to) {}

  private final List<Line> lines;
  private final Point3 centre;
  private final double lengthMm;
  private final DecompositionSolver turning;

  /**
   * @param runs the welds, each by its points in order (mm)
   * @throws IllegalArgumentException if there is no length of weld, or all of it lies on one
   *     straight line, about which the part could turn
   */
  public WeldRuns(List<List<Point3>> runs) {
    double length = 0;
    Vector3 sum = new Vector3(0, 0, 0);
    for (List<Point3> run : runs) {
      for (int i = 1; i < run.size(); i++) {
        double own = run.get(i - 1).distanceMm(run.get(i));
        length += own;
        sum = sum.plus(fromOrigin(run.get(i - 1).midpoint(run.get(i))).scaled(own));
      }
    }
    lengthMm = Given.positive("length of the welds (mm)", length);
    Vector3 middle = sum.scaled(1 / length);
    centre = new Point3(middle.x(), middle.y(), middle.z());
    lines = new ArrayList<>();
    for (List<Point3> run : runs) {
      for (int i = 1; i < run.size(); i++) {
        lines.add(new Line(centre.to(run.get(i - 1)), centre.to(run.get(i))));
      }
    }
    turning = solver(secondMoments());
  }

  private static double[] coordinates(Vector3 vector) {
    return new double[] {vector.x(), vector.y(), vector.z()};
  }

  private static Vector3 fromOrigin(Point3 point) {
    return new Point3(0, 0, 0).to(point);
  }

  /** Sum over the lines of r² 1 - r rᵀ (mm³), r from the centroid. */
  private double[][] secondMoments() {
    double[][] products = new double[3][3];
    for (Line line : lines) {
      double[] from = coordinates(line.from);
      double[] to = coordinates(line.to);
      double third = line.to.plus(line.from.scaled(-1)).norm() / 3;
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          products[i][j] +=
              third * (from[i] * from[j] + to[i] * to[j] + (from[i] * to[j] + to[i] * from[j]) / 2);
        }
      }
    }
    double trace = products[0][0] + products[1][1] + products[2][2];
    double[][] moments = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        moments[i][j] = (i == j ? trace : 0) - products[i][j];
      }
    }
    return moments;
  }

  private static DecompositionSolver solver(double[][] moments) {
    double largest = Math.max(moments[0][0], Math.max(moments[1][1], moments[2][2]));
    try {
      return new CholeskyDecomposition(
              new Array2DRowRealMatrix(moments), largest * NO_STIFFNESS, largest * NO_STIFFNESS)
          .getSolver();
    } catch (NonPositiveDefiniteMatrixException straight) {
      throw Given.refusal(
          "welds of a part",
          "all of them on one straight line",
          "some beside it",
          "Give both faces of the part.");
    }
  }

  /** Length of all of them (mm). */
  public double lengthMm() {
    return lengthMm;
  }

  /**
   * Largest force flow anywhere in the welds (N/mm).
   *
   * @param force what the part is pushed with (N)
   * @param at where (mm)
   * @param moment what turns it besides (Nmm)
   */
  public double largestNPerMm(Vector3 force, Point3 at, Vector3 moment) {
    Vector3 about = centre.to(at).cross(force).plus(moment);
    double[] turn = turning.solve(new Array2DRowRealMatrix(coordinates(about))).getColumn(0);
    Vector3 turned = new Vector3(turn[0], turn[1], turn[2]);
    Vector3 even = force.scaled(1 / lengthMm);
    double most = 0;
    for (Line line : lines) {
      // Linear along a line, so that it is largest at an end.
      most = Math.max(most, even.plus(turned.cross(line.from)).norm());
      most = Math.max(most, even.plus(turned.cross(line.to)).norm());
    }
    return most;
  }

  /**
   * Largest stress on the throat of fillets (MPa), all of it taken as shear there.
   *
   * @param legMm leg of the fillets (mm), above 0
   */
  public double throatMPa(Vector3 force, Point3 at, Vector3 moment, double legMm) {
    Given.positive("leg of the welds (mm)", legMm);
    return largestNPerMm(force, at, moment) / (FilletSeam.THROAT_SHARE * legMm);
  }
}
