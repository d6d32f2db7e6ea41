package trammel.reading.quantity;

/**
 * A place given by three distances from stated datums.
 *
 * @param forwardMm forward, mm
 * @param leftMm to the left, mm
 * @param upMm up, mm
 */
public record Position(double forwardMm, double leftMm, double upMm) {
  /** Refuses a place that is not finite. */
  public Position {
    if (!Double.isFinite(forwardMm) || !Double.isFinite(leftMm) || !Double.isFinite(upMm)) {
      throw new IllegalArgumentException(
          "The position ("
              + forwardMm
              + ", "
              + leftMm
              + ", "
              + upMm
              + ") mm must be three finite distances.");
    }
  }

  /** Whether another position is the very same place. */
  public boolean isAt(Position other) {
    return forwardMm == other.forwardMm && leftMm == other.leftMm && upMm == other.upMm;
  }
}
