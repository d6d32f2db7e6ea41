package trammel.app.commands;

/** The units in which a command prints. */
public enum DisplayUnits {
  /** Inches and fractions, degrees, pounds, pounds per inch. */
  US,
  /** Millimetres, degrees, kilograms, newtons per millimetre. */
  METRIC
}
