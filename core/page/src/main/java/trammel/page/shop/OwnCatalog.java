package trammel.page.shop;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.page.folder.Edit;
import trammel.page.folder.Refused;
import trammel.page.folder.TextFile;
import trammel.planning.catalog.CatalogFields;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.TreeEdit;
import trammel.reading.tree.WrittenDocument;

/**
 * The texts of the shop's own catalog files as they stood at one moment. A change touches single
 * values of one text; written is what changed, if the file still is as it was read.
 */
final class OwnCatalog {
  private static final String NEW_FILE = "page";
  private static final String KIND = "catalog file";

  private final Path folder;
  private final Map<String, String> read;
  private final Map<String, WrittenDocument> documents = new TreeMap<>();

  private OwnCatalog(Path folder, Map<String, String> read) {
    this.folder = folder;
    this.read = read;
    read.forEach(this::put);
  }

  /**
   * The catalog in a folder; one without a file where there is no folder yet.
   *
   * @throws Refused if a file of it cannot be read
   * @throws trammel.reading.tree.BadInputException if one is no document
   */
  static OwnCatalog in(Path folder) {
    Map<String, String> read = new TreeMap<>();
    for (Path file : files(folder)) {
      read.put(file.getFileName().toString(), TextFile.read(file, KIND));
    }
    return new OwnCatalog(folder, read);
  }

  /** Whether a folder has a file that is of a catalog by its name. */
  static boolean isIn(Path folder) {
    return !files(folder).isEmpty();
  }

  private static List<Path> files(Path folder) {
    List<Path> files = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
        for (Path file : all) {
          if (DocumentFormat.ofFileName(file.toString()).isPresent() && Files.isRegularFile(file)) {
            files.add(file);
          }
        }
      } catch (IOException unread) {
        throw CommandFailure.couldNotRead(folder, unread);
      }
    }
    return files;
  }

  private void put(String name, String text) {
    documents.put(name, WrittenDocument.of(name, TextFile.withoutMark(text)));
  }

  /** What each file says now, by its name. */
  Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    documents.forEach(
        (name, document) ->
            texts.put(name, TextFile.mark(read.getOrDefault(name, "")) + document.text()));
    return texts;
  }

  /** The file that has something at a path; empty if none has. */
  Optional<String> holding(String path) {
    for (String name : documents.keySet()) {
      Location where = new Location(name, 0, 0, path);
      if (new TreeEdit(where).find(root(name)).isPresent()) {
        return Optional.of(name);
      }
    }
    return Optional.empty();
  }

  /** What a file says. */
  ObjectNode root(String name) {
    return documents.get(name).root();
  }

  /**
   * The file into which a value of an entry goes: the one that has the entry, else one with others
   * of its section in the same units, else one that is made for it.
   *
   * @param section key of the section
   * @param entry path of the entry
   */
  String fileFor(String section, String entry, UnitSystem units, Currency currency) {
    Optional<String> holding = holding(entry);
    if (holding.isPresent()) {
      return holding.get();
    }
    for (String name : documents.keySet()) {
      if (root(name).findObject(section).isPresent() && units(name) == units) {
        return name;
      }
    }
    String name = NEW_FILE + (units == UnitSystem.US ? "" : "-" + units.word()) + ".yaml";
    if (!documents.containsKey(name)) {
      put(name, head(units, currency));
    }
    return name;
  }

  private UnitSystem units(String name) {
    return root(name).find("units").orElse(null) instanceof TextNode word
            && word.text().equals(UnitSystem.METRIC.word())
        ? UnitSystem.METRIC
        : UnitSystem.US;
  }

  private static String head(UnitSystem units, Currency currency) {
    return "format: "
        + CatalogFields.FORMAT
        + "\nunits: "
        + units.word()
        + "\ncurrency: "
        + currency.getCurrencyCode()
        + "\nprices: entered by the shop\n";
  }

  /** Makes a change in the text of a file. */
  void change(String name, Edit edit) {
    WrittenDocument document = documents.get(name);
    documents.put(
        name,
        edit.to().isPresent()
            ? document.with(edit.path(), edit.to().get())
            : document.without(edit.path()));
  }

  /** True if anything is other than it was read. */
  boolean isChanged() {
    return !texts().equals(read);
  }

  /**
   * Writes what has changed.
   *
   * @throws Refused if another program changed one of these files meanwhile; nothing is written
   *     then
   */
  void write() {
    Map<String, String> changed = texts();
    changed.entrySet().removeIf(file -> file.getValue().equals(read.get(file.getKey())));
    changed.forEach(
        (name, text) -> {
          if (!isAsRead(name)) {
            throw new Refused(
                409,
                "catalog/"
                    + name
                    + " was changed by another program at this moment; look at it and enter it"
                    + " again.");
          }
        });
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    }
    changed.forEach((name, text) -> SafeFile.write(folder.resolve(name), text));
  }

  private boolean isAsRead(String name) {
    Path file = folder.resolve(name);
    return read.containsKey(name)
        ? Files.isRegularFile(file) && TextFile.read(file, KIND).equals(read.get(name))
        : !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }
}
