package trammel.page;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import trammel.app.commandline.Screen;

/**
 * Opens the user's browser. The address has the key in it, and every user of a machine can see the
 * words of a command; so the browser is given a file that only this user can read, and that leads
 * on to the address.
 */
final class Browser {
  private Browser() {}

  /** Opens it; says so if there is none. */
  static void open(String address, Screen screen) {
    try {
      Path leader = leader(address);
      new ProcessBuilder(command(leader.toUri().toString()))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      screen.err().println("No browser could be opened: open the address in one yourself.");
      screen.err().flush();
    }
  }

  /** A text as it can stand in an address. */
  static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private static List<String> command(String file) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("mac")) {
      return List.of("open", file);
    }
    return system.contains("windows")
        ? List.of("rundll32", "url.dll,FileProtocolHandler", file)
        : List.of("xdg-open", file);
  }

  private static Path leader(String address) throws IOException {
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    Path file =
        posix
            ? Files.createTempFile(
                "trammel-page-",
                ".html",
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
            : Files.createTempFile("trammel-page-", ".html");
    file.toFile().deleteOnExit();
    Files.writeString(
        file,
        "<!doctype html><meta charset=\"utf-8\"><title>Trammel</title>"
            + "<meta http-equiv=\"refresh\" content=\"0; url="
            + address.replace("&", "&amp;")
            + "\">");
    return file;
  }
}
