package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.PriceBreak;
import trammel.engine.quantity.Given;

/**
 * How an item is sold. The price on a quote is that of one unit; an order is for whole packs at the
 * price that its number gets.
 *
 * @param pack the pack that it only comes in; empty if any number can be had
 * @param breaks lower prices from a number on, the smallest number first
 * @param outOfStock whether the supplier has none
 * @param alternate key of the item to order then
 */
public record Selling(
    Optional<Pack> pack, List<PriceBreak> breaks, boolean outOfStock, Optional<String> alternate) {
  /** By the piece, at one price, in stock. */
  public static final Selling PLAIN =
      new Selling(Optional.empty(), List.of(), false, Optional.empty());

  public Selling {
    List<PriceBreak> sorted = new ArrayList<>(breaks);
    sorted.sort((a, b) -> Integer.compare(a.from(), b.from()));
    breaks = List.copyOf(sorted);
  }

  /**
   * A spool, box or bottle.
   *
   * @param title what it is called, such as {@code 11 lb spool}
   * @param holds how many units it holds, above 0
   * @param price price of one pack, 0 or more
   */
  public record Pack(String title, BigDecimal holds, BigDecimal price) {
    public Pack {
      Given.text("title of a pack", title, "Say what it is, such as 11 lb spool.");
      Given.decimal("what the pack '" + title + "' holds", holds, 0, 1_000_000, "Count it.");
      Given.decimal("price of the pack '" + title + "'", price, 0, 1_000_000_000, "Give it.");
      if (holds.signum() == 0) {
        throw new IllegalArgumentException(
            "The pack '" + title + "' holds 0; allowed is more than 0. Say how much is in it.");
      }
    }
  }
}
