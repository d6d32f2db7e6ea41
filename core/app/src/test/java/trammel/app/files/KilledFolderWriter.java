package trammel.app.files;

import java.nio.file.Path;
import java.util.List;

/** A process that writes a folder for a job again and again, each time otherwise, until killed. */
final class KilledFolderWriter {
  private static final int FILES = 12;

  private KilledFolderWriter() {}

  public static void main(String... arguments) {
    for (int round = 0; ; round++) {
      write(Path.of(arguments[0]), round % 40);
      if (round == 0) {
        System.out.println("started");
      }
    }
  }

  /** Files in folders, which come and go with the round, as drawings of parts do. */
  static void write(Path folder, int round) {
    FileSet files = new FileSet();
    for (int i = 0; i < FILES; i++) {
      if ((round + i) % 5 != 0) {
        files.add(
            (i % 3 == 0 ? "plates/part-" : "part-") + i + ".txt", KilledWriter.text(round + i));
      }
    }
    OutFolder.of(folder.toString(), "quote", false).forJobs(List.of("D-101")).write(files);
  }
}
