package trammel.planning.extension;

/**
 * A plugin failed: it threw what it must not throw, or answered what cannot be worked with. That is
 * neither bad input nor a layout that does not fit.
 */
public final class PluginFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String id;

  /**
   * @param id the id of the linkage, the spring or the addition
   * @param message which plugin failed at what, and how
   * @param cause what it threw; null if it threw nothing
   */
  public PluginFaultException(String id, String message, Throwable cause) {
    super(message, cause);
    this.id = id;
  }

  /** The id of the linkage, the spring or the addition, as job files write it. */
  public String id() {
    return id;
  }
}
