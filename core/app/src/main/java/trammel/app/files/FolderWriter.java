package trammel.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.app.commandline.CommandFailure;

/**
 * Writes files that belong together into a folder. All of them are written beside their places
 * first. A folder that is not there appears in one move with all of its files. In one that is
 * there, the list of what is known is written first, with the sums of the old files and of the new;
 * then each file takes its place in one move; then the list is written without the old sums.
 * Whenever that is killed, every file is whole and known, and a file of the user is where it was or
 * kept as a copy.
 */
final class FolderWriter {
  /** Stands in the folder while its files change places. */
  static final String UNFINISHED = "trammel-unfinished.txt";

  /** Holds the new files until they take their places. */
  static final String FRESH = ".trammel-new";

  static final String LOCK = ".trammel-lock";

  private static final String UNFINISHED_TEXT =
      "A trammel command was stopped while it put files here: some may be old and some new.\n"
          + "Give the same command again; it puts all of them here and takes this note away.\n";
  private static final int MOST_NAMED = 5;

  private final Path folder;
  private final Path given;
  private final WrittenList.Purpose purpose;
  private final boolean replace;
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param folder the folder, links followed
   * @param given its name as the user knows it
   * @param purpose for what it is written
   * @param replace whether a file that is not known may be replaced, a copy kept
   */
  FolderWriter(Path folder, Path given, WrittenList.Purpose purpose, boolean replace) {
    this.folder = folder;
    this.given = given;
    this.purpose = purpose;
    this.replace = replace;
  }

