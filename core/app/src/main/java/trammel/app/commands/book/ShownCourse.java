package trammel.app.commands.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.app.book.Course;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
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
      desk.print(BookShop.course(ledger, job.number()));
    }
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
