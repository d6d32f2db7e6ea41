package trammel.planning.catalog;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldReader;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Tolerances;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.Problems;

/**
 * Reads a catalog from folders of JSON or YAML files. In one folder every name stands once. A later
 * folder may add entries, and may name an earlier one again to change some of its keys: that is how
 * a shop sets its own prices and terms over the standard catalog. Everything wrong with all files
 * is reported at once. Between the standard catalog and the shop's own, plugins may add entries.
 */
public final class CatalogReader {
  private final Problems problems = new Problems();
  private final List<CatalogSection> sections = CatalogFields.sections();
  private final List<Field<?>> top = CatalogFields.top(sections);
  private final List<CatalogEntries> entries = new ArrayList<>();
  private final Map<String, LocalDate> priceDates = new LinkedHashMap<>();
  private final List<String> priceSources = new ArrayList<>();
  private Optional<Currency> currency = Optional.empty();
  private Path first;
  private int foldersRead;

  /** True once a file could not be read at all: what is missing then may well stand in it. */
  private boolean unreadable;

  private CatalogReader() {
    for (CatalogSection section : sections) {
      entries.add(new CatalogEntries(section, problems));
    }
  }

  /**
   * Reads the catalog in one folder.
   *
   * @throws BadInputException with everything that is wrong with it
   */
  public static Catalog read(Path folder) {
    return read(List.of(folder));
  }

  /**
   * Reads the catalog in several folders, the standard one first.
   *
   * @throws BadInputException with everything that is wrong with it
   * @throws IllegalArgumentException if no folder was given
   */
  public static Catalog read(List<Path> folders) {
    if (folders.isEmpty()) {
      throw new IllegalArgumentException(
          "no catalog folder was given; at least one is needed. Name the standard catalog.");
    }
    return begin(folders.get(0)).finish(folders.subList(1, folders.size()));
  }

  /** Reads the files of the first folder; nothing is refused before {@link #finish}. */
  public static CatalogReader begin(Path standard) {
    CatalogReader reader = new CatalogReader();
    reader.readFolder(standard);
    return reader;
  }

  /**
   * Reads the files of the first folder but those that another has under the same name, and then
   * those of the other.
   *
   * @param standard the standard catalog
   * @param stock the folder whose files take the place of those of the same names
   */
  public static CatalogReader begin(Path standard, Path stock) {
    CatalogReader reader = new CatalogReader();
    reader.first = standard;
    for (Path file : reader.files(standard)) {
      if (!Files.exists(stock.resolve(file.getFileName()))) {
        reader.readFile(file, reader.foldersRead);
      }
    }
    reader.foldersRead++;
    reader.readFolder(stock);
    return reader;
  }

  /**
   * Adds what a plugin brings, unless something is wrong with it: then nothing of it is added.
   *
   * @return what is wrong, in a sentence that names the plugin; empty if it was added
   */
  public Optional<String> bring(PluginCatalog catalog) {
    try {
      ObjectNode root = DocumentReader.read(catalog.fileName(), catalog.text());
      refuseUnsound(root);
      readRoot(root, foldersRead);
      foldersRead++;
      return Optional.empty();
    } catch (BadInputException refused) {
      return Optional.of(
          "the catalog that plugin "
              + catalog.plugin()
              + " brings was left out: "
              + refused.problems().get(0).text());
    }
  }

  /** Reads what a plugin brings by itself first, so that a fault in it spoils nothing else. */
  private void refuseUnsound(ObjectNode root) {
    CatalogReader trial = new CatalogReader();
    trial.currency = currency;
    trial.readRoot(root, 0);
    CatalogAssembly assembly =
        new CatalogAssembly(currency.orElse(Currency.getInstance("USD")), trial.problems);
    for (int i = 0; i < sections.size(); i++) {
      for (CatalogEntry entry : trial.entries.get(i).all()) {
        refuseTaken(i, entry, trial.problems);
        trial.assemble(sections.get(i), entry, assembly);
      }
    }
    assembly.alternates.forEach(
        (item, where) -> {
          if (!isPriced(item)) {
            assembly.requireItem(item, where);
          }
        });
    trial.problems.throwIfErrors();
  }

