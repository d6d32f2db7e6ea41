package trammel.app.files;

import java.nio.file.Path;
import java.util.List;

/** A process that writes folders, one that is there and new ones, until it is killed. */
final class KilledFolderWriter {
  static final String JOB = "D-101";
  static final List<String> NAMES = List.of("fitup.csv", "floor/packet.txt", "plates/side.dxf");

  private KilledFolderWriter() {}

  /** Takes the shop's folder, and how the new folders' names begin. */
  public static void main(String... arguments) {
    Path shop = Path.of(arguments[0]);
    System.out.println("started");
    for (int i = 1; ; i++) {
      write(shop.resolve("again"), i);
      write(shop.resolve(arguments[1] + "-" + i), i);
    }
  }

  /** Writes files of growing and shrinking length, each with its own length in its first line. */
  static void write(Path folder, int number) {
    FileSet files = new FileSet();
    for (String name : NAMES) {
      files.add(name, KilledWriter.text(number % 40));
    }
    OutFolder.of(folder.toString(), "plan", false).forJobs(List.of(JOB)).write(files);
  }
}
