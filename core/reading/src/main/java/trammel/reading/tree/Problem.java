package trammel.reading.tree;

import static java.util.Objects.requireNonNull;

/**
 * One thing wrong with a file: where, what was given, what is allowed, what to do.
 *
 * @param file name of the file
 * @param line line, counted from 1; 0 if it does not come from a file
 * @param field path of the field, such as {@code measured.rails.wall}; {@code whole file} if none
 * @param given what stands there, in the user's own words
 * @param allowed what may stand there
 * @param remedy what to write or do, a sentence
 * @param severity whether the file can be used as it is
 */
public record Problem(
    String file,
    int line,
    String field,
    String given,
    String allowed,
    String remedy,
    Severity severity) {

  /** Whether the file can be used as it is. */
  public enum Severity {
    /** The file is refused. */
    ERROR,
    /** The file is used; the user should look at this. */
    WARNING
  }

  /** The field of a problem with the file as a whole. */
  public static final String WHOLE_FILE = "whole file";

  private static final int LONGEST_GIVEN = 120;
  private static final int LONGEST_FIELD = 160;
  private static final int LONGEST_ADVICE = 600;

  /** Refuses empty parts; shortens what was given so that the line stays readable. */
  public Problem {
    requireNonNull(severity, "severity");
    field = field.isBlank() ? WHOLE_FILE : onOneLine(field, LONGEST_FIELD);
    given = onOneLine(given, LONGEST_GIVEN);
    allowed = onOneLine(allowed, LONGEST_ADVICE);
    remedy = onOneLine(remedy, LONGEST_ADVICE);
    if (file.isBlank() || line < 0 || given.isBlank() || allowed.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException(
          "A problem needs file ("
              + file
              + "), line ("
              + line
              + "), given ("
              + given
              + "), allowed ("
              + allowed
              + ") and remedy ("
              + remedy
              + "), none of them blank.");
    }
  }

  /** A problem for which the file is refused. */
  public static Problem error(Location where, String given, String allowed, String remedy) {
    return new Problem(
        where.file(), where.line(), where.path(), given, allowed, remedy, Severity.ERROR);
  }

  /** A problem that the user should look at; the file is used. */
  public static Problem warning(Location where, String given, String allowed, String remedy) {
    return new Problem(
        where.file(), where.line(), where.path(), given, allowed, remedy, Severity.WARNING);
  }

  /** The problem on one line. */
  public String text() {
    StringBuilder text = new StringBuilder(160);
    text.append(file);
    if (line > 0) {
      text.append(", line ").append(line);
    }
    text.append(", ").append(field).append(": given ").append(given);
    text.append("; allowed: ").append(allowed).append(". ").append(remedy);
    return text.toString();
  }

  @Override
  public String toString() {
    return text();
  }

  private static String onOneLine(String words, int longest) {
    StringBuilder line = new StringBuilder(Math.min(words.length(), longest));
    for (int i = 0; i < words.length() && line.length() < longest; i++) {
      char c = words.charAt(i);
      line.append(PlainText.shows(c) && !Character.isSurrogate(c) ? c : ' ');
    }
    if (words.length() > longest) {
      line.append("...");
    }
    return line.toString();
  }
}
