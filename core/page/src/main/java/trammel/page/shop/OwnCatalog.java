package trammel.page.shop;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.page.folder.Edit;
import trammel.page.folder.JobFolder;
import trammel.page.folder.Refused;
import trammel.planning.catalog.CatalogFields;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;
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

  private final Path folder;
  private final Map<String, String> read;
  private final Map<String, String> texts;

  private OwnCatalog(Path folder, Map<String, String> read, Map<String, String> texts) {
    this.folder = folder;
    this.read = read;
    this.texts = texts;
  }

  /**
   * The catalog in a folder; one without a file where there is no folder yet.
   *
   * @throws Refused if a file of it cannot be read
   */
  static OwnCatalog in(Path folder) {
    Map<String, String> texts = new TreeMap<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
        for (Path file : files) {
          String name = file.getFileName().toString();
          if (DocumentFormat.ofFileName(name).isPresent() && Files.isRegularFile(file)) {
            texts.put(name, text(file));
          }
        }
      } catch (IOException unread) {
        throw CommandFailure.couldNotRead(folder, unread);
      }
    }
    return new OwnCatalog(folder, texts, new TreeMap<>(texts));
  }

  private static String text(Path file) throws IOException {
    if (Files.size(file) > DocumentReader.LARGEST_BYTES) {
      throw new Refused(422, file.getFileName() + " is too large for a catalog file.");
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
          .toString();
    } catch (CharacterCodingException other) {
      throw new Refused(
          422, file.getFileName() + " is not text in UTF-8: save it as UTF-8 in your editor.");
    }
  }

  /** What each file says now, by its name. */
  Map<String, String> texts() {
    return texts;
  }

  private WrittenDocument document(String name) {
    return WrittenDocument.of(name, JobFolder.withoutMark(texts.get(name)));
  }

  /** The file that has something at a path; empty if none has. */
  Optional<String> holding(String path) {
    for (String name : texts.keySet()) {
      Location where = new Location(name, 0, 0, path);
      if (new TreeEdit(where).find(document(name).root()).isPresent()) {
        return Optional.of(name);
      }
    }
    return Optional.empty();
  }

  /** What a file says. */
  ObjectNode root(String name) {
    return document(name).root();
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
    for (String name : texts.keySet()) {
      if (root(name).findObject(section).isPresent() && units(name) == units) {
        return name;
      }
    }
    String name = NEW_FILE + (units == UnitSystem.US ? "" : "-" + units.word()) + ".yaml";
    texts.computeIfAbsent(name, any -> head(units, currency));
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
    WrittenDocument document = document(name);
    document =
        edit.to().isPresent()
            ? document.with(edit.path(), edit.to().get())
            : document.without(edit.path());
    texts.put(name, JobFolder.mark(texts.get(name)) + document.text());
  }

  /** True if anything is other than it was read. */
  boolean isChanged() {
    return !texts.equals(read);
  }

  /**
   * Writes what has changed.
   *
   * @throws Refused if another program changed one of these files meanwhile; nothing is written
   *     then
   */
  void write() {
    texts.forEach(
        (name, text) -> {
          if (!text.equals(read.get(name)) && !isAsRead(name)) {
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
    texts.forEach(
        (name, text) -> {
          if (!text.equals(read.get(name))) {
            SafeFile.write(folder.resolve(name), text);
          }
        });
  }

  private boolean isAsRead(String name) {
    Path file = folder.resolve(name);
    try {
      return read.containsKey(name)
          ? Files.isRegularFile(file) && text(file).equals(read.get(name))
          : !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(file, unread);
    }
  }
}
