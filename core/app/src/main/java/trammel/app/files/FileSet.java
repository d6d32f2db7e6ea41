package trammel.app.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Files that belong together, by their paths within a folder. */
public final class FileSet {
  private static final int LONGEST_NAME = 60;

  private final Map<String, byte[]> files = new LinkedHashMap<>();

  /**
   * Adds a text file.
   *
   * @param name its path within the folder, with forward slashes
   * @throws IllegalArgumentException if the name is taken or leads out of the folder
   */
  public FileSet add(String name, String text) {
    return add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Adds a file.
   *
   * @param name its path within the folder, with forward slashes
   * @throws IllegalArgumentException if the name is taken or leads out of the folder
   */
  public FileSet add(String name, byte[] content) {
    Path path = Path.of(name).normalize();
    if (path.isAbsolute() || path.startsWith("..") || files.put(name, content) != null) {
      throw new IllegalArgumentException(
          "file "
              + name
              + " is there already or leads out of the folder; give another name within it.");
    }
    return this;
  }

  /**
   * Adds all files of another set in a folder of their own.
   *
   * @throws IllegalArgumentException if a name is taken
   */
  public FileSet add(String folder, FileSet others) {
    others.files.forEach((name, content) -> add(folder + "/" + name, content));
    return this;
  }

  /** The files by their names, in the order in which they were added. */
  public Map<String, byte[]> contents() {
    return Collections.unmodifiableMap(files);
  }

  /** The names, in the order in which they were added. */
  public List<String> names() {
    return List.copyOf(files.keySet());
  }

  /**
   * A name as a file name that every system takes: small letters, digits and hyphens, 60 at most.
   */
  public static String safeName(String name) {
    StringBuilder safe = new StringBuilder(name.length());
    String small = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < small.length() && safe.length() < LONGEST_NAME; i++) {
      char c = small.charAt(i);
      if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
        safe.append(c);
      } else if (safe.length() > 0 && safe.charAt(safe.length() - 1) != '-') {
        safe.append('-');
      }
    }
    while (safe.length() > 0 && safe.charAt(safe.length() - 1) == '-') {
      safe.setLength(safe.length() - 1);
    }
    return safe.length() == 0 ? "part" : safe.toString();
  }
}
