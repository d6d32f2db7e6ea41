package trammel.cutting.outlines;

import java.util.List;
import trammel.cutting.CuttingStatus;

/**
 * Outlines nested on a strip.
 *
 * @param parts the parts in their places
 * @param lengthMm length of strip used, margins included, mm
 * @param lowerBoundMm no plan needs less than this, mm
 * @param status whether the length is proven to be the least
 * @param seconds how long the search took
 */
public record NestingStripPlan(
    List<PlacedOutline> parts,
    double lengthMm,
    double lowerBoundMm,
    CuttingStatus status,
    double seconds) {
  public NestingStripPlan {
    parts = List.copyOf(parts);
  }
}
