package trammel.app.commands;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/** Days of the calendar on the command line. */
public final class Days {
  private Days() {}

  /**
   * The day that an option is given.
   *
   * @throws CommandFailure if it is none
   */
  public static Optional<LocalDate> of(String option, Optional<String> word) {
    return word.map(
        day -> {
          try {
            return LocalDate.parse(day);
          } catch (DateTimeParseException noDay) {
            throw CommandFailure.badInput(
                option + " was given '" + day + "'; give a day as year-month-day: 2026-12-01.");
          }
        });
  }
}
