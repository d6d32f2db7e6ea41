package trammel.engine.checks;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * A figure behind the value of a check, printed in the reader's units.
 *
 * @param words what it is, such as {@code spring-left at ride}
 * @param measure what kind of quantity it is
 * @param value the figure in the measure
 */
public record Detail(String words, Measure measure, double value) {
  public Detail {
    Given.text("words of a detail", words);
    Objects.requireNonNull(measure, "measure");
    Given.finite("detail " + words, value);
  }
}