  /** Refuses what is known before there are any files to write. */
  void refuseToLose() throws IOException {
    WrittenList list = WrittenList.of(folder);
    refuseStranger(list);
    List<String> changed = new ArrayList<>();
    for (String name : list.namesOf(purpose)) {
      Path file = folder.resolve(name);
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && !isKnown(file, name, list)) {
        changed.add(name);
      }
    }
    refuse(changed, list);
  }

  /** Writes all files or none. */
  OutFolder.Written write(FileSet files) {
    try {
      boolean written = false;
      if (!Files.exists(folder)) {
        written = writeWhole(files);
      }
      if (!written) {
        takeAwayLeftovers();
        writeInto(files);
      }
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(given, refused);
    }
    return new OutFolder.Written(files.names().stream().map(given::resolve).toList(), remarks);
  }

  // A folder that is not there

  private Path freshBeside() {
    return folder.resolveSibling("." + folder.getFileName() + FRESH);
  }

  /** False if another command made the folder meanwhile. */
  private boolean writeWhole(FileSet files) throws IOException {
    Files.createDirectories(folder.getParent());
    try (FileLock lock = FileLock.of(folder)) {
      if (Files.exists(folder)) {
        return false;
      }
      Path fresh = freshBeside();
      clear(fresh);
      try {
        WrittenList list = new WrittenList();
        for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
          place(fresh, file.getKey(), file.getValue());
          list.add(file.getKey(), purpose, WrittenList.sum(file.getValue()));
        }
        place(fresh, WrittenList.NAME, list.text().getBytes(StandardCharsets.UTF_8));
        Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        SafeFile.forceFolder(folder.getParent());
      } finally {
        clear(fresh);
      }
      return true;
    }
  }

  private static void place(Path root, String name, byte[] content) throws IOException {
    Path file = root.resolve(name);
    Files.createDirectories(file.getParent());
    SafeFile.force(file, content);
  }

  /** What a command left that was killed before this folder was there. */
  private void takeAwayLeftovers() {
    Path fresh = freshBeside();
    if (Files.exists(fresh, LinkOption.NOFOLLOW_LINKS)
        || Files.exists(FileLock.beside(folder), LinkOption.NOFOLLOW_LINKS)) {
      try (FileLock lock = FileLock.of(folder)) {
        clear(fresh);
      }
    }
  }

  // A folder that is there

  private void writeInto(FileSet files) throws IOException {
    try (FileLock lock = FileLock.take(folder.resolve(LOCK), given)) {
      Path fresh = folder.resolve(FRESH);
      clear(fresh);
      WrittenList before = WrittenList.of(folder);
      Set<String> unknown = unknown(files, before);
      try {
        for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
          place(fresh, file.getKey(), file.getValue());
          requireFolder(folder.resolve(file.getKey()).getParent());
        }
        change(files, fresh, before, unknown);
      } finally {
        clear(fresh);
      }
    }
  }

  private void change(FileSet files, Path fresh, WrittenList before, Set<String> unknown)
      throws IOException {
    Path list = folder.resolve(WrittenList.NAME);
    Path unfinished = folder.resolve(UNFINISHED);
    WrittenList both = before.copy();
    WrittenList after = before.copy();
    List<String> outOfDate = new ArrayList<>(before.namesOf(purpose));
    outOfDate.removeAll(files.names());
    outOfDate.forEach(after::remove);
    for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
      String sum = WrittenList.sum(file.getValue());
      if (unknown.contains(file.getKey())) {
        both.remove(file.getKey());
      }
      both.add(file.getKey(), purpose, sum);
      after.remove(file.getKey());
      after.add(file.getKey(), purpose, sum);
    }
    if (unknown.contains(WrittenList.NAME)) {
      keep(WrittenList.NAME);
    }
    SafeFile.write(unfinished, UNFINISHED_TEXT);
    SafeFile.write(list, both.text());
    for (String name : files.names()) {
      if (unknown.contains(name)) {
        keep(name);
      }
      Path place = folder.resolve(name);
      Files.createDirectories(place.getParent());
      SafeFile.rename(fresh.resolve(name), place);
    }
    for (String name : outOfDate) {
      takeAway(name, before);
    }
    SafeFile.write(list, after.text());
    SafeFile.forget(unfinished);
  }

  /** Something else than a folder where one is needed is told before anything changes. */
  private void requireFolder(Path needed) {
    Path there = needed;
    while (!there.equals(folder) && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      throw CommandFailure.badInput(
          given
              + " is to hold the folder "
              + folder.relativize(there)
              + ", but that is a file or a link that leads to no folder. Take it away first.");
    }
  }

  /** Files of the set whose places hold something that Trammel does not know. */
  private Set<String> unknown(FileSet files, WrittenList list) throws IOException {
    if (!replace) {
      refuseStranger(list);
    }
    Set<String> unknown = new LinkedHashSet<>();
    Path ownList = folder.resolve(WrittenList.NAME);
    if (Files.exists(ownList, LinkOption.NOFOLLOW_LINKS) && !WrittenList.isList(ownList)) {
      unknown.add(WrittenList.NAME);
    }
    for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
      Path place = folder.resolve(file.getKey());
      if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
        throw CommandFailure.badInput(
            given.resolve(file.getKey())
                + " is a folder, and a file of that name is to be written. Take it away first.");
      }
      if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)
          && !isKnown(place, file.getKey(), list)
          && !holds(place, file.getValue())) {
        unknown.add(file.getKey());
      }
    }
    if (!replace) {
      refuse(List.copyOf(unknown), list);
    }
    return unknown;
  }

  private boolean isKnown(Path file, String name, WrittenList list) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && list.names(name)
        && list.knows(name, purpose, WrittenList.sum(Files.readAllBytes(file)));
  }

  private static boolean holds(Path file, byte[] content) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Files.size(file) == content.length
        && java.util.Arrays.equals(Files.readAllBytes(file), content);
  }

  private void refuseStranger(WrittenList list) {
    Optional<WrittenList.Purpose> stranger = list.stranger(purpose);
    if (stranger.isPresent()) {
      throw CommandFailure.badInput(
          given
              + " holds files of "
              + stranger.get().text()
              + ", not of "
              + purpose.text()
              + ". Give each a folder of its own; --replace writes here all the same and keeps a"
              + " copy of each file that it replaces.");
    }
  }

  private void refuse(List<String> unknown, WrittenList list) {
    if (unknown.isEmpty()) {
      return;
    }
    StringBuilder named = new StringBuilder();
    for (String name : unknown.subList(0, Math.min(MOST_NAMED, unknown.size()))) {
      named
          .append(given.resolve(name))
          .append(
              list.names(name)
                  ? " was changed after trammel wrote it"
                  : " was not written by trammel")
          .append(".\n");
    }
    if (unknown.size() > MOST_NAMED) {
      named.append(unknown.size() - MOST_NAMED).append(" more files are like that.\n");
    }
    throw CommandFailure.badInput(
        named
            + "Nothing was written, so that nothing is lost. Give another folder, or --replace to"
            + " replace "
            + (unknown.size() == 1 ? "it" : "them")
            + " and keep a copy of the old.");
  }

  /** Moves a file of the user aside, to the first name that is free. */
  private void keep(String name) {
    Path copy = SafeFile.moveAside(folder.resolve(name));
    remarks.add("Kept the old " + given.resolve(name) + " as " + copy.getFileName());
  }

  /** A file of an earlier run that this run no longer writes, unless the user changed it. */
  private void takeAway(String name, WrittenList list) throws IOException {
    Path file = folder.resolve(name);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!isKnown(file, name, list)) {
      remarks.add(
          given.resolve(name) + " is of an earlier run and was changed since, so it stays there");
      return;
    }
    SafeFile.forget(file);
    for (Path up = file.getParent(); !up.equals(folder) && isEmpty(up); up = up.getParent()) {
      SafeFile.forget(up);
    }
  }

  private static boolean isEmpty(Path place) throws IOException {
    if (Files.isSymbolicLink(place)) {
      return false;
    }
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(place)) {
      return !entries.iterator().hasNext();
    }
  }

  /** Takes away what Trammel made; a link in it goes, and what it leads to stays. */
  private static void clear(Path path) {
    if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      try (DirectoryStream<Path> entries = Files.newDirectoryStream(path)) {
        for (Path entry : entries) {
          clear(entry);
        }
      } catch (IOException kept) {
        return;
      }
    }
    SafeFile.forget(path);
  }
}
