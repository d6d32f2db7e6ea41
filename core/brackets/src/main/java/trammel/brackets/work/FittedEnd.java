package trammel.brackets.work;

import java.util.Objects;
import trammel.engine.layout.End;
import trammel.engine.quantity.Given;

/**
 * One end of a bar whose bracket is fitted.
 *
 * @param bar name of the bar
 * @param end which end
 */
public record FittedEnd(String bar, End end) {
  public FittedEnd {
    Given.text("bar of a fitted end", bar, "Name it.");
    Objects.requireNonNull(end, "end");
  }
}