  private void refuseTaken(int section, CatalogEntry entry, Problems into) {
    CatalogSection of = sections.get(section);
    if (!of.isForPlugins()) {
      into.error(
          entry.location(),
          "an entry in " + of.key(),
          "items and operations",
          "Take it out; what else the plugin works with is in the catalog of every shop.");
    } else if (entries.get(section).has(entry.key()) || of.isPriced() && isPriced(entry.key())) {
      into.error(
          entry.location(),
          "'" + entry.key() + "', which is there already (" + whereIs(entry.key()) + ")",
          "entries that are in no other catalog",
          "Give it a name of its own.");
    }
  }

  private boolean isPriced(String key) {
    for (int i = 0; i < sections.size(); i++) {
      if (sections.get(i).isPriced() && entries.get(i).has(key)) {
        return true;
      }
    }
    return false;
  }

  private String whereIs(String key) {
    for (CatalogEntries section : entries) {
      Optional<CatalogEntry> found = section.find(key);
      if (found.isPresent()) {
        return found.get().location().file();
      }
    }
    return "";
  }

  /**
   * Reads the files of the later folders and makes the catalog of all. To be called once.
   *
   * @throws BadInputException with everything that is wrong with it
   */
  public Catalog finish(List<Path> later) {
    for (Path folder : later) {
      readFolder(folder);
    }
    if (unreadable) {
      problems.throwIfErrors();
    }
    Location whole = new Location(first.toString(), 0, 0, "");
    if (currency.isEmpty()) {
      problems.error(
          whole.inside(CatalogFields.CURRENCY.key()),
          "nothing",
          "the currency of the prices",
          "Add currency, such as USD, to the files with prices.");
    }
    // Without a currency nothing is returned; any will do to find what else is wrong.
    CatalogAssembly assembly =
        new CatalogAssembly(currency.orElse(Currency.getInstance("USD")), problems);
    for (int i = 0; i < sections.size(); i++) {
      assemble(sections.get(i), entries.get(i), whole, assembly);
    }
    assembly.alternates.forEach(assembly::requireItem);
    new ListedPrices(assembly).apply();
    problems.throwIfErrors();
    return assembly.catalog(priceDates, priceSources);
  }

  /**
   * An entry as the files write it, later ones over earlier ones.
   *
   * @param section key of its section
   * @param name its name; that of the section where the section is one entry itself
   * @param node what is written of it
   * @param units what its bare numbers mean
   */
  public record Written(String section, String name, ObjectNode node, UnitSystem units) {}

