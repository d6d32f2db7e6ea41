package trammel.planning.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Tax on the quote.
 *
 * @param name what it is called; empty for the word of the shop
 * @param rate rate, an exact ratio
 * @param taxable what is taxable, words out of parts, steel, supplies, labour, outside, freight and
 *     fees
 * @param byItem true if tax is rounded on every item, false if once on the invoice
 */
public record Tax(Optional<String> name, BigDecimal rate, List<String> taxable, boolean byItem) {
  /** Keeps its own copy of the list. */
  public Tax {
    taxable = List.copyOf(taxable);
  }
}
