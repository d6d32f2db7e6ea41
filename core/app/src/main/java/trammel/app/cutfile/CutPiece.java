package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.List;

/**
 * A piece in its place, in the unit of the file.
 *
 * @param id the id of an outline, as the text or the number it is in the file; blank for others
 * @param size length of a piece of bar, or width and height of a rectangle as drawn; empty for an
 *     outline
 * @param x on a bar, distance of the near end from the front end; of a rectangle, its left edge as
 *     it lies; of an outline, where the origin of its drawing comes to lie
 * @param y as {@code x}, across; 0 on a bar
 * @param turn degrees counter-clockwise; 0 on a bar
 */
public record CutPiece(
    Object id, List<BigDecimal> size, BigDecimal x, BigDecimal y, BigDecimal turn) {
  public CutPiece {
    size = List.copyOf(size);
  }
}
