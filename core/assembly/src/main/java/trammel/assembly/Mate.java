package trammel.assembly;

import java.util.Objects;
import trammel.engine.quantity.Given;

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
    Given.text("part of a mate", part, "Give its id.");
    Given.text("part that '" + part + "' holds to", onto, "Give its id.");
    Given.within("gap of '" + part + "' in mm", gapMm, 0, 1000, "", "0 for parts that touch.");
  }
}
