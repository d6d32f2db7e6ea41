package trammel.brackets.material;

/** A plan or an option asks for a catalog entry that does not exist. */
public final class MissingEntryException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message what was asked for, what there is and what to do
   */
  public MissingEntryException(String message) {
    super(message);
  }
}
