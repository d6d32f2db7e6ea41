package trammel.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What Trammel wrote into a folder last: each file with its SHA-256 sum, the command and the jobs
 * it was written for. {@code sha256sum -c} reads it too. A file has two sums while a command puts a
 * new one in its place, so that a kill leaves no file that is not known.
 */
final class WrittenList {
  /** Its name in the folder. */
  static final String NAME = "files.sha256";

  private static final String HEAD =
      "# What trammel wrote here, by command and job. By this list it knows its own files from yours.";
  private static final String GROUP = "#\t";

  /**
   * For what a file was written.
   *
   * @param command the command that wrote it
   * @param jobs the numbers of its jobs; none for a blank sheet that belongs to no job
   */
  record Purpose(String command, List<String> jobs) {
    Purpose {
      jobs = jobs.stream().map(WrittenList::composed).toList();
    }

    /** True if both are for the same jobs, or one of them for none. */
    boolean mayShareWith(Purpose other) {
      return jobs.isEmpty() || other.jobs.isEmpty() || jobs.equals(other.jobs);
    }

    /** Its jobs in words. */
    String text() {
      return (jobs.size() == 1 ? "job " : "jobs ") + String.join(", ", jobs);
    }
  }

  private record Entry(Purpose purpose, Set<String> sums) {}

  private final Map<String, Entry> entries = new LinkedHashMap<>();

  /** A letter with its mark may be stored as one sign or as two; the number is the same. */
  private static String composed(String number) {
    return Normalizer.normalize(number, Normalizer.Form.NFC);
  }

  /** The list of a folder; empty if it has none, or a file of that name that is no such list. */
  static WrittenList of(Path folder) throws IOException {
    WrittenList list = new WrittenList();
    Path file = folder.resolve(NAME);
    if (isList(file)) {
      Purpose purpose = new Purpose("", List.of());
      for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n")) {
        int gap = line.indexOf("  ");
        if (line.startsWith(GROUP)) {
          String[] words = line.substring(GROUP.length()).split("\t");
          purpose = new Purpose(words[0], Arrays.asList(words).subList(1, words.length));
        } else if (gap > 0 && !line.startsWith("#") && staysInside(line.substring(gap + 2))) {
          list.add(line.substring(gap + 2), purpose, line.substring(0, gap));
        }
      }
    }
    return list;
  }

  /** A list that someone tampered with must lead to no file elsewhere. */
  private static boolean staysInside(String name) {
    try {
      Path path = Path.of(name).normalize();
      return !path.isAbsolute() && !path.startsWith("..") && !path.toString().isEmpty();
    } catch (InvalidPathException noPath) {
      return false;
    }
  }

  /** True if the file is such a list and not one of the user's own. */
  static boolean isList(Path file) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    byte[] head = HEAD.getBytes(StandardCharsets.UTF_8);
    byte[] start = new byte[head.length];
    try (var in = Files.newInputStream(file)) {
      return in.readNBytes(start, 0, start.length) == head.length && Arrays.equals(start, head);
    }
  }

  /** A list with the same files. */
  WrittenList copy() {
    WrittenList copy = new WrittenList();
    entries.forEach(
        (name, entry) ->
            copy.entries.put(name, new Entry(entry.purpose(), new LinkedHashSet<>(entry.sums()))));
    return copy;
  }

  /** Adds what a file may hold; a new purpose takes the place of the earlier one. */
  void add(String name, Purpose purpose, String sum) {
    Entry earlier = entries.get(name);
    Set<String> sums = earlier == null ? new LinkedHashSet<>() : earlier.sums();
    sums.add(sum);
    entries.put(name, new Entry(purpose, sums));
  }

  /** Takes a file off the list. */
  void remove(String name) {
    entries.remove(name);
  }

  /** Whether the list names a file. */
  boolean names(String name) {
    return entries.containsKey(name);
  }

  /** Whether a file holds what was written there last for jobs that may share the folder. */
  boolean knows(String name, Purpose purpose, String sum) {
    Entry entry = entries.get(name);
    return entry != null && entry.purpose().mayShareWith(purpose) && entry.sums().contains(sum);
  }

  /** The purpose of a file for other jobs; empty if the folder holds none. */
  Optional<Purpose> stranger(Purpose purpose) {
    for (Entry entry : entries.values()) {
      if (!entry.purpose().mayShareWith(purpose)) {
        return Optional.of(entry.purpose());
      }
    }
    return Optional.empty();
  }

  /** The files that were written for the very same purpose. */
  List<String> namesOf(Purpose purpose) {
    List<String> names = new ArrayList<>();
    entries.forEach(
        (name, entry) -> {
          if (entry.purpose().equals(purpose)) {
            names.add(name);
          }
        });
    return names;
  }

  /** The files that were written for some of these jobs and no other. */
  List<String> namesOf(Set<String> jobs) {
    Set<String> composed = new LinkedHashSet<>();
    jobs.forEach(job -> composed.add(composed(job)));
    List<String> names = new ArrayList<>();
    entries.forEach(
        (name, entry) -> {
          List<String> theirs = entry.purpose().jobs();
          if (!theirs.isEmpty() && composed.containsAll(theirs)) {
            names.add(name);
          }
        });
    return names;
  }

  /** How many files are on it. */
  int size() {
    return entries.size();
  }

  /** True if no file is on it. */
  boolean isEmpty() {
    return entries.isEmpty();
  }

  /** The list as it is written. */
  String text() {
    Map<Purpose, List<String>> groups = new LinkedHashMap<>();
    entries.forEach(
        (name, entry) ->
            groups
                .computeIfAbsent(entry.purpose(), purpose -> new ArrayList<>())
                .addAll(lines(name, entry.sums())));
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    groups.forEach(
        (purpose, lines) -> {
          text.append(GROUP).append(purpose.command());
          purpose.jobs().forEach(job -> text.append('\t').append(job));
          text.append('\n');
          lines.forEach(text::append);
        });
    return text.toString();
  }

  private static List<String> lines(String name, Collection<String> sums) {
    return sums.stream().map(sum -> sum + "  " + name + "\n").toList();
  }

  /** The sum of a file's content. */
  static String sum(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
