package trammel.planning.job;

import java.math.BigDecimal;
import java.util.List;

/**
 * Tax on the quote.
 *
 * @param rate rate, an exact ratio
 * @param taxable what is taxable, words out of parts, steel, supplies, labour, outside
 * @param byItem true if tax is rounded on every item, false if once on the invoice
 */
public record Tax(BigDecimal rate, List<String> taxable, boolean byItem) {
  /** Keeps its own copy of the list. */
  public Tax {
    taxable = List.copyOf(taxable);
  }
}
