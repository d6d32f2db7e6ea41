package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The displacements of all brackets and of the axle that fit the readings best: weighted least
 * squares by Gauss and Newton, each reading weighted by the inverse of its variance, each unknown
 * held by a wide prior so that what is not measured stays where it is planned. A reading that is
 * good to a tolerance either way has the standard deviation tolerance/root 3 (JCGM 100:2008,
 * 4.3.7), less by the root of how often it was read.
 *
 * <p>A reading that does not fit the others is found by its residual over the residual's own
 * standard deviation. Source: Baarda, A testing procedure for use in geodetic networks, 1968, from
 * memory.
 */
final class TackFit {
  private static final int ROUNDS = 4;
  private static final double STEP = 1e-4;
  private static final double ROOT_3 = Math.sqrt(3);

  /** Below this share of its variance a residual says nothing of its reading. */
  private static final double LEAST_CHECKED = 0.02;

  private final TackModel model;
  private final List<TackReading> readings;
  private final double[] deviations;
  private final double[] unknowns;
  private final RealMatrix covariance;
  private final double[] standardResiduals;
  private double misfit;
  private double freedoms;

  TackFit(TackModel model, List<TackReading> readings) {
    this.model = model;
    this.readings = List.copyOf(readings);
    deviations = new double[readings.size()];
    for (int i = 0; i < deviations.length; i++) {
      TackReading reading = readings.get(i);
      double instrument = model.target(reading.id()).orElseThrow().instrument();
      deviations[i] = instrument / ROOT_3 / Math.sqrt(reading.values().size());
    }
    unknowns = new double[model.unknowns()];
    RealMatrix inverse = null;
    for (int i = 0; i < ROUNDS; i++) {
      inverse = improve();
    }
    covariance = inverse;
    standardResiduals = residuals(jacobian());
  }

  /** One step; returns the inverse of the normal matrix. */
  private RealMatrix improve() {
    double[][] slopes = jacobian();
    double[] priors = model.priors();
    RealMatrix normal = new Array2DRowRealMatrix(unknowns.length, unknowns.length);
    RealVector right = new ArrayRealVector(unknowns.length);
    for (int k = 0; k < unknowns.length; k++) {
      double weight = 1 / (priors[k] * priors[k]);
      normal.setEntry(k, k, weight);
      right.setEntry(k, -weight * unknowns[k]);
    }
    for (int i = 0; i < slopes.length; i++) {
      double weight = 1 / (deviations[i] * deviations[i]);
      double left = readings.get(i).mean() - model.value(readings.get(i).id(), unknowns);
      for (int k = 0; k < unknowns.length; k++) {
        if (slopes[i][k] != 0) {
          right.addToEntry(k, weight * slopes[i][k] * left);
          for (int m = 0; m <= k; m++) {
            normal.addToEntry(k, m, weight * slopes[i][k] * slopes[i][m]);
          }
        }
      }
    }
    for (int k = 0; k < unknowns.length; k++) {
      for (int m = 0; m < k; m++) {
        normal.setEntry(m, k, normal.getEntry(k, m));
      }
    }
    RealMatrix inverse = new CholeskyDecomposition(normal).getSolver().getInverse();
    RealVector step = inverse.operate(right);
    for (int k = 0; k < unknowns.length; k++) {
      unknowns[k] += step.getEntry(k);
    }
    return inverse;
  }

  private double[][] jacobian() {
    double[][] slopes = new double[readings.size()][unknowns.length];
    double[] shifted = unknowns.clone();
    for (int k = 0; k < unknowns.length; k++) {
      shifted[k] = unknowns[k] + STEP;
      for (int i = 0; i < slopes.length; i++) {
        slopes[i][k] = model.value(readings.get(i).id(), shifted);
      }
      shifted[k] = unknowns[k] - STEP;
      for (int i = 0; i < slopes.length; i++) {
        slopes[i][k] = (slopes[i][k] - model.value(readings.get(i).id(), shifted)) / (2 * STEP);
      }
      shifted[k] = unknowns[k];
    }
    return slopes;
  }

  private double[] residuals(double[][] slopes) {
    double[] standard = new double[readings.size()];
    for (int i = 0; i < standard.length; i++) {
      RealVector row = new ArrayRealVector(slopes[i]);
      double variance = deviations[i] * deviations[i];
      double left = readings.get(i).mean() - model.value(readings.get(i).id(), unknowns);
      double own = 1 - row.dotProduct(covariance.operate(row)) / variance;
      misfit += left * left / variance;
      freedoms += own;
      standard[i] = own > LEAST_CHECKED ? left / Math.sqrt(variance * own) : 0;
    }
    return standard;
  }

  /** Weighted sum of squares of what is left of the readings. */
  double misfit() {
    return misfit;
  }

  /** How many readings there are beyond those that the unknowns take up. */
  double freedoms() {
    return freedoms;
  }

  /** Residual of a reading over its own standard deviation. */
  double standardResidual(int reading) {
    return standardResiduals[reading];
  }

  List<TackReading> readings() {
    return readings;
  }

  /** How far a bracket is off: along, left, square (mm). */
  double[] displacement(Mount mount) {
    int at = model.first(mount);
    return new double[] {unknowns[at], unknowns[at + 1], unknowns[at + 2]};
  }

  /** Standard deviation of one component of a bracket's displacement (mm). */
  double deviationMm(Mount mount, int axis) {
    int at = model.first(mount) + axis;
    return Math.sqrt(covariance.getEntry(at, at));
  }

  /** Squared distance of a bracket from its planned place in its own uncertainty. */
  double significance(Mount mount) {
    int at = model.first(mount);
    RealMatrix own = covariance.getSubMatrix(at, at + 2, at, at + 2);
    RealVector off = new ArrayRealVector(displacement(mount));
    return off.dotProduct(new LUDecomposition(own).getSolver().solve(off));
  }

  /** The axle's own displacement (mm) and turns (rad): along, left, square, roll, pitch, yaw. */
  double[] axle() {
    double[] axle = new double[6];
    System.arraycopy(unknowns, unknowns.length - axle.length, axle, 0, axle.length);
    return axle;
  }

  /** The brackets in their order. */
  List<Mount> mounts() {
    return new ArrayList<>(model.mounts());
  }
}
