package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.List;
import trammel.cutting.internal.Deadline;

/**
 * All patterns that a plan within a price can contain, kept few by piece worths made for it.
 *
 * <p>A pattern is ruled out when the bound and its reduced cost together exceed the price, and
 * worths that bound best rarely rule out most. Worths that solve the relaxation with the mean of
 * the patterns still possible taken once have the highest sum of bound and reduced cost over these
 * patterns (linear programming duality). They are averaged with those before, so that what was
 * ruled out stays so, for as long as that rules out more.
 */
final class PatternListing {
  /** Sums of so many sets of worths stay within a long. */
  private static final int MOST_SETS = 12;

  /** New worths that rule out a smaller part of the patterns at hand are not worth their time. */
  private static final double WORTHWHILE = 0.1;

  private static final double PART_OF_TIME = 0.3;

  private final BarModel model;
  private final PatternGeneration generation;
  private final Deadline deadline;
  private final List<PieceWorth> sets = new ArrayList<>();
  private PieceWorth mean;
  private boolean pays = true;

  /**
   * @param first worths to begin with
   */
  PatternListing(
      BarModel model, PatternGeneration generation, PieceWorth first, Deadline deadline) {
    this.model = model;
    this.generation = generation;
    this.deadline = deadline;
    this.mean = first;
    sets.add(first);
  }

  /**
   * @param price of the dearest plan of interest, price steps
   * @return all maximal patterns, or null when there are too many or time ran out
   */
  List<Pattern> within(long price, int most) {
    Deadline end = deadline.part(PART_OF_TIME);
    while (true) {
      PatternEnumeration enumeration = new PatternEnumeration(model, mean, most, end);
      if (enumeration.within(price)) {
        return enumeration.found();
      }
      if (sets.size() == MOST_SETS || end.isPast() || !sharpen(enumeration.found(), price)) {
        return null;
      }
    }
  }

  /** Finds worths against the given patterns; false when hardly any is ruled out by them. */
  private boolean sharpen(List<Pattern> possible, long price) {
    if (possible.isEmpty() || !pays) {
      return false;
    }
    PieceWorth against = generation.against(possible);
    sets.add(against);
    mean = PieceWorth.mean(sets.toArray(new PieceWorth[0]));
    double budget = mean.budget(price);
    int out = 0;
    for (Pattern pattern : possible) {
      out += mean.reducedCost(pattern) > budget ? 1 : 0;
    }
    pays = out > WORTHWHILE * possible.size();
    return pays;
  }
}
