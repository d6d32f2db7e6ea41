package trammel.planning.extension.kit;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import trammel.planning.extension.ExtensionList;

/** Checks that a plugin's jar lists an extension as what it is. */
final class JarList {
  private JarList() {}

  static void verify(ExtensionList.Kind kind, String id, Object extension) {
    ExtensionList.Entry wanted = new ExtensionList.Entry(kind, id, extension.getClass().getName());
    boolean listed = false;
    try {
      ClassLoader loader = extension.getClass().getClassLoader();
      for (URL list : Collections.list(loader.getResources(ExtensionList.FILE))) {
        try (InputStream in = list.openStream()) {
          String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
          listed |= ExtensionList.parse(text).entries().contains(wanted);
        }
      }
    } catch (IOException | IllegalArgumentException unread) {
      throw new AssertionError(ExtensionList.FILE + " cannot be read: " + unread, unread);
    }
    Promise.kept(
        listed,
        "The plugin's "
            + ExtensionList.FILE
            + " does not list "
            + id
            + "; write the line '"
            + kind.word()
            + " "
            + id
            + " "
            + wanted.className()
            + "'.");
  }
}
