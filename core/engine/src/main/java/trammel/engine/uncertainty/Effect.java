package trammel.engine.uncertainty;

import trammel.engine.layout.Layout;

/** What becomes of a layout when one figure is other than it was taken to be. */
@FunctionalInterface
public interface Effect {

  /**
   * The layout as it stands when the figure is off.
   *
   * @param layout the layout as it was drawn, or with other figures off already
   * @param amount by how much the figure is off, in its unit
   * @throws IllegalArgumentException if no vehicle can stand so
   */
  Layout apply(Layout layout, double amount);

  /**
   * Two effects of one figure.
   *
   * @param factor how far the other is off for one unit of the figure
   * @param other what becomes of the layout besides
   */
  default Effect and(double factor, Effect other) {
    return (layout, amount) -> other.apply(apply(layout, amount), factor * amount);
  }
}
