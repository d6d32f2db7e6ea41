package trammel.page.folder;

/** What was asked for cannot be done, in the words for whoever asked. */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;

  /**
   * @param status HTTP status
   * @param words what is wrong and what to do
   */
  public Refused(int status, String words) {
    super(words);
    this.status = status;
  }

  /** HTTP status. */
  public int status() {
    return status;
  }
}
