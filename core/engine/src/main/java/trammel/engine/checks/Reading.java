package trammel.engine.checks;

import java.util.List;
import java.util.Objects;
import trammel.engine.quantity.Given;

/** What a check reads off a layout. */
public sealed interface Reading {

  /**
   * A value that can be judged.
   *
   * @param value the value in the check's measure
   * @param where which part, at which pose
   * @param details the figures behind it
   */
  record Value(double value, String where, List<Detail> details) implements Reading {
    public Value {
      Given.finite("value of the check", value);
      Objects.requireNonNull(where, "where");
      details = List.copyOf(details);
    }

    /** A value that speaks for itself. */
    public Value(double value, String where) {
      this(value, where, List.of());
    }
  }

  /**
   * The check cannot be made, and what is missing.
   *
   * @param reason what is missing and what to do about it
   */
  record Unknown(String reason) implements Reading {
    public Unknown {
      Given.text("reason", reason);
    }
  }

  /**
   * The check has nothing to say about this layout.
   *
   * @param reason why, such as that there is no lateral bar
   */
  record NotApplicable(String reason) implements Reading {
    public NotApplicable {
      Given.text("reason", reason);
    }
  }
}
