package trammel.reading.quantity;

/**
 * A stretch between two distances along one axis.
 *
 * @param fromMm the smaller distance, mm
 * @param toMm the greater distance, mm
 */
public record Span(double fromMm, double toMm) {
  /** Refuses a stretch whose ends are not finite or not in order. */
  public Span {
    if (!Double.isFinite(fromMm) || !Double.isFinite(toMm) || fromMm >= toMm) {
      throw new IllegalArgumentException(
          "The span from ("
              + fromMm
              + ") to ("
              + toMm
              + ") mm must be finite with the smaller distance first.");
    }
  }
}
