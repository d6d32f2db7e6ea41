package trammel.app.closing;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;

/**
 * The shop's closed jobs, one line each, only ever added to. Every line ends with a check sum of
 * what stands before it; a last line that a crash tore is recognised by it, left out, and cut off
 * when the next job is added. A job that is closed again has a later line, and that one counts.
 */
public final class HistoryFile {
  private static final String NAME = "history.csv";
  private static final int CHECK = 6;
  private static final String NONE = "-";

  private final Path file;

  /**
   * @param file the file, which need not be there yet
   */
  public HistoryFile(Path file) {
    this.file = file;
  }

  /** The history that belongs to the jobs of a folder. */
  public static HistoryFile in(Path folder) {
    return new HistoryFile(folder.resolve(NAME));
  }

  /** Where it is. */
  public Path file() {
    return file;
  }

  /** True if any job was ever closed. */
  public boolean exists() {
    return Files.exists(file);
  }

  /**
   * What the file holds.
   *
   * @param jobs its jobs, each once, in the order of their closing
   * @param goodBytes how many bytes of it are whole lines
   * @param torn true if a crash left a torn line at its end
   */
  public record Content(List<ClosedJob> jobs, long goodBytes, boolean torn) {
    public Content {
      jobs = List.copyOf(jobs);
    }
  }

  /**
   * Reads the history; a file that is not there is an empty one.
   *
   * @throws CommandFailure if it cannot be read, or a line other than the last is damaged
   */
  public Content read() {
    byte[] bytes;
    try {
      bytes = exists() ? Files.readAllBytes(file) : new byte[0];
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(file, refused);
    }
    Map<String, ClosedJob> jobs = new LinkedHashMap<>();
    int from = 0;
    for (int line = 1; from < bytes.length; line++) {
      int end = from;
      while (end < bytes.length && bytes[end] != '\n') {
        end++;
      }
      boolean last = end >= bytes.length - 1;
      String text = new String(bytes, from, end - from, StandardCharsets.UTF_8);
      ClosedJob job = end < bytes.length ? job(text) : null;
      if (job == null && last) {
        return new Content(List.copyOf(jobs.values()), from, true);
      }
      if (job == null) {
        throw CommandFailure.badInput(
            file
                + ", line "
                + line
                + " is damaged. Restore the file from a copy, or take that line out.");
      }
      jobs.remove(job.number());
      jobs.put(job.number(), job);
      from = end + 1;
    }
    return new Content(List.copyOf(jobs.values()), bytes.length, false);
  }

  /**
   * Adds a job, forced to the disk before this returns. The caller holds the file's lock.
   *
   * @throws CommandFailure if it cannot be written
   */
  public void add(ClosedJob job) {
    long goodBytes = read().goodBytes();
    byte[] line = line(job).getBytes(StandardCharsets.UTF_8);
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.truncate(goodBytes);
      channel.position(goodBytes);
      ByteBuffer buffer = ByteBuffer.wrap(line);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(file, refused);
    }
  }

  private static String line(ClosedJob job) {
    StringBuilder operations = new StringBuilder();
    for (ClosedOperation operation : job.operations()) {
      operations.append(operations.length() == 0 ? "" : "; ");
      operations.append(operation.key()).append(' ').append(operation.standardHours());
      operations.append(' ').append(operation.deviationHours()).append(' ');
      operations.append(text(operation.usedHours()));
    }
    // Line breaks within a cell would look like the end of the line.
    String number = job.number().replace('\n', ' ').replace('\r', ' ');
    String start =
        new Csv()
            .row(
                number,
                job.closed().toString(),
                job.quotedHours(),
                job.quotedEightOfTen(),
                text(job.usedHours()),
                operations.toString())
            .text()
            .strip();
    return start + "," + check(start) + "\n";
  }

  private static String text(OptionalDouble hours) {
    return hours.isPresent() ? Double.toString(hours.getAsDouble()) : NONE;
  }

  private static String check(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(crc.getValue());
  }

  /** The job of a line; null if the line is not whole. */
  private static ClosedJob job(String line) {
    int comma = line.lastIndexOf(',');
    if (comma < 0 || !line.substring(comma + 1).strip().equals(check(line.substring(0, comma)))) {
      return null;
    }
    try {
      List<String> cells = CsvReader.rows(line).get(0).cells();
      return cells.size() == CHECK + 1 ? job(cells) : null;
    } catch (IllegalArgumentException
        | DateTimeParseException
        | IndexOutOfBoundsException damaged) {
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
        cells.get(0),
        LocalDate.parse(cells.get(1)),
        Double.parseDouble(cells.get(2)),
        Double.parseDouble(cells.get(3)),
        operations,
        hours(cells.get(4)));
  }

  private static OptionalDouble hours(String text) {
    return text.equals(NONE) ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }
}
