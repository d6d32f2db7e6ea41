package trammel.planning.catalog;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.PriceBreak;
import trammel.engine.quantity.Given;
import trammel.reading.tree.Location;

/**
 * What a supplier's list says something costs. It takes the place of the price of the entry of that
 * name, whatever section it is in; price breaks of before go with the price that they belonged to.
 *
 * @param key name of an item, bar, plate or bolt size
 * @param price price of one, for what is bought by the piece
 * @param packPrice price of a pack, for what is bought by the pack
 * @param nutPrice price of a lock nut, for bolts
 * @param washerPrice price of a washer, for bolts
 * @param breaks lower prices from a number on
 * @param sizes prices by length, or by width and length
 * @param knownAs what the supplier calls it: numbers of its own
 * @param pricedOn the day of the price
 * @param source where it comes from
 * @param where where it is written
 */
public record ListPrice(
    String key,
    Optional<BigDecimal> price,
    Optional<BigDecimal> packPrice,
    Optional<BigDecimal> nutPrice,
    Optional<BigDecimal> washerPrice,
    List<PriceBreak> breaks,
    List<Size> sizes,
    List<String> knownAs,
    LocalDate pricedOn,
    String source,
    Location where) {
  public ListPrice {
    Given.text("name of a list price", key, "Name an entry of the catalog.");
    Given.present("day of the price of '" + key + "'", pricedOn, "Say of which day it is.");
    Given.text("source of the price of '" + key + "'", source, "Say where it comes from.");
    breaks = List.copyOf(breaks);
    sizes = List.copyOf(sizes);
    knownAs = List.copyOf(knownAs);
  }

  /**
   * The price of one length of a bar or a bolt, or of one sheet.
   *
   * @param lengthMm length (mm), above 0
   * @param widthMm width of a sheet (mm); 0 for a bar or a bolt
   * @param price price of one
   * @param breaks lower prices from a number on
   */
  public record Size(double lengthMm, double widthMm, BigDecimal price, List<PriceBreak> breaks) {
    /** Sizes no further apart than this are one; they differ by rounding only (mm). */
    private static final double SAME_MM = 0.05;

    public Size {
      Given.positive("length of a priced size", lengthMm, 20_000, "mm", "Give its length.");
      Given.within("width of a priced size", widthMm, 0, 10_000, "mm", "Give its width.");
      Given.decimal("price of a size", price, 0, 1_000_000_000, "Give the price of one.");
      breaks = List.copyOf(breaks);
    }

    /** True for the same length and width. */
    public boolean is(double otherLengthMm, double otherWidthMm) {
      return Math.abs(lengthMm - otherLengthMm) < SAME_MM
          && Math.abs(widthMm - otherWidthMm) < SAME_MM;
    }
  }
}
