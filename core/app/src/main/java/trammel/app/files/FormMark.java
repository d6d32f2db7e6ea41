package trammel.app.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;

/**
 * Letters by which a form is known again when it comes back filled: four for the job's number, six
 * for the plan that it was made from. Letters alone, because a spreadsheet takes numbers, dates and
 * powers of ten for something to be written its own way.
 *
 * @param job letters of the job's number
 * @param plan letters of the plan
 */
public record FormMark(String job, String plan) {
  /** What the line with the mark starts with. */
  public static final String LINE = "form";

  /** No vowels, so that no word comes of them. */
  private static final String LETTERS = "bcdfghjklmnpqrstvwxz";

  private static final int JOB_LETTERS = 4;
  private static final int PLAN_LETTERS = 6;

  /**
   * The mark of a form.
   *
   * @param jobNumber the job's number
   * @param plan what the form is made from, in an order of its own
   */
  public static FormMark of(String jobNumber, List<String> plan) {
    return new FormMark(
        letters(jobNumber, JOB_LETTERS), letters(String.join("\n", plan), PLAN_LETTERS));
  }

  private static String letters(String text, int count) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    long rest = sum.getValue();
    StringBuilder letters = new StringBuilder(count);
    for (int i = 0; i < count; i++) {
      letters.append(LETTERS.charAt((int) (rest % LETTERS.length())));
      rest /= LETTERS.length();
    }
    return letters.toString();
  }

  /** What stands beside the mark, for whoever fills the form in. */
  public static String note(String jobNumber) {
    return "job " + jobNumber + "; leave this line as it is";
  }

  /** As it stands on the form. */
  public String text() {
    return job + "-" + plan;
  }

  /** True if a mark that came back is this one, in whatever case. */
  public boolean is(String cameBack) {
    return text().equals(plain(cameBack));
  }

  /** True if a mark that came back is of the same job, whatever its plan was. */
  public boolean isOfThisJob(String cameBack) {
    return plain(cameBack).startsWith(job + "-");
  }

  private static String plain(String cameBack) {
    return cameBack.toLowerCase(Locale.ROOT);
  }
}
