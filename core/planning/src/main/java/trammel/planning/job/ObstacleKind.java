package trammel.planning.job;

/** What an obstacle is. */
public enum ObstacleKind {
  /** Fuel tank: no welding near it. */
  TANK("tank"),
  /** Fuel line, filler or vent: no welding near it. */
  FUEL_LINE("fuel-line"),
  /** Exhaust. */
  EXHAUST("exhaust"),
  /** Support of a running board. */
  RUNNING_BOARD_SUPPORT("running-board-support"),
  /** Floor of the bed or the luggage space. */
  BED_FLOOR("bed-floor"),
  /** Anything else. */
  OTHER("other");

  private final String word;

  ObstacleKind(String word) {
    this.word = word;
  }

  /** The word in a job file. */
  public String word() {
    return word;
  }
}
