package trammel.reading.fields;

import java.util.List;

/** Words in a row. */
final class WordList {
  private WordList() {}

  static String or(List<String> words) {
    return joined(words, " or ");
  }

  static String and(List<String> words) {
    return joined(words, " and ");
  }

  static String plain(List<String> words) {
    return joined(words, ", ");
  }

  private static String joined(List<String> words, String last) {
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      if (i > 0) {
        row.append(i == words.size() - 1 ? last : ", ");
      }
      row.append(words.get(i));
    }
    return row.toString();
  }
}
