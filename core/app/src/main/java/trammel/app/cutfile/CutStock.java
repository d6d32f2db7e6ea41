package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One bar, sheet or strip with what is cut from it, in the unit of the file.
 *
 * @param id what the file calls it; {@code strip} for a strip
 * @param size length of a bar; width and height of a sheet; width and used length of a strip
 * @param pieces its pieces
 * @param left what is left at the far end of a bar; empty for sheets and strips
 */
public record CutStock(
    String id, List<BigDecimal> size, List<CutPiece> pieces, Optional<BigDecimal> left) {
  public CutStock {
    size = List.copyOf(size);
    pieces = List.copyOf(pieces);
  }
}
