package trammel.app;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ServiceLoader;
import trammel.app.commandline.Command;
import trammel.app.desk.Installation;

/**
 * A command that lies in a jar of its own beside the others. The jar is opened when the command is
 * asked for, so that the others start as if it were not there.
 */
final class BroughtCommand {
  private BroughtCommand() {}

  /** Whether the installed copy has the jar. */
  static boolean isThere(String jar) {
    String home = System.getProperty(Installation.HOME_PROPERTY);
    return home != null && file(home, jar).isFile();
  }

  /** The command of a jar that is there. */
  static Command of(String jar) {
    try {
      File file = file(System.getProperty(Installation.HOME_PROPERTY), jar);
      // It stays open as long as the command runs.
      ClassLoader loader =
          new URLClassLoader(
              new URL[] {file.toURI().toURL()}, BroughtCommand.class.getClassLoader());
      return ServiceLoader.load(Command.class, loader).findFirst().orElseThrow();
    } catch (MalformedURLException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static File file(String home, String jar) {
    return new File(new File(home, "lib"), jar);
  }
}
