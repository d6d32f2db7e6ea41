package trammel.assembly;

import java.util.Objects;
import trammel.trade.given.Given;

/**
 * Two parts that hold each other otherwise than by a weld.
 *
 * @param kind how
 * @param part id of one
 * @param onto id of the other
 * @param gapMm greatest distance between them that still holds (mm), 0 or more
 */
public record Mate(Kind kind, String part, String onto, double gapMm) {
  /** How two parts hold each other. */
  public enum Kind {
    /** A bolt through a hole. */
    BOLTED,
    /** Screwed, pressed or lying against each other. */
    IN_CONTACT,
    /** Held by parts of the vehicle that are not modelled. */
    OF_THE_VEHICLE
  }

  public Mate {
    Objects.requireNonNull(kind, "kind");
    Given.text(part, "Part of a mate", "Give its id.");
    Given.text(onto, "Part that '" + part + "' holds to", "Give its id.");
    Given.between(gapMm, 0, 1000, "Gap of '" + part + "' in mm", "0 for parts that touch.");
  }
}
