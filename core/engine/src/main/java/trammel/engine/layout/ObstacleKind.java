package trammel.engine.layout;

/** What an obstacle is; it decides which work the plan asks for. */
public enum ObstacleKind {
  TANK,
  FUEL_LINE,
  EXHAUST,
  RUNNING_BOARD_SUPPORT,
  BED_FLOOR,
  OTHER;

  /** Whether fuel is in it: what strikes it may set the vehicle on fire. */
  public boolean holdsFuel() {
    return this == TANK || this == FUEL_LINE;
  }
}
