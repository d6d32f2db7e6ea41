package trammel.engine.clearance;

/**
 * Two bodies that are meant to touch, so that their contact is no finding.
 *
 * <p>A link always runs into its own bracket and comes close to what the bracket stands on. Either
 * the two bodies are not compared at all, or the link is compared without the part of its centre
 * line within a stated distance of one end. Its round end still reaches a radius beyond that cut.
 *
 * @param name a body; the one that is cut back
 * @param joinedTo the body that it is joined to
 * @param leftOutAtFrameEndMm length of the first body's centre line not compared, from its
 *     frame-fixed end; at least 0, infinite to compare nothing
 * @param leftOutAtAxleEndMm the same from its axle-moved end
 */
public record Joint(
    String name, String joinedTo, double leftOutAtFrameEndMm, double leftOutAtAxleEndMm) {

  /**
   * @throws IllegalArgumentException if the names are the same or a length is negative or not a
   *     number
   */
  public Joint {
    if (name.equals(joinedTo)) {
      throw new IllegalArgumentException(
          "The body '" + name + "' is joined to itself; a joint has two bodies. Name the other.");
    }
    if (!(leftOutAtFrameEndMm >= 0 && leftOutAtAxleEndMm >= 0)) {
      throw new IllegalArgumentException(
          "The joint of '"
              + name
              + "' and '"
              + joinedTo
              + "' leaves out "
              + leftOutAtFrameEndMm
              + " mm at the frame end and "
              + leftOutAtAxleEndMm
              + " mm at the axle end; neither may be negative. Give 0 for an end that counts.");
    }
  }

  /** Whether the two bodies are not compared at all, whatever their lengths. */
  boolean isWhole() {
    return Double.isInfinite(leftOutAtFrameEndMm + leftOutAtAxleEndMm);
  }

  /** The two bodies are never compared. */
  public static Joint whole(String name, String joinedTo) {
    return new Joint(name, joinedTo, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** The link is compared without its part within a distance of its frame-fixed end. */
  public static Joint atFrameEnd(String link, String joinedTo, double withinMm) {
    return new Joint(link, joinedTo, withinMm, 0);
  }

  /** The link is compared without its part within a distance of its axle-moved end. */
  public static Joint atAxleEnd(String link, String joinedTo, double withinMm) {
    return new Joint(link, joinedTo, 0, withinMm);
  }
}
