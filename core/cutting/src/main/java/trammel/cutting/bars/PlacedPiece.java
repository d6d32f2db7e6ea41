package trammel.cutting.bars;

/**
 * A piece in its place on a bar.
 *
 * @param pieceId the piece as the problem calls it
 * @param atMm distance of its near end from the front end of the bar, mm
 * @param lengthMm its length, mm
 */
public record PlacedPiece(String pieceId, double atMm, double lengthMm) {}
