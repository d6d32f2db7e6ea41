package trammel.cutting.sheets;

import java.util.List;

/**
 * One sheet and the parts cut from it.
 *
 * @param stock the size it is
 * @param parts its parts
 */
public record CutSheet(SheetStock stock, List<PlacedPart> parts) {
  public CutSheet {
    parts = List.copyOf(parts);
  }
}
