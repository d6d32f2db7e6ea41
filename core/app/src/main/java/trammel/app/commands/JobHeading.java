package trammel.app.commands;

import trammel.app.text.Stops;
import trammel.planning.draft.Draft;
import trammel.planning.job.JobHeader;

/** The line that says which job a result is about. */
final class JobHeading {
  private JobHeading() {}

  /** The line, and under it what the checks of the job say stop to. */
  static String text(Draft draft, Stops stops) {
    return text(draft) + stops.text();
  }

  static String text(Draft draft) {
    JobHeader header = draft.job().header();
    return "JOB "
        + header.number()
        + "  "
        + header.vehicle()
        + "\n  for "
        + header.customer()
        + ", "
        + header.date()
        + "\n  "
        + draft.linkage().title()
        + "; "
        + draft.spring().title()
        + "\n\n";
  }
}
