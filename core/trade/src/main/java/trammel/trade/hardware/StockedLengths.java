package trammel.trade.hardware;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trammel.trade.given.Dimension;

/** The bolt lengths a supplier or the shop's bin has, mm, kept in rising order. */
public record StockedLengths(List<Double> lengthsMm) {
  public StockedLengths {
    List<Double> rising = new ArrayList<>(lengthsMm);
    for (Double lengthMm : rising) {
      Dimension.positiveMm("stocked bolt length", lengthMm);
    }
    Collections.sort(rising);
    if (rising.isEmpty()) {
      throw Dimension.refuse(
          "list of stocked bolt lengths", "empty", "one length or more", "List what is stocked.");
    }
    lengthsMm = List.copyOf(rising);
  }

  /**
   * The shortest stocked length that is long enough.
   *
   * @throws IllegalArgumentException when none is
   */
  public double atLeastMm(double neededMm) {
    Dimension.positiveMm("needed bolt length", neededMm);
    for (double lengthMm : lengthsMm) {
      // A bolt that is short by less than the rounding of inches to mm is long enough.
      if (lengthMm >= neededMm - 1e-6) {
        return lengthMm;
      }
    }
    throw Dimension.refuse(
        "needed bolt length",
        Dimension.lengthText(neededMm),
        "up to the longest stocked, " + Dimension.lengthText(lengthsMm.get(lengthsMm.size() - 1)),
        "Order a longer bolt and add its length to the list, or make the grip shorter.");
  }
}
