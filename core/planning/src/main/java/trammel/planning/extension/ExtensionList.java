package trammel.planning.extension;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/**
 * What a plugin's jar says is in it, in its file {@value #FILE}, so that nothing of the plugin has
 * to run before a job asks for it. Each line names the kind, the id and the class of one extension:
 * {@code linkage three-link example.threelink.ThreeLink}. What follows a {@code #} is a remark.
 *
 * @param entries the extensions, in the order of the lines
 */
public record ExtensionList(List<Entry> entries) {
  /** Path of the list in the jar. */
  public static final String FILE = "META-INF/trammel.idx";

  private static final char REMARK = '#';

  /** What an extension can be. */
  public enum Kind {
    /** An {@link AxleLinkage}. */
    LINKAGE("linkage", AxleLinkage.class),
    /** A {@link SpringMount}. */
    SPRING("spring", SpringMount.class),
    /** An {@link Addition}. */
    ADDITION("addition", Addition.class);

    private final String word;
    private final Class<?> type;

    Kind(String word, Class<?> type) {
      this.word = word;
      this.type = type;
    }

    /** The word that stands for it in the list. */
    public String word() {
      return word;
    }

    /** The interface that its class implements. */
    public Class<?> type() {
      return type;
    }
  }

  /**
   * One extension.
   *
   * @param kind what it is
   * @param id its id, as job files write it
   * @param className full name of its class
   */
  public record Entry(Kind kind, String id, String className) {
    public Entry {
      for (int i = 0; i < id.length(); i++) {
        char c = id.charAt(i);
        if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-')) {
          throw new IllegalArgumentException(
              FILE + " has the id '" + id + "'; use small letters, digits and hyphens.");
        }
      }
    }
  }

  public ExtensionList {
    entries = List.copyOf(entries);
  }

  /**
   * Reads a list.
   *
   * @throws IllegalArgumentException if a line is none of the above
   */
  public static ExtensionList parse(String text) {
    List<Entry> entries = new ArrayList<>();
    StringTokenizer lines = new StringTokenizer(text, "\r\n");
    while (lines.hasMoreTokens()) {
      String line = lines.nextToken();
      int remark = line.indexOf(REMARK);
      String words = (remark < 0 ? line : line.substring(0, remark)).strip();
      if (!words.isEmpty()) {
        entries.add(entry(words));
      }
    }
    return new ExtensionList(entries);
  }

  private static Entry entry(String line) {
    StringTokenizer words = new StringTokenizer(line);
    if (words.countTokens() == 3) {
      String word = words.nextToken();
      for (Kind kind : Kind.values()) {
        if (kind.word().equals(word)) {
          return new Entry(kind, words.nextToken(), words.nextToken());
        }
      }
    }
    throw new IllegalArgumentException(
        FILE
            + " has the line '"
            + line
            + "'; a line is linkage, spring or addition, then the id, then the class.");
  }
}
