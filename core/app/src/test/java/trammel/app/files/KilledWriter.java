package trammel.app.files;

import java.nio.file.Path;

/** A process that writes a file again and again until it is killed. */
final class KilledWriter {
  private KilledWriter() {}

  /** Writes texts of growing and shrinking length, each with its own length in its first line. */
  public static void main(String... arguments) {
    Path file = Path.of(arguments[0]);
    for (int i = 0; ; i++) {
      SafeFile.write(file, text(i % 40));
      if (i == 0) {
        System.out.println("started");
      }
    }
  }

  static String text(int lines) {
    return "lines " + lines + "\n" + "stick,R1,31 1/2 in\n".repeat(lines) + "end\n";
  }
}
