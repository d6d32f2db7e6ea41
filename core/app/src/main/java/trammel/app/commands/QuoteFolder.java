package trammel.app.commands;

import java.util.List;
import trammel.app.commandline.Screen;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.QuoteFiles;
import trammel.engine.checks.CheckResult;
import trammel.planning.estimate.Estimate;

/** Writes the folder that a shop hands out with a quote. */
final class QuoteFolder {
  private final Workbench bench;
  private final Screen screen;
  private final boolean quiet;

  QuoteFolder(Workbench bench, Screen screen, boolean quiet) {
    this.bench = bench;
    this.screen = screen;
    this.quiet = quiet;
  }

  void write(OutFolder folder, Estimate estimate, List<CheckResult> results) {
    FileSet files = new QuoteFiles(bench, this::tell, screen.err()::println).of(estimate, results);
    OutFolder.Written written = folder.write(files);
    CommonOptions.tellRemarks(written, screen);
    tell("Wrote " + written.files().size() + " files to " + folder.path());
  }

  private void tell(String line) {
    if (!quiet) {
      screen.err().println(line);
      screen.err().flush();
    }
  }
}
