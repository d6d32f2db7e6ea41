package trammel.planning.job;

import trammel.reading.quantity.Position;
import trammel.reading.quantity.Span;

/** The space an obstacle takes, as measured on the stands. */
public sealed interface ObstacleShape {
  /**
   * A box along the axes.
   *
   * @param forward extent forward
   * @param left extent to the left
   * @param up extent up
   */
  record Box(Span forward, Span left, Span up) implements ObstacleShape {}

  /**
   * A cylinder.
   *
   * @param from middle of one end
   * @param to middle of the other end
   * @param diameterMm diameter, mm
   */
  record Cylinder(Position from, Position to, double diameterMm) implements ObstacleShape {
    /** Refuses ends at one place. */
    public Cylinder {
      if (from.isAt(to) || !(diameterMm > 0)) {
        throw new IllegalArgumentException(
            "The cylinder from ("
                + from
                + ") to ("
                + to
                + ") with diameter ("
                + diameterMm
                + " mm) must have two different ends and a diameter above 0.");
      }
    }
  }
}
