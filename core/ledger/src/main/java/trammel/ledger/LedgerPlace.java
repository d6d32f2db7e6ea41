package trammel.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a shop's ledger is: {@code ledger.sqlite} in the folder of its jobs, beside its catalog. A
 * link is followed, so that the file is written where the link points.
 *
 * @param named the name in the shop's folder
 * @param file the file itself, every link followed
 */
public record LedgerPlace(Path named, Path file) {
  /** Its name in the shop's folder. */
  public static final String NAME = "ledger.sqlite";

  /** File systems that are on another machine, as the system names their types. */
  private static final List<String> REMOTE =
      List.of(
          "nfs",
          "cifs",
          "smb",
          "sshfs",
          "webdav",
          "davfs",
          "afs",
          "9p",
          "ceph",
          "gluster",
          "fuse.rclone",
          "ncp",
          "vboxsf",
          "prl_fs",
          "vmhgfs");

  /**
   * The ledger of a shop's folder, which need not be there yet.
   *
   * @throws IllegalArgumentException if the name is a link to nothing: what the ledger holds would
   *     be passed over without a word
   */
  public static LedgerPlace in(Path folder) {
    return of(folder.toAbsolutePath().normalize().resolve(NAME));
  }

  /** The ledger of this name. */
  public static LedgerPlace of(Path named) {
    if (Files.isSymbolicLink(named) && !Files.exists(named)) {
      throw new IllegalArgumentException(
          named
              + " is a link to "
              + target(named)
              + ", where no file is. Bring the file back, or take the link away.");
    }
    try {
      if (Files.exists(named)) {
        return new LedgerPlace(named, named.toRealPath());
      }
      Path folder = named.toAbsolutePath().getParent();
      return new LedgerPlace(
          named, Files.exists(folder) ? folder.toRealPath().resolve(named.getFileName()) : named);
    } catch (IOException refused) {
      throw new UncheckedIOException(named + " (" + refused.getMessage() + ")", refused);
    }
  }

  private static String target(Path link) {
    try {
      return Files.readSymbolicLink(link).toString();
    } catch (IOException unread) {
      return "somewhere else";
    }
  }

  /** True if there is one. */
  public boolean exists() {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** What is to be minded about where it is; empty for a folder on a disk of this machine. */
  public Optional<String> warning() {
    Optional<String> remote = remote();
    if (remote.isPresent()) {
      return Optional.of(
          file
              + " is on another machine ("
              + remote.get()
              + "): locks do not hold there on every system, and two commands at once can spoil"
              + " it. Keep it on a disk of this machine, and use it from this machine alone.");
    }
    return synchronised()
        .map(
            mark ->
                file
                    + " is in a folder that another program copies to other machines ("
                    + mark
                    + " says so): a copy taken in the midst of a change is spoilt, and of two"
                    + " machines' changes one is lost. Keep the ledger outside and put a link in"
                    + " its place; copy backups (trammel ledger backup) instead.");
  }

  private Optional<String> remote() {
    Path folder = file.toAbsolutePath().getParent();
    try {
      String type = Files.getFileStore(folder).type();
      return isRemote(type) ? Optional.of(type) : Optional.empty();
    } catch (IOException notTold) {
      return Optional.empty();
    }
  }

  /** True for the type of a file system on another machine. */
  static boolean isRemote(String type) {
    String small = type.toLowerCase(Locale.ROOT);
    return REMOTE.stream()
        .anyMatch(remote -> small.startsWith(remote) || small.startsWith("fuse." + remote));
  }

  /**
   * A hidden file that says so: programs that keep folders alike leave their own mark at the top of
   * what they copy, and name it by what they do.
   */
  private Optional<String> synchronised() {
    Path home = Path.of(System.getProperty("user.home", "/")).toAbsolutePath();
    for (Path folder = file.toAbsolutePath().getParent();
        folder != null && folder.getParent() != null && !folder.equals(home);
        folder = folder.getParent()) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, ".*")) {
        for (Path hidden : all) {
          String name = hidden.getFileName().toString().toLowerCase(Locale.ROOT);
          if (name.contains("sync") || name.equals(".stfolder")) {
            return Optional.of(hidden.toString());
          }
        }
      } catch (IOException | java.nio.file.DirectoryIteratorException unread) {
        continue;
      }
    }
    return Optional.empty();
  }
}
