package trammel.cutting.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.StripProblem;

/**
 * Strips whose parts come from cutting up a square of 200, so that 200 is the optimum.
 *
 * <p>After E. Hopper, Two-dimensional packing utilising evolutionary algorithms and other
 * meta-heuristic methods, PhD thesis, Cardiff University (2000): numbers of parts, the side of 200
 * and the two kinds, cut by a shear or not, are hers; where the cuts fall is our own.
 */
final class StripRecipes {
  private static final int SIDE = 200;
  private static final int LEAST = 4;

  private StripRecipes() {}

  /** Cuts from edge to edge only. */
  static Instance sheared(int parts, long seed) {
    return instance("Hopper T", parts, seed, false);
  }

  /** Cuts in pinwheels as well, which no shear makes. */
  static Instance pinwheels(int parts, long seed) {
    return instance("Hopper N", parts, seed, true);
  }

  private static Instance instance(String family, int parts, long seed, boolean pinwheels) {
    SplittableRandom random = new SplittableRandom(seed);
    List<int[]> pieces = new ArrayList<>();
    pieces.add(new int[] {SIDE, SIDE});
    while (pieces.size() < parts) {
      int at = largeOne(pieces, random);
      int[] piece = pieces.remove(at);
      if (pinwheels && parts - pieces.size() > 4 && Math.min(piece[0], piece[1]) >= 4 * LEAST) {
        pinwheel(piece, pieces, random);
      } else {
        shear(piece, pieces, random);
      }
    }
    List<SheetPart> list = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      list.add(new SheetPart("part " + i, pieces.get(i)[0], pieces.get(i)[1], 1, false));
    }
    String name = family + " n" + parts + " seed " + seed;
    return new Instance.Strip(
        family, name, OptionalDouble.of(SIDE), new StripProblem(SIDE, list, 0, 0));
  }

  /** The larger of three drawn, so that sizes do not fall too far apart. */
  private static int largeOne(List<int[]> pieces, SplittableRandom random) {
    int best = random.nextInt(pieces.size());
    for (int i = 0; i < 2; i++) {
      int other = random.nextInt(pieces.size());
      best = area(pieces.get(other)) > area(pieces.get(best)) ? other : best;
    }
    return best;
  }

  private static int area(int[] piece) {
    return piece[0] * piece[1];
  }

  private static void shear(int[] piece, List<int[]> pieces, SplittableRandom random) {
    boolean upright = random.nextInt(piece[0] + piece[1]) < piece[0];
    int whole = upright ? piece[0] : piece[1];
    if (whole < 2) {
      pieces.add(piece);
      return;
    }
    int least = Math.min(LEAST, whole / 2);
    int cut = random.nextInt(least, whole - least + 1);
    pieces.add(upright ? new int[] {cut, piece[1]} : new int[] {piece[0], cut});
    pieces.add(upright ? new int[] {whole - cut, piece[1]} : new int[] {piece[0], whole - cut});
  }

  /** Four pieces round a fifth one. */
  private static void pinwheel(int[] piece, List<int[]> pieces, SplittableRandom random) {
    int w = piece[0];
    int h = piece[1];
    int left = random.nextInt(LEAST, w / 2);
    int right = random.nextInt(w / 2 + 1, w - LEAST + 1);
    int low = random.nextInt(LEAST, h / 2);
    int high = random.nextInt(h / 2 + 1, h - LEAST + 1);
    pieces.add(new int[] {right, low});
    pieces.add(new int[] {w - right, high});
    pieces.add(new int[] {w - left, h - high});
    pieces.add(new int[] {left, h - low});
    pieces.add(new int[] {right - left, high - low});
  }
}
