package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A JSON or YAML text in which single values are changed while every other character of it stays:
 * comments, the order of keys, indents, quotes, line ends. What is made is read back and compared
 * before it is given out, so that a text never says anything else than what was asked for.
 */
public final class WrittenDocument {
  private static final Location NOWHERE = new Location("change", 0, 0, "");

  private final String fileName;
  private final String text;
  private final DocumentFormat format;
  private final ValueText values;
  private final ObjectNode root;

  private WrittenDocument(String fileName, String text) {
    this.fileName = fileName;
    this.text = text;
    root = DocumentReader.read(fileName, text);
    format = DocumentFormat.ofFileName(fileName).orElseThrow();
    values = new ValueText(format);
  }

  /**
   * The text of a file.
   *
   * @param fileName its name, which ends with {@code .yaml}, {@code .yml} or {@code .json}
   * @throws BadInputException if it cannot be read
   */
  public static WrittenDocument of(String fileName, String text) {
    return new WrittenDocument(fileName, text);
  }

  /** All of it. */
  public String text() {
    return text;
  }

  /** What it says. */
  public ObjectNode root() {
    return root;
  }

  /**
   * A copy in which a field has another value; groups on the way are made if they are not there.
   *
   * @param path keys joined by dots and positions in brackets, such as {@code
   *     measured.obstacles[0].name}; the position after the last adds an entry
   * @throws BadInputException if no field can stand at the path
   */
  public WrittenDocument with(String path, DocumentNode value) {
    Location where = new Location(fileName, 0, 0, path);
    ObjectNode wanted = new TreeEdit(where).with(value, root);
    return checked(put(stretches(), TreeEdit.steps(where), 0, value), wanted, where);
  }

  /**
   * A copy without a field; a group that has nothing left in it goes as well, but for the parts of
   * the file. Nothing changes where the field is not there.
   *
   * @throws BadInputException if no field can stand at the path
   */
  public WrittenDocument without(String path) {
    Location where = new Location(fileName, 0, 0, path);
    ObjectNode wanted = new TreeEdit(where).without(root);
    if (SameValue.of(root, wanted)) {
      return this;
    }
    return checked(takeOut(stretches(), TreeEdit.steps(where)), wanted, where);
  }

  private Stretch stretches() {
    return new StretchReader(format, text).document();
  }

  private WrittenDocument checked(String changed, ObjectNode wanted, Location where) {
    WrittenDocument made;
    try {
      made = new WrittenDocument(fileName, changed);
    } catch (BadInputException unreadable) {
      throw cannot(where);
    }
    if (!SameValue.of(made.root, wanted)) {
      throw cannot(where);
    }
    return made;
  }

  private static BadInputException cannot(Location where) {
    return DocumentReader.refused(
        where,
        "a place that cannot be changed without touching what stands around it",
        "a value on a line of its own",
        "Change it in an editor.");
  }

  // Putting in

  private String put(Stretch at, List<String> steps, int step, DocumentNode value) {
    String name = steps.get(step);
    boolean last = step == steps.size() - 1;
    if (name.startsWith("[")) {
      int index = TreeEdit.position(name);
      if (index == at.entries().size()) {
        return appended(at, nested(steps, step + 1, value));
      }
      Stretch entry = at.entries().get(index);
      return last ? replaced(entry, value, entry.start()) : put(entry, steps, step + 1, value);
    }
    Optional<Stretch.Member> found = member(at, name);
    if (found.isEmpty()) {
      DocumentNode fresh = nested(steps, step + 1, value);
      return at.form() == Stretch.Form.BRACKETED
          ? insertedInBrackets(at, steps.subList(0, step), name, fresh)
          : insertedInBlock(at, name, fresh);
    }
    Stretch inner = found.get().value();
    boolean absent = inner.form() == Stretch.Form.NOTHING || isNull(inner);
    return last || absent
        ? replaced(inner, nested(steps, step + 1, value), found.get().keyEnd() + 1)
        : put(inner, steps, step + 1, value);
  }

