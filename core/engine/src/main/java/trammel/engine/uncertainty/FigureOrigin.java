package trammel.engine.uncertainty;

/** Where a figure comes from, which decides what helps when it matters. */
public enum FigureOrigin {
  /** Read off the vehicle: it can be measured again. */
  MEASURED,
  /** Made, set or tacked in the shop: it can be held closer. */
  MADE
}
