package trammel.assembly.view;

/**
 * A piece of an edge in a picture, all of it seen or all of it hidden.
 *
 * @param id the body that it belongs to
 * @param fromX x of its start, to the right (mm of the vehicle)
 * @param fromY y of its start, up (mm)
 * @param toX x of its end (mm)
 * @param toY y of its end (mm)
 * @param hidden true if it stands behind something
 */
public record SeenLine(
    String id, double fromX, double fromY, double toX, double toY, boolean hidden) {
  /** Its length in the picture (mm of the vehicle). */
  public double lengthMm() {
    return Math.hypot(toX - fromX, toY - fromY);
  }

  /** A piece of it from one share of its length to another. */
  public SeenLine piece(double from, double to, boolean pieceHidden) {
    double dx = toX - fromX;
    double dy = toY - fromY;
    return new SeenLine(
        id, fromX + from * dx, fromY + from * dy, fromX + to * dx, fromY + to * dy, pieceHidden);
  }
}
