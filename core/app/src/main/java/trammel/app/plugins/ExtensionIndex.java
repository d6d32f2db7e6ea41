package trammel.app.plugins;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.pf4j.ExtensionFactory;
import org.pf4j.PluginWrapper;

/**
 * Makes the extensions that a plugin's jar lists in {@value #ENTRY}, a class name a line, which
 * PF4J's annotation processor writes. PF4J's own finder looks through every loaded plugin and the
 * class path again for each plugin, and reads annotations by reflection, which costs a short
 * command more than all the rest of loading plugins.
 */
final class ExtensionIndex {
  private static final String ENTRY = "META-INF/extensions.idx";
  private static final char COMMENT = '#';

  private final PluginWrapper plugin;
  private final ExtensionFactory factory;

  ExtensionIndex(PluginWrapper plugin, ExtensionFactory factory) {
    this.plugin = plugin;
    this.factory = factory;
  }

  /** One of each class listed; none if there is no list. */
  List<Object> create() throws IOException, ClassNotFoundException {
    List<Object> extensions = new ArrayList<>();
    for (String className : classNames()) {
      extensions.add(factory.create(plugin.getPluginClassLoader().loadClass(className)));
    }
    return extensions;
  }

  private List<String> classNames() throws IOException {
    List<String> names = new ArrayList<>();
    try (ZipFile jar = new ZipFile(plugin.getPluginPath().toFile())) {
      ZipEntry entry = jar.getEntry(ENTRY);
      if (entry == null) {
        return names;
      }
      try (InputStream in = jar.getInputStream(entry)) {
        addNames(new String(in.readAllBytes(), StandardCharsets.UTF_8), names);
      }
    }
    return names;
  }

  private static void addNames(String text, List<String> names) {
    int start = 0;
    while (start < text.length()) {
      int end = text.indexOf('\n', start);
      String line = text.substring(start, end < 0 ? text.length() : end);
      start = end < 0 ? text.length() : end + 1;
      int comment = line.indexOf(COMMENT);
      String name = (comment < 0 ? line : line.substring(0, comment)).strip();
      if (!name.isEmpty() && !names.contains(name)) {
        names.add(name);
      }
    }
  }
}
