package trammel.app.commands;

import trammel.planning.draft.Draft;
import trammel.planning.job.JobHeader;

/** The line that says which job a result is about. */
final class JobHeading {
  private JobHeading() {}

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
