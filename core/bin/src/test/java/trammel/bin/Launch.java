package trammel.bin;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A program about to be started: what, where and with which environment. */
record Launch(List<String> command, Path folder, Map<String, String> environment) {
  private static final long LONGEST_RUN_SECONDS = 60;

  /** How a program ended. */
  record Ended(int exitCode, String out, String err) {}

  /** A program with the environment of the tests, the Java of the tests, and no locale. */
  static Launch of(String... command) {
    Map<String, String> environment = new LinkedHashMap<>();
    environment.put("PATH", System.getenv("PATH"));
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    return new Launch(List.of(command), Path.of("").toAbsolutePath(), environment);
  }

  static Launch of(Path program) {
    return of(program.toString());
  }

  Launch in(Path otherFolder) {
    return new Launch(command, otherFolder, environment);
  }

  Launch with(String name, String value) {
    Map<String, String> changed = new LinkedHashMap<>(environment);
    changed.put(name, value);
    return new Launch(command, folder, changed);
  }

  Launch without(String name) {
    Map<String, String> changed = new LinkedHashMap<>(environment);
    changed.remove(name);
    return new Launch(command, folder, changed);
  }

  /** Runs the program to its end. */
  Ended run(String... arguments) throws IOException, InterruptedException {
    Path out = Files.createTempFile("launch", ".out");
    Path err = Files.createTempFile("launch", ".err");
    try {
      int exitCode = end(start(out, err, arguments));
      return new Ended(exitCode, text(out), text(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  /** Starts the program and comes back at once. */
  Process start(Path out, Path err, String... arguments) throws IOException {
    List<String> whole = new ArrayList<>(command);
    whole.addAll(Arrays.asList(arguments));
    ProcessBuilder builder = new ProcessBuilder(whole).directory(folder.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = builder.start();
    process.getOutputStream().close();
    return process;
  }

  static int end(Process process) throws InterruptedException {
    if (!process.waitFor(LONGEST_RUN_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("still running after " + LONGEST_RUN_SECONDS + " s");
    }
    return process.exitValue();
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
