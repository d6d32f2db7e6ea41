package trammel.app.closing;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;

/** A process that closes job after job until it is killed, and says each once it is kept. */
final class KilledCloser {
  private KilledCloser() {}

  /** Takes the file and the number of the first job. */
  public static void main(String... arguments) {
    HistoryFile history = new HistoryFile(Path.of(arguments[0]));
    for (int i = Integer.parseInt(arguments[1]); ; i++) {
      history.add(job("J" + i));
      System.out.println(i);
      System.out.flush();
    }
  }

  static ClosedJob job(String number) {
    return new ClosedJob(
        number,
        LocalDate.of(2026, 11, 28),
        113.3,
        126.24,
        List.of(
            new ClosedOperation("fit-frame-bracket", 5.1, 0.9, OptionalDouble.of(6.25)),
            new ClosedOperation("make-bar", 2.7, 0.4, OptionalDouble.empty())),
        OptionalDouble.of(140.5));
  }
}
