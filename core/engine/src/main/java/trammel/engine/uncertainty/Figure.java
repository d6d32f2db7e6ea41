package trammel.engine.uncertainty;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * A figure that is known to a tolerance only.
 *
 * @param name what it is, in the words of the floor; each figure of a study has its own
 * @param origin whether it is measured or made
 * @param how what it is measured or made with, and to what tolerance
 * @param standardDeviation standard deviation in the unit of its effect, 0 or more: half a stated
 *     tolerance, which 95 of 100 readings keep
 * @param effect what becomes of the layout when it is off
 */
public record Figure(
    String name, FigureOrigin origin, String how, double standardDeviation, Effect effect) {
  public Figure {
    Given.text("name of the uncertain figure", name);
    Objects.requireNonNull(origin, "origin");
    Given.text("how " + name + " is measured or made", how);
    Given.notNegative("standard deviation of " + name, standardDeviation);
    Objects.requireNonNull(effect, "effect");
  }

  /** A figure with a stated tolerance, taken as two standard deviations. */
  public static Figure within(
      String name, FigureOrigin origin, String how, double tolerance, Effect effect) {
    return new Figure(name, origin, how, tolerance / 2, effect);
  }
}
