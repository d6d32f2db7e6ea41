package trammel.planning.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.reading.tree.ObjectNode;

/**
 * What the fabricator chose.
 *
 * @param linkage id of the linkage
 * @param spring id of the spring
 * @param linkageOptions options of the linkage as they stand in the file
 * @param springOptions options of the spring as they stand in the file
 * @param additions what is added to both, by id, in the order of the file; each with its options as
 *     they stand in the file
 * @param ride where the body is to sit and how far the axle is to move
 * @param pinionAngleRad wanted pinion angle at ride from level, nose up positive, rad, if given
 * @param pickups overrides of proposed pick-up points by the name of the link, in the order of the
 *     file
 */
public record Chosen(
    String linkage,
    String spring,
    ObjectNode linkageOptions,
    ObjectNode springOptions,
    Map<String, ObjectNode> additions,
    Ride ride,
    Optional<Double> pinionAngleRad,
    Map<String, PickupOverride> pickups) {
  /** Keeps its own copy of additions and overrides. */
  public Chosen {
    additions = Collections.unmodifiableMap(new LinkedHashMap<>(additions));
    pickups = Collections.unmodifiableMap(new LinkedHashMap<>(pickups));
  }
}
