package trammel.app.commandline;

import java.io.IOException;
import java.io.InputStream;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

/** The version of this copy of Trammel. */
public final class Version {
  private Version() {}

  /** The version that the jar was built as, or that this is no built copy. */
  public static String text() {
    String built = Version.class.getPackage().getImplementationVersion();
    if (built == null && Version.class.getModule().isNamed()) {
      built = versionOfModule();
    }
    return built == null ? "(not packaged)" : built;
  }

  /**
   * Java keeps the manifest of a jar on the class path in mind, but not of one that is a module.
   */
  private static String versionOfModule() {
    try (InputStream manifest =
        Version.class.getModule().getResourceAsStream("META-INF/MANIFEST.MF")) {
      return manifest == null
          ? null
          : new Manifest(manifest)
              .getMainAttributes()
              .getValue(Attributes.Name.IMPLEMENTATION_VERSION);
    } catch (IOException unread) {
      return null;
    }
  }
}
