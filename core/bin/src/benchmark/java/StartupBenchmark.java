import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.tools.ToolProvider;

/**
 * Times whole processes: commands of an installed Trammel against a bare Java that prints one line.
 *
 * <p>Each round runs the bare Java and then every command once, and the ratio of a command is the
 * median of its ratios within the rounds: what slows the machine for a while slows both sides.
 */
public final class StartupBenchmark {
  private static final int WARM_UP_ROUNDS = 2;

  /** A line of the result. */
  private record Subject(String name, List<String> command, double[] times) {}

  /** Arguments: the folder of the installed copy, the number of rounds. */
  public static void main(String... arguments) throws IOException, InterruptedException {
    Path home = Path.of(arguments[0]).toRealPath();
    int rounds = Integer.parseInt(arguments[1]);
    Path folder = Files.createTempDirectory("trammel-benchmark");
    List<Subject> subjects = subjects(home, folder, rounds);
    for (int round = -WARM_UP_ROUNDS; round < rounds; round++) {
      for (Subject subject : subjects) {
        double milliseconds = time(subject, folder);
        if (round >= 0) {
          subject.times()[round] = milliseconds;
        }
      }
    }
    print(subjects);
  }

  private static List<Subject> subjects(Path home, Path folder, int rounds) throws IOException {
    String launcher = home.resolve("bin/trammel").toString();
    List<Subject> subjects = new ArrayList<>();
    subjects.add(new Subject("bare Java, one line", bareJava(folder), new double[rounds]));
    for (String argument : List.of("--version", "--help")) {
      subjects.add(
          new Subject("trammel " + argument, List.of(launcher, argument), new double[rounds]));
    }
    Path job = home.resolve("catalogs/demo/pickup.yaml");
    if (Files.exists(job)) {
      subjects.add(
          new Subject(
              "trammel quote pickup.yaml",
              List.of(launcher, "quote", job.toString()),
              new double[rounds]));
    }
    return subjects;
  }

  private static List<String> bareJava(Path folder) throws IOException {
    Path source =
        Files.writeString(
            folder.resolve("Line.java"),
            "class Line { public static void main(String[] a) { System.out.println(\"x\"); } }");
    ToolProvider.getSystemJavaCompiler().run(null, null, null, source.toString());
    String java =
        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
    return List.of(java, "-cp", folder.toString(), "Line");
  }

  private static double time(Subject subject, Path folder)
      throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(subject.command())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(folder.resolve("messages").toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    long start = System.nanoTime();
    int exitCode = builder.start().waitFor();
    double milliseconds = (System.nanoTime() - start) / 1e6;
    if (exitCode > 1) {
      throw new IOException(
          subject.name() + " failed: " + Files.readString(folder.resolve("messages")));
    }
    return milliseconds;
  }

  private static void print(List<Subject> subjects) {
    double[] bare = subjects.get(0).times();
    System.out.println("command                      median    best   ratio to bare Java");
    for (Subject subject : subjects) {
      double[] times = subject.times();
      double[] ratios = new double[times.length];
      for (int i = 0; i < times.length; i++) {
        ratios[i] = times[i] / bare[i];
      }
      System.out.printf(
          Locale.ROOT,
          "%-26s %5.0f ms %4.0f ms   %.2f%n",
          subject.name(),
          median(times),
          Arrays.stream(times).min().orElseThrow(),
          median(ratios));
    }
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
