package trammel.planning.catalog;

import java.util.Optional;
import trammel.engine.checks.Measure;

/**
 * The checks of what is planned for a layout, whose limits stand in the catalog beside those of the
 * standard checks.
 */
public enum PlanCheck {
  /** Rake as read against that of the two heights of the rail. */
  RAKE("rake-agrees", "rake against the two rail heights", Measure.ANGLE),
  /** Scales of one axle, left against right. */
  WEIGHTS(
      "weights-agree", "difference of the scales left to right, share of the axle", Measure.SHARE),
  /** Bare axle against what the rear scales read. */
  UNSPRUNG(
      "unsprung-agrees", "axle with wheels and brakes, share of the rear's weight", Measure.SHARE),
  /** Loaded radius against the tyre's own. */
  TYRE("tyre-agrees", "loaded radius, share of half the tyre's diameter", Measure.SHARE),
  /** Track and tyre against the rails. */
  TYRE_AND_RAIL("tyre-and-rail-agree", "tyre's inner face to the rail across", Measure.LENGTH),
  /** Tube against the width over the flanges. */
  TUBE("tube-agrees", "axle tube, share of the width over the wheel flanges", Measure.SHARE),
  /** Outer limit against the width over the flanges. */
  OUTER_LIMIT(
      "outer-limit-agrees", "wheel flange beyond the outer limit of brackets", Measure.LENGTH),
  /** Pinion ahead of the axle. */
  PINION("pinion-agrees", "pinion's joint ahead of the axle", Measure.LENGTH),
  /** Driveshaft within the wheelbase. */
  SHAFT("shaft-agrees", "driveshaft joint to joint, share of the wheelbase", Measure.SHARE),
  /** Height of the centre of gravity against the wheels. */
  GRAVITY("gravity-agrees", "centre of gravity's height to the loaded radius", Measure.FACTOR),
  /** Steel that must not be cut or welded. */
  RAIL_STEEL("rail-steel", "heat-treated rails that are to be cut or welded", Measure.COUNT),
  /** Rust in the rail's wall. */
  RAIL_RUST("rail-rust", "wall of the rail left where rust is deepest", Measure.SHARE),
  /** Holes in the rail's flange. */
  RAIL_HOLES("rail-holes", "largest hole in a flange of the rail, share of it", Measure.SHARE),
  /** The tyre against its load index. */
  TYRE_LOAD("tyre-load", "load of the heavier rear tyre, share of its load index", Measure.SHARE),
  /** The axle against its rating. */
  AXLE_RATING("axle-rating", "load of the rear axle, share of its rating", Measure.SHARE),
  /** Hoses from the frame to the axle. */
  HOSES(
      "hose-reach", "hose from frame to axle: how far it is stretched, share of it", Measure.SHARE),
  /** The tongue of a trailer. */
  HITCH("hitch-load", "weight on the hitch, share of the trailer's", Measure.SHARE),
  /** Front piece of a shaft of two, its joint. */
  FRONT_SHAFT_ANGLE(
      "front-shaft-angle", "front joint of a driveshaft of two pieces", Measure.ANGLE),
  /** Front piece of a shaft of two, its speed. */
  FRONT_SHAFT_SPEED(
      "front-shaft-speed", "usable speed of its front piece over its speed", Measure.FACTOR),
  /** The plates of a bracket about its bolt. */
  TABS(
      "bracket-tabs",
      "force on a bracket's bolt holes, share of what its plates may bear",
      Measure.SHARE),
  /** The welds that hold a bracket. */
  WELDS(
      "bracket-welds",
      "stress in the welds of a bracket, share of what E70 wire may bear",
      Measure.SHARE),
  /** The plates of a bracket under blows. */
  TABS_HARD(
      "bracket-tabs-hard",
      "bracket's plates under a pothole, kerb or full stop, share of what is allowed",
      Measure.SHARE),
  /** The welds of a bracket under blows. */
  WELDS_HARD(
      "bracket-welds-hard",
      "bracket's welds under a pothole, kerb or full stop, share of what is allowed",
      Measure.SHARE),
  /** Which weld is worn out first. */
  WELD_RANKING(
      "weld-ranking",
      "bracket's weld that repeated loads damage most, share of all",
      Measure.SHARE),
  /** What ends the droop. */
  DROOP_END(
      "droop-end", "how far a hanging axle falls on after something gave out", Measure.LENGTH),
  /** What carries springs and shocks. */
  MOUNTS(
      "mount-strength",
      "safety factor of what carries springs and shocks, on yield",
      Measure.FACTOR),
  /** What carries springs and shocks, under blows. */
  MOUNTS_HARD(
      "mount-strength-hard",
      "safety factor of what carries springs and shocks under a pothole, kerb or full stop",
      Measure.FACTOR),
  /** The welds of what carries springs and shocks. */
  MOUNT_WELDS(
      "mount-welds",
      "stress in the welds of mounts, share of what E70 wire may bear",
      Measure.SHARE),
  /** The same under blows. */
  MOUNT_WELDS_HARD(
      "mount-welds-hard",
      "welds of mounts under a pothole, kerb or full stop, share of what is allowed",
      Measure.SHARE),
  /** Rails that mounts twist. */
  RAIL_TWIST(
      "rail-twist",
      "safety factor of rails that mounts twist, and of crossmembers that hold them",
      Measure.FACTOR),
  /** Rails that mounts twist, under blows. */
  RAIL_TWIST_HARD(
      "rail-twist-hard",
      "safety factor of rails twisted under a pothole, kerb or full stop",
      Measure.FACTOR),
  /** What carries springs and shocks, at full load. */
  MOUNTS_LOADED(
      "mount-strength-loaded",
      "safety factor of what carries springs and shocks, at full load",
      Measure.FACTOR),
  /** The welds of what carries springs and shocks, at full load. */
  MOUNT_WELDS_LOADED(
      "mount-welds-loaded",
      "stress in the welds of mounts at full load, share of what is allowed",
      Measure.SHARE),
  /** Rails that mounts twist, at full load. */
  RAIL_TWIST_LOADED(
      "rail-twist-loaded",
      "safety factor of rails that mounts twist, at full load",
      Measure.FACTOR),
  /** Whether every outline can be cut, every seam run, and every part has room. */
  CAN_BE_MADE("can-be-made", "part that cannot be made: its outline, seam or room", Measure.COUNT),
  /** Whether two parts stand in the same place. */
  PARTS_APART(
      "parts-apart",
      "pair of parts that cut into each other, at ride or at the ends of the travel",
      Measure.COUNT) {
    @Override
    public String titleAfter(double value) {
      return value == 1 ? title() : title().replaceFirst("pair", "pairs");
    }
  };

  private final String id;
  private final String title;
  private final Measure measure;

  PlanCheck(String id, String title, Measure measure) {
    this.id = id;
    this.title = title;
    this.measure = measure;
  }

  /** Name under which its limit is kept. */
  public String id() {
    return id;
  }

  /** What is checked, in a few words. */
  public String title() {
    return title;
  }

  /** What is checked, as it is said after a value: {@code pairs} where there are several. */
  public String titleAfter(double value) {
    return title;
  }

  /** What kind of quantity its value is. */
  public Measure measure() {
    return measure;
  }

  /** The check of a name; empty where it is none of these. */
  public static Optional<PlanCheck> named(String id) {
    for (PlanCheck check : values()) {
      if (check.id.equals(id)) {
        return Optional.of(check);
      }
    }
    return Optional.empty();
  }
}
