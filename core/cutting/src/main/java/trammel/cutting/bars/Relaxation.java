package trammel.cutting.bars;

import java.util.List;

/** The solved pattern relaxation of (the rest of) a cutting problem. */
final class Relaxation {
  /** Patterns at a positive level. */
  final List<Pattern> patterns;

  final double[] levels;

  /** Value of the relaxation over the patterns known, price steps. */
  final double value;

  /** No plan costs less; price steps, proven in whole numbers. */
  final double lowerBound;

  /** The worths that prove the bound. */
  final PieceWorth worth;

  /** False when pieces had to be left out for want of stock. */
  final boolean coversAll;

  Relaxation(
      List<Pattern> patterns,
      double[] levels,
      double value,
      double lowerBound,
      PieceWorth worth,
      boolean coversAll) {
    this.patterns = patterns;
    this.levels = levels;
    this.value = value;
    this.lowerBound = lowerBound;
    this.worth = worth;
    this.coversAll = coversAll;
  }
}
