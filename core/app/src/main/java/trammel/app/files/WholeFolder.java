package trammel.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.LinkedHashMap;
import java.util.Map;
import trammel.app.commandline.CommandFailure;

/**
 * A folder that is written as a whole: it holds all of its files or is not there. A folder written
 * before is replaced only if nothing in it was added or changed since, which a list of its files
 * with their SHA-256 sums tells.
 */
public final class WholeFolder {
  private static final String LIST = "files.sha256";

  private final Path folder;

  /**
   * @param folder where to write
   */
  public WholeFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  /**
   * Refuses a folder that cannot be written or must not be replaced; to be asked before work
   * begins.
   *
   * @throws CommandFailure if there is something that would be lost
   */
  public void refuseToLose() {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw CommandFailure.badInput(
          "--out was given "
              + folder
              + ", which is a file; give a folder, or a name for a new one.");
    }
    try {
      Map<String, String> known = known();
      refuseStrange(folder, known);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    }
  }

  private Map<String, String> known() throws IOException {
    Map<String, String> known = new LinkedHashMap<>();
    Path list = folder.resolve(LIST);
    if (Files.isRegularFile(list)) {
      for (String line : Files.readAllLines(list)) {
        int gap = line.indexOf("  ");
        if (gap > 0) {
          known.put(line.substring(gap + 2), line.substring(0, gap));
        }
      }
    }
    return known;
  }

  private void refuseStrange(Path inside, Map<String, String> known) throws IOException {
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(inside)) {
      for (Path entry : entries) {
        String name = folder.relativize(entry).toString().replace('\\', '/');
        if (Files.isDirectory(entry)) {
          refuseStrange(entry, known);
        } else if (!known.containsKey(name) && !(name.equals(LIST) && !known.isEmpty())) {
          throw keep(name, "was not written by trammel");
        } else if (!name.equals(LIST) && !known.get(name).equals(sum(Files.readAllBytes(entry)))) {
          throw keep(name, "was changed after trammel wrote it");
        }
      }
    }
  }

  private CommandFailure keep(String name, String why) {
    return CommandFailure.badInput(
        "--out was given "
            + folder
            + ", but "
            + name
            + " in it "
            + why
            + " and would be lost. Give a new folder, or take it out first.");
  }

  /**
   * Writes the files into a new folder beside it, then puts that in its place.
   *
   * @throws CommandFailure if it cannot; the folder is then as it was
   */
  public void write(FileSet files) {
    refuseToLose();
    Path part = null;
    try {
      Files.createDirectories(folder.getParent());
      part = Files.createTempDirectory(folder.getParent(), "." + folder.getFileName() + "-");
      fill(part.resolve("new"), files);
      if (Files.exists(folder)) {
        Files.move(folder, part.resolve("old"));
      }
      try {
        Files.move(part.resolve("new"), folder);
      } catch (IOException refused) {
        if (Files.exists(part.resolve("old"))) {
          Files.move(part.resolve("old"), folder);
        }
        throw refused;
      }
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    } finally {
      clear(part);
    }
  }

  private static void fill(Path into, FileSet files) throws IOException {
    StringBuilder list = new StringBuilder();
    for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
      Path path = into.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
      list.append(sum(file.getValue())).append("  ").append(file.getKey()).append('\n');
    }
    Files.write(into.resolve(LIST), list.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String sum(byte[] content) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      StringBuilder text = new StringBuilder(2 * digest.length);
      for (byte b : digest) {
        text.append(Character.forDigit((b >> 4) & 15, 16)).append(Character.forDigit(b & 15, 16));
      }
      return text.toString();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** What cannot be taken away stays; it holds nothing that is missed. */
  private static void clear(Path path) {
    if (path == null) {
      return;
    }
    if (Files.isDirectory(path)) {
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
