package trammel.planning.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
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
 * @param transmissionAngleRad wanted angle of the transmission's output at ride from level, front
 *     higher positive, rad, if its mount is to be shimmed
 * @param shaftLongerMm how much longer the driveshaft is to be made, negative for shorter, mm
 * @param shaftTube name of the driveshaft of the catalog that is made anew, if given
 * @param wheelbaseMm wheelbase to which the axle is set on both sides, mm, if it is not left as it
 *     was measured
 * @param movedAway names of the obstacles that are moved or relieved before the axle goes in
 * @param railWork notch and boxing of the rails, where the job says so
 * @param topSpeedMPerS road speed up to which the driveshaft is judged, m/s, if given
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
    Optional<Double> transmissionAngleRad,
    double shaftLongerMm,
    Optional<String> shaftTube,
    Optional<Double> wheelbaseMm,
    List<String> movedAway,
    RailWork railWork,
    Optional<Double> topSpeedMPerS,
    Map<String, PickupOverride> pickups) {
  /** Keeps its own copy of additions and overrides. */
  public Chosen {
    movedAway = List.copyOf(movedAway);
    additions = Collections.unmodifiableMap(new LinkedHashMap<>(additions));
    pickups = Collections.unmodifiableMap(new LinkedHashMap<>(pickups));
  }
}
