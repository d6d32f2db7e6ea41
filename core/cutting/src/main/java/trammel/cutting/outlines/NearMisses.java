package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A few nests that almost came free, to start again from; least overlap first. */
final class NearMisses {
  private static final int MOST = 10;

  private final List<Nest> nests = new ArrayList<>();
  private final List<Double> totals = new ArrayList<>();

  void clear() {
    nests.clear();
    totals.clear();
  }

  void add(Nest nest, double total) {
    int at = 0;
    while (at < totals.size() && totals.get(at) < total) {
      at++;
    }
    nests.add(at, nest.copy());
    totals.add(at, total);
    if (nests.size() > MOST) {
      nests.remove(MOST);
      totals.remove(MOST);
    }
  }

  /** Puts one of them into a nest, the better ones more often. */
  void copyOne(Nest nest, SplittableRandom random) {
    double part = random.nextDouble();
    nest.copyFrom(nests.get((int) (part * part * nests.size())));
  }
}
