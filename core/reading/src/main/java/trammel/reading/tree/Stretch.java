package trammel.reading.tree;

import java.util.List;

/**
 * From where to where a value is written in a text.
 *
 * @param start first character
 * @param end after the last character
 * @param form how it is written
 * @param members keys with their values, of a group
 * @param entries the entries, of a list
 */
record Stretch(int start, int end, Form form, List<Member> members, List<Stretch> entries) {

  enum Form {
    /** A text, number, flag or null. */
    SCALAR,
    /** Nothing is written. */
    NOTHING,
    /** In brackets or braces. */
    BRACKETED,
    /** By indents. */
    BLOCK
  }

  /** A key with its value; the key's characters include its quotes. */
  record Member(String key, int keyStart, int keyEnd, Stretch value) {}

  Stretch {
    members = List.copyOf(members);
    entries = List.copyOf(entries);
  }
}
