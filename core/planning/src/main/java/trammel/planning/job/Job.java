package trammel.planning.job;

import java.util.List;
import trammel.reading.tree.Problem;

/**
 * One job, read and checked.
 *
 * @param header number, date, customer, vehicle, units
 * @param measured what the tape, the angle finder and the scales say
 * @param chosen linkage, spring, ride height and overrides of pick-ups
 * @param terms what this job does differently from the shop's usual terms
 * @param source the document it was read from
 * @param assumptions every default that was taken because the file says nothing, as {@code field:
 *     value}
 * @param warnings what the user should look at, such as a measurement to take again
 */
public record Job(
    JobHeader header,
    Measured measured,
    Chosen chosen,
    Terms terms,
    JobDocument source,
    List<String> assumptions,
    List<Problem> warnings) {
  /** Keeps its own copies of the lists. */
  public Job {
    assumptions = List.copyOf(assumptions);
    warnings = List.copyOf(warnings);
  }
}
