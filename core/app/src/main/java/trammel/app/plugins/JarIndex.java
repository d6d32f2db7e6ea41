package trammel.app.plugins;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import trammel.planning.extension.ExtensionList;

/** Reads what a plugin's jar lists, without running anything that is in it. */
final class JarIndex {
  private JarIndex() {}

  /**
   * The jar's list.
   *
   * @throws IOException if the jar cannot be read
   * @throws IllegalArgumentException if it has no list, an empty one, or one that is not right
   */
  static ExtensionList read(Path file) throws IOException {
    try (ZipFile jar = new ZipFile(file.toFile())) {
      ZipEntry entry = jar.getEntry(ExtensionList.FILE);
      if (entry == null) {
        throw new IllegalArgumentException("it has no " + ExtensionList.FILE);
      }
      ExtensionList list;
      try (InputStream in = jar.getInputStream(entry)) {
        list = ExtensionList.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
      if (list.entries().isEmpty()) {
        throw new IllegalArgumentException("its " + ExtensionList.FILE + " lists nothing");
      }
      for (ExtensionList.Entry one : list.entries()) {
        if (jar.getEntry(one.className().replace('.', '/') + ".class") == null) {
          throw new IllegalArgumentException(
              "its " + ExtensionList.FILE + " lists " + one.className() + ", which is not in it");
        }
      }
      return list;
    }
  }
}
