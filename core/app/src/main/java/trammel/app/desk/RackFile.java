package trammel.app.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.KeptFile;
import trammel.app.json.Json;
import trammel.planning.catalog.Catalog;
import trammel.planning.document.DocumentFormat;
import trammel.planning.rack.Rack;
import trammel.planning.rack.RackReader;
import trammel.planning.rack.RackWriter;

/** The file with the stock on hand, kept to ourselves from reading to rewriting. */
public final class RackFile implements AutoCloseable {
  private final KeptFile kept;
  private final Rack rack;

  private RackFile(KeptFile kept, Rack rack) {
    this.kept = kept;
    this.rack = rack;
  }

  /**
   * Locks and reads a rack file.
   *
   * @throws CommandFailure if it is not there or stays locked
   * @throws trammel.planning.document.BadInputException with everything that is wrong with it
   */
  public static RackFile open(Path file, Catalog catalog) {
    if (!Files.isRegularFile(file)) {
      throw CommandFailure.badInput(
          "There is no rack file "
              + file
              + "; check the name, or start one that holds only: format: "
              + RackReader.FORMAT);
    }
    KeptFile kept = KeptFile.open(file);
    try {
      return new RackFile(kept, RackReader.read(file, catalog));
    } catch (RuntimeException refused) {
      kept.close();
      throw refused;
    }
  }

  /** What is on it. */
  public Rack rack() {
    return rack;
  }

  /** Rewrites the file in one step. */
  public void replace(Rack after) {
    boolean json =
        DocumentFormat.ofFileName(kept.path().toString()).orElse(DocumentFormat.YAML)
            == DocumentFormat.JSON;
    kept.replace(json ? Json.text(RackWriter.tree(after)) + "\n" : RackWriter.yaml(after));
  }

  @Override
  public void close() {
    kept.close();
  }
}
