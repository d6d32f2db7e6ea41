package trammel.bin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.json.Json;

/** An unpacked copy and what a shop does with it. */
record InstalledCopy(Path home) {

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

  Launch.Ended run(String... arguments) throws IOException, InterruptedException {
    return Launch.of(home.resolve("bin/trammel"))
        .with("TRAMMEL_CLASS_ARCHIVE", "off")
        .run(arguments);
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
