package trammel.cutting.bars;

import java.util.List;

/**
 * One bar and what is cut from it, front end first.
 *
 * @param stock the stock length it is
 * @param pieces its pieces in order of position
 * @param offcutMm what is left at the far end after the last cut, clamp stub included, mm
 */
public record CutBar(BarStock stock, List<PlacedPiece> pieces, double offcutMm) {
  public CutBar {
    pieces = List.copyOf(pieces);
  }
}