  /** Every entry that has been read so far, whether or not a catalog can be made of it. */
  public List<Written> written() {
    List<Written> written = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      for (CatalogEntry entry : entries.get(i).all()) {
        written.add(new Written(sections.get(i).key(), entry.key(), entry.node(), entry.units()));
      }
    }
    return written;
  }

  // Files

  private void readFolder(Path folder) {
    if (first == null) {
      first = folder;
    }
    for (Path file : files(folder)) {
      readFile(file, foldersRead);
    }
    foldersRead++;
  }

  private List<Path> files(Path folder) {
    List<Path> files = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
        for (Path file : all) {
          if (DocumentFormat.ofFileName(file.toString()).isPresent()) {
            files.add(file);
          }
        }
      } catch (IOException | DirectoryIteratorException e) {
        refuseFolder(folder, "a folder that cannot be read", "Check its permissions.");
        return files;
      }
    }
    if (files.isEmpty()) {
      refuseFolder(
          folder,
          Files.isDirectory(folder) ? "a folder without a catalog file" : "no such folder",
          "Check the name and the folder you are in.");
    }
    Collections.sort(files);
    return files;
  }

  private void refuseFolder(Path folder, String given, String remedy) {
    unreadable = true;
    problems.error(
        new Location(folder.toString(), 0, 0, ""),
        given,
        "a folder with catalog files, .json or .yaml",
        remedy);
  }

  private void readFile(Path path, int folder) {
    ObjectNode root;
    try {
      root = DocumentReader.read(path);
    } catch (BadInputException refused) {
      unreadable = true;
      for (Problem problem : refused.problems()) {
        problems.add(problem);
      }
      return;
    }
    readRoot(root, folder);
  }

  private void readRoot(ObjectNode root, int folder) {
    FieldValues head = new FieldReader(UnitSystem.US, Tolerances.USUAL, problems).read(root, top);
    checkCurrency(head);
    Optional<String> word = head.find(CatalogFields.UNITS);
    if (word.isEmpty()) {
      return;
    }
    FileTop file =
        new FileTop(
            UnitSystem.ofWord(word.get()),
            folder,
            new CatalogEntry.Usual(
                head.find(CatalogFields.SUPPLIER), head.find(CatalogFields.LEAD_DAYS)));
    boolean priced = false;
    for (int i = 0; i < sections.size(); i++) {
      CatalogSection section = sections.get(i);
      Optional<ObjectNode> written = root.findObject(section.key());
      if (written.isPresent()) {
        collect(section, entries.get(i), written.get(), file);
        priced = priced || section.isPriced();
      }
    }
    notePriceSource(head, priced);
  }

  private void checkCurrency(FieldValues head) {
    Optional<Currency> given = head.find(CatalogFields.CURRENCY);
    if (given.isEmpty()) {
      return;
    }
    if (currency.isPresent() && !currency.equals(given)) {
      problems.error(
          head.locationOf(CatalogFields.CURRENCY),
          given.get().getCurrencyCode(),
          "the currency of the other files, " + currency.get().getCurrencyCode(),
          "Price all files in one currency.");
      return;
    }
    currency = given;
  }

  private void notePriceSource(FieldValues head, boolean priced) {
    Optional<LocalDate> day = head.find(CatalogFields.PRICED_ON);
    if (day.isPresent()) {
      priceDates.put(head.location().file(), day.get());
    }
    Optional<String> source = head.find(CatalogFields.PRICES);
    if (source.isPresent()) {
      if (!priceSources.contains(source.get())) {
        priceSources.add(source.get());
      }
    } else if (priced && !head.isWritten(CatalogFields.PRICES)) {
      problems.error(
          head.locationOf(CatalogFields.PRICES),
          "nothing",
          "where the prices of this file come from",
          "Add prices, such as: suppliers' lists of November 2026, or invented examples.");
    }
  }

  // Entries

  private void collect(
      CatalogSection section, CatalogEntries into, ObjectNode written, FileTop file) {
    if (section.isSingle()) {
      into.put(file.entry(section.key(), written));
      return;
    }
    for (ObjectNode.Member member : written.members()) {
      if (member.value() instanceof ObjectNode node) {
        into.put(file.entry(member.key(), node));
      } else {
        problems.error(
            member.value().location(),
            member.value().given(),
            "a group of keys",
            "Write the fields of '" + member.key() + "' in braces, such as {\"title\": \"...\"}.");
      }
    }
  }

  /** What the top of a file says of every entry in it. */
  private record FileTop(UnitSystem units, int folder, CatalogEntry.Usual usual) {
    CatalogEntry entry(String key, ObjectNode node) {
      return new CatalogEntry(key, node, units, folder, usual);
    }
  }

  // Assembly

  private void assemble(
      CatalogSection section, CatalogEntries written, Location whole, CatalogAssembly assembly) {
    boolean empty = true;
    for (CatalogEntry entry : written.all()) {
      empty = false;
      assemble(section, entry, assembly);
    }
    if (section instanceof LimitSection limits) {
      limits.requireAll(written, whole, assembly);
    } else if (empty && section.isNeeded()) {
      problems.error(
          whole.inside(section.key()),
          "nothing",
          section.isSingle() ? "a group of keys" : "at least one entry",
          "Add " + section.key() + " (" + section.help() + ") to a file of the catalog.");
    }
  }

  private void assemble(CatalogSection section, CatalogEntry entry, CatalogAssembly assembly) {
    Problems own = new Problems();
    FieldValues values =
        new FieldReader(entry.units(), Tolerances.USUAL, own).read(entry.node(), section.fields());
    problems.addAll(own);
    if (own.hasErrors()) {
      assembly.refuse(section, entry);
      return;
    }
    try {
      section.add(entry, values, assembly);
    } catch (IllegalArgumentException impossible) {
      assembly.refuse(section, entry);
      // The record says which of its values are impossible and what to do.
      problems.error(
          entry.location(),
          "values that do not go together",
          "an entry that makes sense as a whole",
          impossible.getMessage());
    }
  }
}
