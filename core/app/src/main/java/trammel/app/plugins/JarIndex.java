package trammel.app.plugins;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.extension.ExtensionList;

/**
 * What a plugin's jar says of itself, read without running anything that is in it.
 *
 * @param list the extensions that it lists
 * @param catalog the text of what it brings to the catalog, if it brings anything
 */
record JarIndex(ExtensionList list, Optional<String> catalog) {

  /**
   * Reads a jar.
   *
   * @throws IOException if the jar cannot be read
   * @throws IllegalArgumentException if it has no list, an empty one, or one that is not right
   */
  static JarIndex read(Path file) throws IOException {
    try (ZipFile jar = new ZipFile(file.toFile())) {
      Optional<String> text = text(jar, ExtensionList.FILE);
      if (text.isEmpty()) {
        throw new IllegalArgumentException("it has no " + ExtensionList.FILE);
      }
      ExtensionList list = ExtensionList.parse(text.get());
      if (list.entries().isEmpty()) {
        throw new IllegalArgumentException("its " + ExtensionList.FILE + " lists nothing");
      }
      for (ExtensionList.Entry one : list.entries()) {
        if (jar.getEntry(one.className().replace('.', '/') + ".class") == null) {
          throw new IllegalArgumentException(
              "its " + ExtensionList.FILE + " lists " + one.className() + ", which is not in it");
        }
      }
      return new JarIndex(list, text(jar, PluginCatalog.FILE));
    }
  }

  private static Optional<String> text(ZipFile jar, String path) throws IOException {
    ZipEntry entry = jar.getEntry(path);
    if (entry == null) {
      return Optional.empty();
    }
    try (InputStream in = jar.getInputStream(entry)) {
      return Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }
}
