package trammel.page.shop;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.ScratchFolder;
import trammel.page.bench.Bench;
import trammel.page.folder.Edit;
import trammel.page.folder.Refused;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TreeEdit;

/**
 * The cells of the shop's own catalog. What a cell shows is the standard catalog with the shop's
 * own over it; what is entered goes into the shop's own files, where everything else stays as it is
 * written.
 */
final class CatalogTables implements ShopTable {
  private static final long LARGEST_LOGO_BYTES = 5_000_000;

  private final Path folder;
  private final Bench bench;

  /**
   * @param folder the shop's own catalog, whether or not it is there yet
   */
  CatalogTables(Path folder, Bench bench) {
    this.folder = folder;
    this.bench = bench;
  }

  /** The catalog as it is now. */
  WholeCatalog now() {
    return whole(folder);
  }

  /** The shop's own files as they are now. */
  OwnCatalog own() {
    return OwnCatalog.in(folder);
  }

  private WholeCatalog whole(Path own) {
    List<Path> shop = OwnCatalog.isIn(own) ? List.of(own) : List.of();
    return WholeCatalog.of(bench.catalogReader(shop), shop);
  }

  @Override
  public List<Conflict> conflicts(List<Edit> asked) {
    ObjectNode root = now().root();
    List<Conflict> conflicts = new ArrayList<>();
    for (Edit edit : asked) {
      requireShown(edit.path());
      Field<?> field = Cells.field(edit.path());
      Optional<DocumentNode> there = edit.now(root).filter(node -> !(node instanceof EmptyNode));
      boolean seen = Cells.text(there).equals(Cells.text(edit.from()));
      boolean group = there.filter(ObjectNode.class::isInstance).isPresent();
      if (!(group ? edit.to().isEmpty() : seen)
          && !Edit.same(there, Cells.written(field, edit.to()))) {
        conflicts.add(new Conflict(edit.path(), Cells.text(there)));
      }
    }
    return conflicts;
  }

  /** A price in the section of what it is of would not count where a supplier's list has one. */
  private static void requireShown(String path) {
    String section = TreeEdit.steps(new Location("change", 0, 0, path)).get(0);
    if (!TablesJson.isShown(section)) {
      throw new Refused(
          422, "There is no table '" + section + "'. Prices are changed in the table Prices.");
    }
  }

  @Override
  public List<Edit> make(List<Edit> asked) {
    WholeCatalog whole = now();
    OwnCatalog own = own();
    List<Edit> noted = new ArrayList<>();
    for (Edit edit : asked) {
      Edit written = written(edit, whole.root(), own);
      if (!Edit.same(written.from(), written.to())) {
        own.change(fileFor(edit.path(), own, whole), written);
        noted.add(written);
      }
    }
    keep(own, whole.problems());
    return noted;
  }

  /** The change of the shop's own file: a list is written as a whole where it is not yet there. */
  private static Edit written(Edit edit, ObjectNode root, OwnCatalog own) {
    Optional<DocumentNode> to = Cells.written(Cells.field(edit.path()), edit.to());
    int bracket = edit.path().indexOf('[');
    if (bracket < 0) {
      return new Edit(edit.path(), now(edit.path(), own), to);
    }
    String list = edit.path().substring(0, bracket);
    ObjectNode after = new Edit(edit.path(), Optional.empty(), to).in(root);
    Optional<DocumentNode> whole = new TreeEdit(new Location("change", 0, 0, list)).find(after);
    Optional<DocumentNode> was = now(list, own);
    return new Edit(list, was, whole.isPresent() || was.isEmpty() ? whole : Optional.of(noLines()));
  }

  private static DocumentNode noLines() {
    return new ListNode(new Location("change", 0, 0, ""), List.of());
  }

  private static Optional<DocumentNode> now(String path, OwnCatalog own) {
    return own.holding(path)
        .flatMap(name -> new TreeEdit(new Location(name, 0, 0, path)).find(own.root(name)));
  }

  private String fileFor(String path, OwnCatalog own, WholeCatalog whole) {
    List<String> steps = TreeEdit.steps(new Location("change", 0, 0, path));
    String section = steps.get(0);
    boolean single = Cells.section(section).orElseThrow().kind() == FieldKind.SECTION;
    String entry = WholeCatalog.path(section, single ? "" : steps.get(1));
    return own.fileFor(section, entry, whole.unitsOf(entry), bench.catalog().currency());
  }

  @Override
  public void repeat(List<Edit> noted) {
    WholeCatalog whole = now();
    OwnCatalog own = own();
    for (Edit edit : noted) {
      Field<?> field = Cells.field(edit.path());
      if (Edit.same(now(edit.path(), own), Cells.written(field, edit.from()))) {
        own.change(
            fileFor(edit.path(), own, whole),
            new Edit(edit.path(), edit.from(), Cells.written(field, edit.to())));
      }
    }
    keep(own, whole.problems());
  }

  /** Writes the files, unless that would make something wrong that was not wrong before. */
  private void keep(OwnCatalog own, List<Problem> before) {
    if (!own.isChanged()) {
      return;
    }
    Set<String> known = new HashSet<>();
    before.forEach(problem -> known.add(problem.field() + problem.given()));
    List<Problem> fresh =
        problems(own).stream()
            .filter(problem -> !known.contains(problem.field() + problem.given()))
            .toList();
    if (!fresh.isEmpty()) {
      throw new BadInputException(fresh);
    }
    own.write();
    bench.readAnew();
  }

  /** What would be wrong with the catalog if the files were so: they are read in another folder. */
  private List<Problem> problems(OwnCatalog own) {
    try (ScratchFolder trial = new ScratchFolder("shop")) {
      copyOthers(trial.path());
      own.texts().forEach(trial::write);
      return whole(trial.path()).problems();
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(folder, refused);
    }
  }

  /** The shop's mark and whatever else the files name. */
  private void copyOthers(Path trial) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        boolean other = DocumentFormat.ofFileName(file.toString()).isEmpty();
        if (other && Files.isRegularFile(file) && Files.size(file) <= LARGEST_LOGO_BYTES) {
          Files.copy(file, trial.resolve(file.getFileName()));
        }
      }
    }
  }
}
