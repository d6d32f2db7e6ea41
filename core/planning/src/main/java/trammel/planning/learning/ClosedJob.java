package trammel.planning.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import trammel.engine.quantity.Given;

/**
 * A job that is done, with what it was quoted at and what it took.
 *
 * @param number the job's number
 * @param closed when it was closed
 * @param quotedHours mean hours of its quote (h), above 0
 * @param quotedEightOfTen hours that eight of ten such jobs were to stay within (h), above 0
 * @param operations its operations, one at least
 * @param usedHours hours of the whole job (h), above 0; empty where only operations were written
 *     down
 */
public record ClosedJob(
    String number,
    LocalDate closed,
    double quotedHours,
    double quotedEightOfTen,
    List<ClosedOperation> operations,
    OptionalDouble usedHours) {
  private static final double MOST_HOURS = 1_000_000;

  public ClosedJob {
    Given.text("number of a closed job", number, "Use the number in its job file.");
    Given.present("day on which job " + number + " was closed", closed, "Give it.");
    Given.positive("quoted hours of job " + number, quotedHours, MOST_HOURS, "", "See its quote.");
    Given.positive(
        "quoted eight-of-ten hours of " + number,
        quotedEightOfTen,
        MOST_HOURS,
        "",
        "See its quote.");
    operations = List.copyOf(operations);
    Given.count("operations of job " + number, operations.size(), 1, 1000, "Name one at least.");
    Set<String> keys = new HashSet<>();
    double apart = 0;
    for (ClosedOperation operation : operations) {
      if (!keys.add(operation.key())) {
        throw new IllegalArgumentException(
            "operation '" + operation.key() + "' stands twice in job " + number + ". Add them up.");
      }
      apart += operation.usedHours().orElse(0);
    }
    checkTotal(number, usedHours, apart, operations);
  }

  private static void checkTotal(
      String number, OptionalDouble usedHours, double apart, List<ClosedOperation> operations) {
    if (usedHours.isEmpty()) {
      return;
    }
    Given.positive(
        "hours used for job " + number, usedHours.getAsDouble(), MOST_HOURS, "", "Add up.");
    boolean allApart = operations.stream().allMatch(one -> one.usedHours().isPresent());
    double most = usedHours.getAsDouble() * (1 + ROUNDING);
    if (apart > most || !allApart && apart > usedHours.getAsDouble() * (1 - LEAST_REST)) {
      throw new IllegalArgumentException(
          "Job "
              + number
              + " took "
              + usedHours.getAsDouble()
              + " h in all and "
              + apart
              + " h in the operations that are written down apart; the whole must leave something"
              + " for the rest. Check the hours.");
    }
  }

  private static final double ROUNDING = 0.01;
  private static final double LEAST_REST = 0.001;

  /** Hours of the whole job, added up where every operation is known; empty where neither is. */
  public OptionalDouble wholeHours() {
    if (usedHours.isPresent()) {
      return usedHours;
    }
    double sum = 0;
    for (ClosedOperation operation : operations) {
      if (operation.usedHours().isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += operation.usedHours().getAsDouble();
    }
    return OptionalDouble.of(sum);
  }

  /** The operations whose hours were not written down apart. */
  List<ClosedOperation> together() {
    List<ClosedOperation> together = new ArrayList<>();
    for (ClosedOperation operation : operations) {
      if (operation.usedHours().isEmpty()) {
        together.add(operation);
      }
    }
    return together;
  }

  /** Hours that those took together; empty where the whole job's are not known. */
  OptionalDouble togetherHours() {
    if (usedHours.isEmpty() || together().isEmpty()) {
      return OptionalDouble.empty();
    }
    double rest = usedHours.getAsDouble();
    for (ClosedOperation operation : operations) {
      rest -= operation.usedHours().orElse(0);
    }
    return OptionalDouble.of(rest);
  }
}
