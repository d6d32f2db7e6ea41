package trammel.engine.checks;

import java.util.List;
import java.util.Objects;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/** What a check reads off a layout. */
public sealed interface Reading {

  /**
   * A value that can be judged.
   *
   * @param value the value in the check's measure
   * @param where which part, at which pose
   * @param details the figures behind it
   */
  record Value(double value, Phrase where, List<Detail> details) implements Reading {
    public Value {
      Given.finite("value of the check", value);
      Objects.requireNonNull(where, "where");
      details = List.copyOf(details);
    }

    /** A value that speaks for itself. */
    public Value(double value, Phrase where) {
      this(value, where, List.of());
    }

    /** A value that speaks for itself, its place in words without a quantity. */
    public Value(double value, String where) {
      this(value, where, List.of());
    }

    /** A value with its place in words without a quantity. */
    public Value(double value, String where, List<Detail> details) {
      this(value, Phrase.text(where), details);
    }
  }

  /**
   * The check cannot be made, and what is missing.
   *
   * @param reason what is missing and what to do about it
   */
  record Unknown(Phrase reason) implements Reading {
    public Unknown {
      Given.text("reason of a check", reason, "Say what is missing and what to do about it.");
    }

    /** The check cannot be made, for a reason without a quantity. */
    public Unknown(String reason) {
      this(Phrase.text(reason));
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
