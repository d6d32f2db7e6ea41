package trammel.planning.job;

/**
 * Something on the body that the suspension must stay clear of.
 *
 * @param name what the shop calls it
 * @param kind what it is
 * @param shape the space it takes
 */
public record Obstacle(String name, ObstacleKind kind, ObstacleShape shape) {}
