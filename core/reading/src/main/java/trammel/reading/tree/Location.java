package trammel.reading.tree;

import static java.util.Objects.requireNonNull;

/**
 * Where something stands: file, line, column, and the path of keys that leads to it.
 *
 * @param file name of the file, or what stands for it, such as {@code --vary}
 * @param line line, counted from 1; 0 if it does not come from a file
 * @param column column, counted from 1; 0 if it does not come from a file
 * @param path keys and list positions joined by dots, such as {@code measured.rails.wall} or {@code
 *     measured.obstacles[1].name}; empty for the whole document
 */
public record Location(String file, int line, int column, String path) {
  /** Refuses negative lines and columns. */
  public Location {
    requireNonNull(file, "file");
    requireNonNull(path, "path");
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException(
          "The line (" + line + ") and column (" + column + ") must not be negative.");
    }
  }

  /** The same place with the path of a key inside it. */
  public Location inside(String key) {
    return new Location(file, line, column, child(path, key));
  }

  /** The path of a key inside the thing at a path. */
  public static String child(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The path of a list entry, counted from 0, inside the list at a path. */
  public static String entry(String path, int index) {
    return path + "[" + index + "]";
  }
}
