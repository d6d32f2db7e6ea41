package trammel.engine.mechanism;

import trammel.engine.motion.LinearSystem;
import trammel.engine.motion.PathEquations;

/**
 * The equations of a mechanism along a line in the plane of heave and roll. One that closes
 * exactly: no link, bush or joint gives. Any other: the energy of links and bushes is least while
 * the joints hold, by Lagrange's multipliers, one more unknown for each equation of a joint; its
 * derivatives leave out the small part that strain times curvature adds, which changes the way to
 * the answer and not the answer (the method of Gauss and Newton).
 */
final class MechanismPath implements PathEquations {
  private final Strain strain;
  private final Coordinates coordinates;
  private final boolean closes;
  private final double heavePart;
  private final double rollPart;
  private final double[] weights;
  private final double[] free;
  private final double[] residual;
  private final double[][] byUnknown;
  private final double[] byWay;

  MechanismPath(Coordinates coordinates, Strain strain, double heavePart, double rollPart) {
    this.strain = strain;
    this.coordinates = coordinates;
    this.heavePart = heavePart;
    this.rollPart = rollPart;
    closes = strain.elastic.length + strain.exact.length == coordinates.free;
    double stiffest = 0;
    for (double stiffness : strain.stiffness) {
      stiffest = Math.max(stiffest, stiffness);
    }
    weights = new double[strain.stiffness.length];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = strain.stiffness[i] / stiffest;
    }
    free = new double[coordinates.free];
    int size = closes ? coordinates.free : coordinates.free + strain.exact.length;
    residual = new double[size];
    byUnknown = new double[size][size];
    byWay = new double[size];
  }

  @Override
  public int size() {
    return residual.length;
  }

  @Override
  public void evaluate(double[] unknownsMm, double wayMm) {
    System.arraycopy(unknownsMm, 0, free, 0, free.length);
    strain.evaluate(free, wayMm * heavePart, wayMm * rollPart);
    if (closes) {
      evaluateClosing();
    } else {
      evaluateYielding(unknownsMm);
    }
  }

  private double alongWay(double[] row) {
    return heavePart * row[coordinates.heave] + rollPart * row[coordinates.roll];
  }

  private void evaluateClosing() {
    int elastic = strain.elastic.length;
    for (int i = 0; i < residual.length; i++) {
      boolean yields = i < elastic;
      double[] row = yields ? strain.elasticBy[i] : strain.exactBy[i - elastic];
      residual[i] = yields ? strain.elastic[i] : strain.exact[i - elastic];
      System.arraycopy(row, 0, byUnknown[i], 0, free.length);
      byWay[i] = alongWay(row);
    }
  }

  private void evaluateYielding(double[] unknowns) {
    int n = free.length;
    for (int j = 0; j < n; j++) {
      residual[j] = 0;
      byWay[j] = 0;
      for (int k = 0; k < n; k++) {
        byUnknown[j][k] = 0;
      }
    }
    for (int i = 0; i < weights.length; i++) {
      double[] row = strain.elasticBy[i];
      double along = alongWay(row);
      for (int j = 0; j < n; j++) {
        double weighted = weights[i] * row[j];
        residual[j] += weighted * strain.elastic[i];
        byWay[j] += weighted * along;
        for (int k = 0; k < n; k++) {
          byUnknown[j][k] += weighted * row[k];
        }
      }
    }
    for (int i = 0; i < strain.exact.length; i++) {
      double[] row = strain.exactBy[i];
      residual[n + i] = strain.exact[i];
      byWay[n + i] = alongWay(row);
      for (int j = 0; j < n; j++) {
        residual[j] += row[j] * unknowns[n + i];
        byUnknown[j][n + i] = row[j];
        byUnknown[n + i][j] = row[j];
      }
    }
  }

  @Override
  public double residual(int row) {
    return residual[row];
  }

  @Override
  public double byUnknown(int row, int column) {
    return byUnknown[row][column];
  }

  @Override
  public double byWay(int row) {
    return byWay[row];
  }

  @Override
  public double signedDeterminant() {
    return LinearSystem.solve(copyOfByUnknown(), new double[residual.length]);
  }

  /** How the unknowns follow the way at the last {@link #evaluate}. */
  double[] follow() {
    double[] rates = new double[residual.length];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = -byWay[i];
    }
    LinearSystem.solve(copyOfByUnknown(), rates);
    return rates;
  }

  private double[][] copyOfByUnknown() {
    double[][] copy = new double[byUnknown.length][];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = byUnknown[i].clone();
    }
    return copy;
  }
}