  private boolean isNull(Stretch at) {
    String written = text.substring(at.start(), at.end());
    return at.form() == Stretch.Form.SCALAR && (written.equals("null") || written.equals("~"));
  }

  private static Optional<Stretch.Member> member(Stretch at, String key) {
    return at.members().stream().filter(one -> one.key().equals(key)).findFirst();
  }

  /** The value within the groups that the rest of the path names. */
  private static DocumentNode nested(List<String> steps, int from, DocumentNode value) {
    DocumentNode whole = value;
    for (int i = steps.size() - 1; i >= from; i--) {
      String step = steps.get(i);
      whole =
          step.startsWith("[")
              ? new ListNode(NOWHERE, List.of(whole))
              : ObjectNode.empty(NOWHERE).with(step, whole);
    }
    return whole;
  }

  private String replaced(Stretch old, DocumentNode value, int afterKey) {
    String fresh = values.inline(value);
    return switch (old.form()) {
      case NOTHING -> spliced(old.start(), old.start(), spaceBefore(old.start()) + fresh);
      case SCALAR, BRACKETED -> spliced(old.start(), old.end(), fresh);
      case BLOCK -> replacedBlock(old, fresh, afterKey);
    };
  }

  private String spaceBefore(int at) {
    return at > 0 && text.charAt(at - 1) == ' ' ? "" : " ";
  }

  /** The lines of the block go; a comment behind its key stays. */
  private String replacedBlock(Stretch old, String fresh, int afterKey) {
    int from = lineStart(old.start());
    if (from <= afterKey) {
      // An entry of a list begins on the line of its dash.
      return spliced(old.start(), old.end(), fresh);
    }
    String without = text.substring(0, from) + text.substring(lineEnd(old.end(), true));
    return without.substring(0, afterKey) + " " + fresh + without.substring(afterKey);
  }

  private String insertedInBlock(Stretch group, String key, DocumentNode value) {
    int indent = group.start() - lineStart(group.start());
    if (indent == 0) {
      // A new part of the file goes behind whatever stands at its end.
      String whole = text.stripTrailing();
      return whole + newLine() + values.block(key, value, 0, newLine()) + newLine();
    }
    return afterLine(group.end(), values.block(key, value, indent, newLine()));
  }

  private String insertedInBrackets(
      Stretch group, List<String> way, String key, DocumentNode value) {
    String fresh = values.key(key) + ": " + values.inline(value);
    boolean empty = group.members().isEmpty();
    int place = empty ? group.start() + 1 : last(group).value().end();
    String made = spliced(place, place, empty ? fresh : "," + gap(last(group).keyStart()) + fresh);
    int start = lineStart(group.start());
    int end = lineEnd(group.end(), false);
    boolean fits = end - start + fresh.length() + 2 <= ValueText.LONGEST_LINE;
    boolean alone = end == group.end() && text.substring(start, group.start()).endsWith(": ");
    boolean oneLine = text.indexOf('\n', start) < 0 || text.indexOf('\n', start) >= group.end();
    return fits || !alone || !oneLine || format == DocumentFormat.JSON || way.isEmpty()
        ? made
        : unfolded(group, way, key, value);
  }

  /** A group that has grown too long for its line gets a line for each of its keys. */
  private String unfolded(Stretch group, List<String> way, String key, DocumentNode value) {
    String path = String.join(".", way).replace(".[", "[");
    Location where = new Location(fileName, 0, 0, path);
    ObjectNode now = (ObjectNode) new TreeEdit(where).find(root).orElseThrow();
    String line = text.substring(lineStart(group.start()), group.start());
    int indent = line.length() - line.stripLeading().length() + 2;
    StringBuilder lines = new StringBuilder();
    for (ObjectNode.Member member : now.with(key, value).members()) {
      lines.append(newLine()).append(values.block(member.key(), member.value(), indent, newLine()));
    }
    // The space behind the colon goes as well.
    return spliced(group.start() - 1, group.end(), lines.toString());
  }

