package trammel.planning.labour;

/**
 * The regularised incomplete beta function and its inverse. Continued fraction 26.5.8 of Abramowitz
 * and Stegun; log-gamma by Lanczos' series (g = 7, nine terms). Written here because the quote
 * needs three values of it and must not load a mathematics library for them.
 */
final class IncompleteBeta {

  private static final double TINY = 1e-300;
  private static final double TERM_TOLERANCE = 1e-13;
  private static final int MOST_TERMS = 20_000;
  private static final int MOST_STEPS = 200;

  private static final double LANCZOS_G = 7;
  private static final double[] LANCZOS = {
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
    -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
    1.5056327351493116e-7
  };

  private IncompleteBeta() {}

  /** Chance that a beta variable with these shapes is not above x, x in 0 to 1. */
  static double ratio(double x, double alpha, double beta) {
    return ratio(x, alpha, beta, logBeta(alpha, beta));
  }

  private static double ratio(double x, double alpha, double beta, double logBeta) {
    if (x <= 0) {
      return 0;
    }
    if (x >= 1) {
      return 1;
    }
    double front = Math.exp(alpha * Math.log(x) + beta * Math.log1p(-x) - logBeta);
    if (x < (alpha + 1) / (alpha + beta + 2)) {
      return front * fraction(x, alpha, beta) / alpha;
    }
    return 1 - front * fraction(1 - x, beta, alpha) / beta;
  }

  /** x with that chance: Newton's steps inside a bracket that is halved when a step leaves it. */
  static double inverse(double chance, double alpha, double beta) {
    if (chance <= 0) {
      return 0;
    }
    if (chance >= 1) {
      return 1;
    }
    double logBeta = logBeta(alpha, beta);
    double below = 0;
    double above = 1;
    double x = alpha / (alpha + beta);
    for (int i = 0; i < MOST_STEPS && above - below > 1e-14; i++) {
      double miss = ratio(x, alpha, beta, logBeta) - chance;
      if (miss > 0) {
        above = x;
      } else {
        below = x;
      }
      double density = Math.exp((alpha - 1) * Math.log(x) + (beta - 1) * Math.log1p(-x) - logBeta);
      double next = x - miss / density;
      if (Math.abs(next - x) < 1e-14) {
        return x;
      }
      x = next > below && next < above ? next : (below + above) / 2;
    }
    return x;
  }

  private static double fraction(double x, double alpha, double beta) {
    double c = 1;
    double d = 1 / away(1 - (alpha + beta) * x / (alpha + 1));
    double value = d;
    for (int m = 1; m <= MOST_TERMS; m++) {
      double even = m * (beta - m) * x / ((alpha + 2 * m - 1) * (alpha + 2 * m));
      d = 1 / away(1 + even * d);
      c = away(1 + even / c);
      value *= d * c;
      double odd = -(alpha + m) * (alpha + beta + m) * x / ((alpha + 2 * m) * (alpha + 2 * m + 1));
      d = 1 / away(1 + odd * d);
      c = away(1 + odd / c);
      double step = d * c;
      value *= step;
      if (Math.abs(step - 1) < TERM_TOLERANCE) {
        return value;
      }
    }
    return value;
  }

  private static double away(double value) {
    return Math.abs(value) < TINY ? TINY : value;
  }

  private static double logBeta(double alpha, double beta) {
    return logGamma(alpha) + logGamma(beta) - logGamma(alpha + beta);
  }

  private static double logGamma(double z) {
    double x = z - 1;
    double sum = LANCZOS[0];
    for (int i = 1; i < LANCZOS.length; i++) {
      sum += LANCZOS[i] / (x + i);
    }
    double t = x + LANCZOS_G + 0.5;
    return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
  }
}
