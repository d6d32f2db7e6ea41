package trammel.app.drawings;

/**
 * How a line is drawn.
 *
 * @param colour colour by its SVG name or number
 * @param widthMm width of the line (mm)
 * @param dashes lengths of dashes and gaps (mm); empty for a full line
 */
public record Pen(String colour, double widthMm, String dashes) {
  /** The accent: the curve that matters most. */
  public static final Pen ACCENT = new Pen("#a8331c", 0.6, "");

  /** A second curve, told apart without colour too. */
  public static final Pen DASHED = new Pen("black", 0.45, "2.2 1.2");

  /** A third curve. */
  public static final Pen DOTTED = new Pen("black", 0.45, "0.5 1");

  /** Edges of what is drawn. */
  public static final Pen OUTLINE = new Pen("black", 0.3, "");

  /** Edges of what is there before the work begins (ISO 128-2, narrow continuous line). */
  public static final Pen EXISTING = new Pen("black", 0.18, "");

  /** Edges that stand behind something (ISO 128-2, 02.1). */
  public static final Pen HIDDEN = new Pen("black", 0.18, "1.4 0.7");

  /** What is shown only for where it is (ISO 128-2, 05.1: adjacent parts). */
  public static final Pen ADJACENT = new Pen("#8a8a8a", 0.18, "5 0.7 0.5 0.7 0.5 0.7");

  /** What is drawn lightly. */
  public static final Pen LIGHT = new Pen("#9a9a9a", 0.2, "");

  /** What is drawn lightly and moves. */
  public static final Pen GHOST = new Pen("#9a9a9a", 0.22, "1.6 0.9");

  /** Centre lines and datums. */
  public static final Pen DATUM = new Pen("#a8331c", 0.25, "6 1.2 1.2 1.2");

  /** Leaders, and what is told by a line of its own. */
  public static final Pen FINE = new Pen("black", 0.15, "");

  /** Dimension lines and the lines that they run out along. */
  public static final Pen DIMENSION = new Pen("black", 0.16, "");

  static final Pen FRAME = new Pen("black", 0.25, "");
  static final Pen GRID = new Pen("#c8c8c8", 0.12, "");
  static final Pen AXIS = new Pen("black", 0.18, "1 1");
}
