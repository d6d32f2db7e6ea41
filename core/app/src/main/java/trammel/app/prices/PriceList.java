package trammel.app.prices;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.brackets.material.PriceBreak;

/**
 * A supplier's list, read and matched to the catalog.
 *
 * @param file the list
 * @param lines how many lines it has below its headings
 * @param columns the headings that are read, by what they are taken for
 * @param others headings that are not read
 * @param prices what it says of things in the catalog, in the order of the list
 * @param unknown lines that are of nothing in the catalog
 */
public record PriceList(
    Path file,
    int lines,
    Map<PriceColumn, String> columns,
    List<String> others,
    List<NewPrice> prices,
    List<Unknown> unknown) {
  /** A price this many times what it was, or a part of it, may be a slip. */
  private static final BigDecimal FAR = new BigDecimal("2");

  public PriceList {
    others = List.copyOf(others);
    prices = List.copyOf(prices);
    unknown = List.copyOf(unknown);
  }

  /**
   * What a list says of one thing.
   *
   * @param priced the thing, with its price of before
   * @param price the price of one
   * @param packPrice the price of its pack, if it comes in packs
   * @param breaks lower prices from a number on
   * @param knownAs what the supplier calls it
   */
  record NewPrice(
      Priced priced,
      BigDecimal price,
      Optional<BigDecimal> packPrice,
      List<PriceBreak> breaks,
      Set<String> knownAs) {
    /** True if anything of it is other than before. */
    boolean isChanged() {
      boolean pack =
          packPrice.isPresent()
              && packPrice.get().compareTo(priced.pack().orElseThrow().price()) != 0;
      return price.compareTo(priced.price()) != 0 || pack || !sameBreaks();
    }

    private boolean sameBreaks() {
      if (breaks.size() != priced.breaks().size()) {
        return false;
      }
      for (int i = 0; i < breaks.size(); i++) {
        PriceBreak one = breaks.get(i);
        PriceBreak other = priced.breaks().get(i);
        if (one.from() != other.from() || one.price().compareTo(other.price()) != 0) {
          return false;
        }
      }
      return true;
    }

    /** True if it is so far from the price of before that it may be a slip. */
    boolean isFar() {
      BigDecimal was = priced.price();
      return was.signum() > 0
          && (price.compareTo(was.multiply(FAR)) > 0 || price.multiply(FAR).compareTo(was) < 0);
    }
  }

  /**
   * A line that is of nothing in the catalog.
   *
   * @param line its line in the file
   * @param words what it says
   */
  record Unknown(int line, String words) {}

  /** What changes. */
  List<NewPrice> changes() {
    return prices.stream().filter(NewPrice::isChanged).toList();
  }

  /** True if something may be a slip. */
  public boolean hasFar() {
    return prices.stream().anyMatch(NewPrice::isFar);
  }
}
