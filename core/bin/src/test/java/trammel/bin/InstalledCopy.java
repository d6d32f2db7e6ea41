package trammel.bin;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.Main;
import trammel.app.json.Json;

/** An unpacked copy and what a shop does with it. */
record InstalledCopy(Path home) {
  private static final String HOME = "trammel.home";

  /** Unpacks the zip that the build made. */
  static InstalledCopy unpackedInto(Path folder) throws IOException {
    return new InstalledCopy(Workbench.unpack(folder));
  }

  Path demoJob(String name) {
    return home.resolve("catalogs/demo").resolve(name + ".yaml");
  }

  Tree demoTree(String name) throws IOException {
    return Tree.ofYaml(Files.readString(demoJob(name)));
  }

  /** Runs a command through the launcher, in a process of its own. */
  Launch.Ended launch(String... arguments) throws IOException, InterruptedException {
    return launcher().run(arguments);
  }

  /** The launcher, which does not prepare a faster start. */
  Launch launcher() {
    return Launch.of(home.resolve("bin/trammel")).with("TRAMMEL_CLASS_ARCHIVE", "off");
  }

  /**
   * Runs a command of this copy in this process, as the launcher would but for the start of Java,
   * which takes longer than most commands.
   */
  Launch.Ended run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    System.setProperty(HOME, home.toString());
    try {
      int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
      return new Launch.Ended(exitCode, out.toString(), err.toString());
    } finally {
      System.clearProperty(HOME);
    }
  }

  /** Runs a command with {@code --json}, which must end with the exit code, and reads it. */
  Tree json(int exitCode, String command, Path job, String... more) throws Exception {
    String[] arguments = new String[more.length + 3];
    arguments[0] = command;
    arguments[1] = "--json";
    System.arraycopy(more, 0, arguments, 2, more.length);
    arguments[more.length + 2] = job.toString();
    Launch.Ended ended = run(arguments);
    if (ended.exitCode() != exitCode) {
      throw new AssertionError("exit code " + ended.exitCode() + ": " + ended.err());
    }
    return Tree.ofJson(ended.out());
  }

  /** Writes a job as JSON. */
  static Path write(Path file, Tree job) throws IOException {
    return Files.writeString(file, Json.text(job.value()));
  }
}
