package trammel.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/**
 * The folder beside a job file with the shop's own prices and terms. Whatever is there under its
 * name and cannot be used is said: without it the price would be another.
 */
public final class ShopCatalog {
  private static final String NAME = "catalog";

  private ShopCatalog() {}

  /** Where the shop's catalog beside the jobs of a folder is, or would be. */
  public static Path place(Path jobFolder) {
    return jobFolder.resolve(NAME);
  }

  /**
   * The shop's catalog beside the jobs of a folder; empty if there is none.
   *
   * @throws CommandFailure if something of that name is no folder, or one that is meant has it in
   *     other letters
   */
  static Optional<Path> beside(Path jobFolder) {
    Path catalog = place(jobFolder);
    boolean there = Files.isDirectory(catalog);
    if (!there && Files.exists(catalog, LinkOption.NOFOLLOW_LINKS)) {
      throw CommandFailure.badInput(
          catalog
              + (Files.exists(catalog) ? " is a file" : " is a link that leads nowhere")
              + ", not the folder of the shop's own catalog. Put the folder there, or take this away"
              + " to price by the standard catalog.");
    }
    refuseOtherLetters(jobFolder, catalog, there);
    return there ? Optional.of(catalog) : Optional.empty();
  }

  private static void refuseOtherLetters(Path jobFolder, Path catalog, boolean there) {
    String[] names = jobFolder.toFile().list();
    if (names == null) {
      return;
    }
    for (String name : names) {
      if (name.equalsIgnoreCase(NAME) && !name.equals(NAME)) {
        Path other = jobFolder.resolve(name);
        if (!there || !isSame(catalog, other)) {
          throw CommandFailure.badInput(
              other
                  + " is not read as the shop's own catalog, whose name is "
                  + NAME
                  + " in small letters. Rename it, or take it away to price without it.");
        }
      }
    }
  }

  /** Some file systems know no difference between small and capital letters. */
  private static boolean isSame(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException unread) {
      return false;
    }
  }
}
