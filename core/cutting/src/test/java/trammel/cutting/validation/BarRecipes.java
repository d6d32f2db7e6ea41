package trammel.cutting.validation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.bars.BarPiece;
import trammel.cutting.bars.BarStock;

/**
 * Bar lists by the recipes of the published families; every bar costs 1.
 *
 * <p>Sources: E. Falkenauer, Journal of Heuristics 2 (1996) 5-30; A. Scholl, R. Klein, C. Juergens,
 * Computers and Operations Research 24 (1997) 627-645; P. Schwerin, G. Waescher, International
 * Transactions in Operational Research 4 (1997) 377-389. The ranges are those of the collection of
 * M. Delorme, M. Iori, S. Martello, European Journal of Operational Research 255 (2016) 1-20, from
 * memory, and agree with the members of each family that stand beside the tests.
 */
final class BarRecipes {
  private BarRecipes() {}

  /** Lengths from 20 to 100 in bars of 150. */
  static Instance falkenauerUniform(int pieces, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] lengths = random.ints(pieces, 20, 101).toArray();
    return instance("Falkenauer u", "u" + pieces, seed, 150, lengths);
  }

  /** Three pieces fill each bar of 1000 to the end, so that a third of the pieces is optimal. */
  static Instance falkenauerTriplets(int pieces, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] lengths = new int[pieces];
    for (int i = 0; i < pieces; i += 3) {
      lengths[i] = random.nextInt(380, 491);
      lengths[i + 1] = random.nextInt(250, (1000 - lengths[i]) / 2 + 1);
      lengths[i + 2] = 1000 - lengths[i] - lengths[i + 1];
    }
    return instance("Falkenauer t", "t" + pieces, seed, 1000, lengths);
  }

  /** Lengths from a least one to 100 in bars of 100 to 150. */
  static Instance schollOne(int pieces, int bar, int least, long seed) {
    int[] lengths = new SplittableRandom(seed).ints(pieces, least, 101).toArray();
    return instance("Scholl 1", "n" + pieces + "c" + bar + "w" + least, seed, bar, lengths);
  }

  /** On average so many pieces to a bar of 1000, the lengths varying by some of their mean. */
  static Instance schollTwo(int pieces, int perBar, int varyingPercent, long seed) {
    int mean = 1000 / perBar;
    int by = mean * varyingPercent / 100;
    int[] lengths = new SplittableRandom(seed).ints(pieces, mean - by, mean + by + 1).toArray();
    String name = "n" + pieces + "w" + perBar + "b" + varyingPercent;
    return instance("Scholl 2", name, seed, 1000, lengths);
  }

  /** 200 lengths from 20,000 to 35,000 in bars of 100,000. */
  static Instance schollThree(long seed) {
    int[] lengths = new SplittableRandom(seed).ints(200, 20_000, 35_001).toArray();
    return instance("Scholl 3", "hard", seed, 100_000, lengths);
  }

  /** Lengths from 150 to 200 in bars of 1000. */
  static Instance schwerin(int pieces, long seed) {
    int[] lengths = new SplittableRandom(seed).ints(pieces, 150, 201).toArray();
    return instance("Schwerin", "n" + pieces, seed, 1000, lengths);
  }

  private static Instance instance(
      String family, String name, long seed, int bar, int[] lengthsMm) {
    Map<Integer, Integer> counts = new TreeMap<>();
    for (int length : lengthsMm) {
      counts.merge(length, 1, Integer::sum);
    }
    List<BarPiece> pieces = new ArrayList<>();
    counts.forEach((mm, count) -> pieces.add(new BarPiece(Integer.toString(mm), mm, count)));
    BarCuttingProblem problem =
        new BarCuttingProblem(
            List.of(BarStock.bought("bar", bar, BigDecimal.ONE)), pieces, 0, 0, 0);
    return new Instance.Bars(family, family + " " + name + " seed " + seed, problem);
  }
}
