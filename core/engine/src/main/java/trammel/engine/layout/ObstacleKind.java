package trammel.engine.layout;

/** What an obstacle is; it decides which work the plan asks for. */
public enum ObstacleKind {
  TANK,
  EXHAUST,
  RUNNING_BOARD_SUPPORT,
  BED_FLOOR,
  OTHER
}
