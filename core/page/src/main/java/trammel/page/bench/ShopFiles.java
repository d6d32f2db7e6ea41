package trammel.page.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trammel.app.desk.ShopCatalog;
import trammel.ledger.Ledger;
import trammel.ledger.LedgerPlace;

/** The files of a shop on which the price of every job depends. */
final class ShopFiles {
  private ShopFiles() {}

  /** Names, sizes and times of the files: one state of them is told from another by it. */
  static String state(Path folder) {
    List<String> files = catalog(folder);
    files.add(state(folder.resolve(LedgerPlace.NAME), LedgerPlace.NAME));
    return Integer.toHexString(String.join("\n", files).hashCode());
  }

  /** The same of all that a price can come from: the catalog, and the closed jobs of the ledger. */
  static String prices(Path folder) {
    List<String> files = catalog(folder);
    Path ledger = folder.resolve(LedgerPlace.NAME);
    if (Files.exists(ledger)) {
      files.add(closedJobs(ledger));
    }
    return String.join("\n", files);
  }

  private static String closedJobs(Path file) {
    try (Ledger ledger = Ledger.openExisting(file)) {
      return ledger.closedJobs().state();
    } catch (IllegalArgumentException | UncheckedIOException refused) {
      // Whoever asks for a price is told why.
      return state(file, "unusable");
    }
  }

  private static List<String> catalog(Path folder) {
    List<String> files = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(ShopCatalog.place(folder))) {
      for (Path file : all) {
        files.add(state(file, file.getFileName().toString()));
      }
    } catch (IOException none) {
      files.add("none");
    }
    Collections.sort(files);
    return files;
  }

  private static String state(Path file, String name) {
    try {
      BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
      return name + " " + now.size() + " " + now.lastModifiedTime().toMillis();
    } catch (IOException none) {
      return name + " none";
    }
  }
}
