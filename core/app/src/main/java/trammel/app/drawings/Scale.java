package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.reading.quantity.DecimalText;

/**
 * One axis: from where to where, and the round numbers on it.
 *
 * @param from least value
 * @param to greatest value
 * @param step distance between round numbers: 1, 2 or 5 times a power of ten
 */
record Scale(double from, double to, double step) {
  private static final int MOST_STEPS = 8;
  private static final double[] ROUND = {1, 2, 5, 10};

  /** The axis that holds these values, from a round number to a round number. */
  static Scale holding(double least, double greatest, double leastSpan) {
    double span = Math.max(greatest - least, leastSpan);
    double middle = (greatest + least) / 2;
    double step = roundStep(span / MOST_STEPS);
    double from = Math.floor((middle - span / 2) / step + 1e-9) * step;
    double to = Math.ceil((middle + span / 2) / step - 1e-9) * step;
    return new Scale(from, to, step);
  }

  private static double roundStep(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double round : ROUND) {
      if (round * power >= least * (1 - 1e-9)) {
        return round * power;
      }
    }
    return 10 * power;
  }

  /** The round numbers. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    int count = (int) Math.round((to - from) / step);
    for (int i = 0; i <= count; i++) {
      ticks.add(from + i * step);
    }
    return ticks;
  }

  /** A round number as it is written beside the axis. */
  String label(double tick) {
    int places = (int) Math.max(0, Math.min(9, -Math.floor(Math.log10(step) + 1e-9)));
    return DecimalText.fixed(tick, places);
  }

  /** Where a value lies between the ends, 0 to 1. */
  double share(double value) {
    return (value - from) / (to - from);
  }
}
