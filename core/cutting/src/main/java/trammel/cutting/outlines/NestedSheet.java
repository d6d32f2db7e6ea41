package trammel.cutting.outlines;

import java.util.List;
import trammel.cutting.sheets.SheetStock;

/**
 * One sheet and the parts nested on it.
 *
 * @param stock the size it is
 * @param parts its parts
 */
public record NestedSheet(SheetStock stock, List<PlacedOutline> parts) {
  public NestedSheet {
    parts = List.copyOf(parts);
  }
}
