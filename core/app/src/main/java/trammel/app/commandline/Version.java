package trammel.app.commandline;

/** The version of this copy of Trammel. */
public final class Version {
  private Version() {}

  /** The version that the jar was built as, or that this is no built copy. */
  public static String text() {
    String built = Version.class.getPackage().getImplementationVersion();
    return built == null ? "(not packaged)" : built;
  }
}
