package trammel.reading.quantity;

import java.util.Optional;

/**
 * Some of the three distances of a place; the others stay as they are proposed.
 *
 * @param forwardMm forward, mm, if given
 * @param leftMm to the left, mm, if given
 * @param upMm up, mm, if given
 */
public record PartialPosition(
    Optional<Double> forwardMm, Optional<Double> leftMm, Optional<Double> upMm) {
  /** None of the three. */
  public static final PartialPosition NONE =
      new PartialPosition(Optional.empty(), Optional.empty(), Optional.empty());

  /** A place with the given distances in place of its own. */
  public Position over(Position proposed) {
    return new Position(
        forwardMm.isPresent() ? forwardMm.get() : proposed.forwardMm(),
        leftMm.isPresent() ? leftMm.get() : proposed.leftMm(),
        upMm.isPresent() ? upMm.get() : proposed.upMm());
  }

  /** True if no distance is given. */
  public boolean isEmpty() {
    return forwardMm.isEmpty() && leftMm.isEmpty() && upMm.isEmpty();
  }
}
