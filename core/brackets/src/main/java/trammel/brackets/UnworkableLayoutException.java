package trammel.brackets;

import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/** The measurements leave no room for what was chosen. */
public final class UnworkableLayoutException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Phrase reason;

  /**
   * @param reason what there is, what is needed and what to change
   */
  public UnworkableLayoutException(Phrase reason) {
    this.reason = Given.present("reason of a refusal", reason, "Say what to change.");
  }

  /** What there is, what is needed and what to change, for the reader's units. */
  public Phrase reason() {
    return reason;
  }

  /** The reason as the engine has it, in millimetres, for whoever looks into a program. */
  @Override
  public String getMessage() {
    return reason.toString();
  }
}
