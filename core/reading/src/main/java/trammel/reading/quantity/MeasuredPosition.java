package trammel.reading.quantity;

/**
 * A place given by three measured distances from stated datums.
 *
 * @param forward forward
 * @param left to the left
 * @param up up
 */
public record MeasuredPosition(Measurement forward, Measurement left, Measurement up) {
  /** The place by the mean of each reading. */
  public Position mean() {
    return new Position(forward.meanMm(), left.meanMm(), up.meanMm());
  }
}
