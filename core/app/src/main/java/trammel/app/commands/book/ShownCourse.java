package trammel.app.commands.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.app.book.Course;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.Ledger;

/** {@code show}: the course of a job, or all jobs. */
final class ShownCourse {
  private ShownCourse() {}

  static ExitCode show(BookDesk desk) {
    if (desk.words().size() > 1) {
      one(desk);
    } else {
      all(desk);
    }
    return ExitCode.DONE;
  }

  private static void one(BookDesk desk) {
    NamedJob job = desk.job();
    try (Ledger ledger = job.shop().openExisting()) {
      Course course = Course.of(ledger, job.number()).orElseThrow(() -> unknown(job.number()));
      desk.print(course);
    }
  }

  /** What was taken for a job may be a word misspelt. */
  private static CommandFailure unknown(String given) {
    return CommandFailure.badInput(
        "The ledger has no quote of job "
            + given
            + ": trammel book quote JOB keeps one. If no job was meant, give "
            + BookWord.all()
            + ".");
  }

  private static void all(BookDesk desk) {
    try (Ledger ledger = desk.shop().openExisting()) {
      List<Course> courses = new ArrayList<>();
      ledger.book().jobs().forEach(job -> courses.add(BookShop.course(ledger, job.number())));
      desk.print(
          CourseText.jobs(courses),
          Map.of("jobs", courses.stream().map(CourseJson::course).toList()));
    }
  }
}
