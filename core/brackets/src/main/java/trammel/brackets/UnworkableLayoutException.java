package trammel.brackets;

/** The measurements leave no room for what was chosen. */
public final class UnworkableLayoutException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message what there is, what is needed and what to change
   */
  public UnworkableLayoutException(String message) {
    super(message);
  }
}
