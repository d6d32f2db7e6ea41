package trammel.brackets;

import java.util.Objects;
import java.util.function.Supplier;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/** The measurements leave no room for what was chosen. */
public final class UnworkableLayoutException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private transient Supplier<Phrase> working;
  private transient Phrase reason;

  /**
   * @param reason what there is, what is needed and what to change
   */
  public UnworkableLayoutException(Phrase reason) {
    this.reason = checked(reason);
  }

  /**
   * A refusal whose reason takes work to find, which is done when somebody asks for it: of many
   * places that are tried most refusals are never read.
   *
   * @param working finds the reason
   */
  public UnworkableLayoutException(Supplier<Phrase> working) {
    this.working = Objects.requireNonNull(working, "working");
  }

  private static Phrase checked(Phrase reason) {
    return Given.present("reason of a refusal", reason, "Say what to change.");
  }

  /** What there is, what is needed and what to change, for the reader's units. */
  public synchronized Phrase reason() {
    if (reason == null) {
      reason = checked(working.get());
      working = null;
    }
    return reason;
  }

  /** The reason as the engine has it, in millimetres, for whoever looks into a program. */
  @Override
  public String getMessage() {
    return reason().toString();
  }
}
