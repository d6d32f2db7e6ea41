package trammel.app.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.CsvReader;
import trammel.app.files.CsvText;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;

/**
 * Reads the list of closed jobs that shops kept before there was a ledger, {@code history.csv}: one
 * line a job without a heading, each ending with a check sum. A line whose check sum does not fit
 * but that can be read was changed by hand, and counts; a last line that cannot be read and does
 * not end was torn by a crash, and is left out.
 */
final class OldHistory {
  /** Its name in the folder of the jobs. */
  static final String NAME = "history.csv";

  private static final int CELLS = 7;
  private static final String NONE = "-";

  private OldHistory() {}

  /**
   * What such a list holds.
   *
   * @param jobs its jobs, each once by its last line, in the order of their closing
   * @param notes what is to be said about its lines
   */
  record Content(List<ClosedJob> jobs, List<String> notes) {
    Content {
      jobs = List.copyOf(jobs);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Reads a list.
   *
   * @throws CommandFailure if it cannot be read, or a line that is whole makes no sense
   */
  static Content read(Path file) {
    String text;
    try {
      text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    }
    Map<String, ClosedJob> jobs = new LinkedHashMap<>();
    List<String> notes = new ArrayList<>();
    int number = 0;
    for (int from = 0; from < text.length(); ) {
      int end = text.indexOf('\n', from);
      boolean ends = end >= 0;
      String line = text.substring(from, ends ? end : text.length()).strip();
      from = ends ? end + 1 : text.length();
      number++;
      if (line.isEmpty()) {
        continue;
      }
      ClosedJob job = job(line);
      if (job != null) {
        if (!isAsWritten(line)) {
          notes.add(file + ", line " + number + " was changed by hand; it counts as it is now.");
        }
        jobs.remove(job.number());
        jobs.put(job.number(), job);
      } else if (!ends) {
        notes.add(file + ", line " + number + " was torn by a crash and is left out.");
      } else {
        throw damaged(file, number);
      }
    }
    return new Content(List.copyOf(jobs.values()), notes);
  }

  private static CommandFailure damaged(Path file, int line) {
    return CommandFailure.badInput(
        file
            + ", line "
            + line
            + " is damaged. Restore the file from a copy, or take that line out.");
  }

  private static boolean isAsWritten(String line) {
    int comma = line.lastIndexOf(',');
    CRC32 crc = new CRC32();
    crc.update(line.substring(0, comma).getBytes(StandardCharsets.UTF_8));
    return line.substring(comma + 1).equals(Long.toHexString(crc.getValue()));
  }

  /** The job of a line; null if it holds none. */
  private static ClosedJob job(String line) {
    try {
      List<String> cells = CsvReader.rows(line).get(0).cells();
      return cells.size() == CELLS ? job(cells) : null;
    } catch (IllegalArgumentException | DateTimeException | IndexOutOfBoundsException noJob) {
      return null;
    }
  }

  private static ClosedJob job(List<String> cells) {
    List<ClosedOperation> operations = new ArrayList<>();
    for (String operation : cells.get(5).split("; ")) {
      String[] words = operation.split(" ");
      operations.add(
          new ClosedOperation(
              words[0],
              Double.parseDouble(words[1]),
              Double.parseDouble(words[2]),
              hours(words[3])));
    }
    return new ClosedJob(
        CsvText.meant(cells.get(0)),
        LocalDate.parse(cells.get(1)),
        Double.parseDouble(cells.get(2)),
        Double.parseDouble(cells.get(3)),
        operations,
        hours(CsvText.meant(cells.get(4))));
  }

  private static OptionalDouble hours(String text) {
    return text.equals(NONE) ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }
}
