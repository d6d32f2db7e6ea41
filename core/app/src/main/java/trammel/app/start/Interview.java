package trammel.app.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.planning.start.Answers;
import trammel.planning.start.Examples;
import trammel.planning.start.Question;

/**
 * Asks one question after the other. Every answer is checked at once and kept in the file, so that
 * the asking can stop at any time and go on later.
 */
public final class Interview {
  private static final String BACK = "back";
  private static final String STOP = "stop";
  private static final String AGAIN = "?";

  private final BufferedReader in;
  private final PrintWriter out;
  private final Path file;
  private final Answers answers;
  private final Choices choices;
  private final Examples examples = new Examples();
  private String section = "";

  /** What the installed plugins have to say of questions. */
  public interface Choices {
    /** The words for a question; empty where any answer of its kind will do. */
    List<String> of(Question question);

    /** False for a question that means nothing to what was chosen before. */
    default boolean isAsked(Question question, Answers answers) {
      return true;
    }
  }

  /**
   * @param in where answers come from
   * @param out where questions go
   * @param file the job file that is written
   * @param answers what is answered already
   * @param choices the words that plugins offer
   */
  public Interview(
      BufferedReader in, PrintWriter out, Path file, Answers answers, Choices choices) {
    this.in = in;
    this.out = out;
    this.file = file;
    this.answers = answers;
    this.choices = choices;
  }

  /**
   * Asks what is not answered yet.
   *
   * @return true if every question was passed, false if the asking was stopped
   */
  public boolean ask() {
    out.println(
        "Answer, or: enter alone leaves it out or takes what stands in [ ]; ? asks again; back; stop.");
    int at = 0;
    boolean goingBack = false;
    // An answer may bring further questions: those of a thing in the way, once it is named.
    for (List<Question> all = answers.questions(); at < all.size(); all = answers.questions()) {
      Question question = all.get(at);
      boolean asked = choices.isAsked(question, answers);
      if (goingBack && !asked) {
        at--;
        continue;
      }
      if (!asked || answers.of(question).isPresent() && !goingBack) {
        at++;
        continue;
      }
      goingBack = false;
      switch (answer(question, at + 1 + "/" + all.size())) {
        case GIVEN, LEFT_OUT -> at++;
        case BACK -> {
          goingBack = at > 0;
          at = Math.max(0, at - 1);
        }
        case STOPPED -> {
          return false;
        }
      }
    }
    return true;
  }

  private enum Step {
    GIVEN,
    LEFT_OUT,
    BACK,
    STOPPED
  }

  private Step answer(Question question, String number) {
    show(question, number);
    while (true) {
      out.print("> ");
      out.flush();
      Optional<String> line = line();
      if (line.isEmpty() || line.get().equals(STOP)) {
        return Step.STOPPED;
      }
      String text = line.get().isEmpty() ? answers.of(question).orElse("") : line.get();
      if (text.equals(BACK)) {
        return Step.BACK;
      }
      if (text.equals(AGAIN)) {
        show(question, number);
      } else if (text.isEmpty() && !question.needed()) {
        return Step.LEFT_OUT;
      } else if (text.isEmpty()) {
        out.println("  this one is needed; stop keeps what there is, to go on later.");
      } else if (keep(question, text)) {
        return Step.GIVEN;
      }
    }
  }

  private void show(Question question, String number) {
    if (!question.section().equals(section)) {
      section = question.section();
      out.println();
      out.println(section.toUpperCase(java.util.Locale.ROOT));
    }
    out.println();
    out.println(number + "  " + question.what());
    out.println("  why: " + question.reason());
    List<String> words = choices.of(question);
    out.println(
        "  "
            + (words.isEmpty()
                ? question.how(answers.units(), examples.of(question, answers))
                : String.join(" or ", words))
            + (question.needed() ? "" : "; may be left out")
            + answers.of(question).map(now -> "  [" + now + "]").orElse(""));
  }

  private boolean keep(Question question, String text) {
    List<String> words = choices.of(question);
    if (!words.isEmpty() && !words.contains(text)) {
      out.println("  given '" + text + "'; allowed is " + String.join(" or ", words) + ".");
      return false;
    }
    Optional<String> problem = question.problem(text, answers.units());
    if (problem.isPresent()) {
      out.println("  " + problem.get());
      return false;
    }
    answers.give(question, text);
    SafeFile.write(file, answers.yaml());
    return true;
  }

  private Optional<String> line() {
    try {
      return Optional.ofNullable(in.readLine()).map(String::strip);
    } catch (IOException refused) {
      throw CommandFailure.badInput("The answers cannot be read: " + refused.getMessage() + ".");
    }
  }
}