  private static Stretch.Member last(Stretch group) {
    return group.members().get(group.members().size() - 1);
  }

  private String appended(Stretch list, DocumentNode value) {
    String fresh = values.inline(value);
    if (list.form() == Stretch.Form.BRACKETED) {
      if (list.entries().isEmpty()) {
        return spliced(list.start() + 1, list.start() + 1, fresh);
      }
      Stretch last = list.entries().get(list.entries().size() - 1);
      return spliced(last.end(), last.end(), "," + gap(last.start()) + fresh);
    }
    int indent = dash(list.entries().get(0)) - lineStart(list.start());
    return afterLine(list.end(), " ".repeat(indent) + "- " + fresh);
  }

  /** What stands between two members: a line end and an indent where each has its own line. */
  private String gap(int start) {
    String before = text.substring(lineStart(start), start);
    return before.isBlank() && lineStart(start) > 0 ? newLine() + before : " ";
  }

  private String afterLine(int at, String line) {
    int end = lineEnd(at, false);
    return spliced(end, end, newLine() + line);
  }

  // Taking out

  private String takeOut(Stretch whole, List<String> steps) {
    List<Stretch> way = new ArrayList<>();
    Stretch at = whole;
    for (String step : steps) {
      way.add(at);
      at =
          step.startsWith("[")
              ? at.entries().get(TreeEdit.position(step))
              : member(at, step).orElseThrow().value();
    }
    int depth = steps.size() - 1;
    while (depth > 1 && isOnly(way.get(depth))) {
      depth--;
    }
    Stretch holder = way.get(depth);
    String step = steps.get(depth);
    return step.startsWith("[")
        ? entryOut(holder, TreeEdit.position(step))
        : memberOut(holder, member(holder, step).orElseThrow());
  }

  private static boolean isOnly(Stretch holder) {
    return holder.members().size() + holder.entries().size() == 1;
  }

  private String memberOut(Stretch holder, Stretch.Member member) {
    int index = holder.members().indexOf(member);
    if (holder.form() == Stretch.Form.BLOCK) {
      int from = lineStart(member.keyStart());
      if (!text.substring(from, member.keyStart()).isBlank()) {
        // Behind the dash of a list's entry: the key stays and says nothing.
        return spliced(member.keyEnd() + 1, member.value().end(), "");
      }
      return spliced(from, lineEnd(member.value().end(), true), "");
    }
    if (index > 0) {
      return spliced(holder.members().get(index - 1).value().end(), member.value().end(), "");
    }
    boolean only = holder.members().size() == 1;
    int to = only ? member.value().end() : holder.members().get(1).keyStart();
    return spliced(member.keyStart(), to, "");
  }

  private String entryOut(Stretch list, int index) {
    Stretch entry = list.entries().get(index);
    if (list.form() == Stretch.Form.BLOCK) {
      return spliced(lineStart(dash(entry)), lineEnd(entry.end(), true), "");
    }
    if (index > 0) {
      return spliced(list.entries().get(index - 1).end(), entry.end(), "");
    }
    int to = list.entries().size() == 1 ? entry.end() : list.entries().get(1).start();
    return spliced(entry.start(), to, "");
  }

  // Lines

  private int dash(Stretch entry) {
    return text.lastIndexOf('-', entry.start() - 1);
  }

  private String spliced(int from, int to, String fresh) {
    return text.substring(0, from) + fresh + text.substring(to);
  }

  private int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  /** Where the line ends on which a place is; with or without what ends it. */
  private int lineEnd(int at, boolean with) {
    int end = text.indexOf('\n', at);
    if (end < 0) {
      return text.length();
    }
    if (with) {
      return end + 1;
    }
    return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  private String newLine() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }
}
