package trammel.app.closing;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.List;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.planning.learning.FarOff;
import trammel.reading.quantity.DecimalText;

/** Asks about hours that lie far from the quote, before they teach every later quote. */
public final class FarHours {
  /** The option by which hours count as they are written. */
  public static final String AS_WRITTEN = "--as-written";

  private FarHours() {}

  /**
   * Asks about each, where somebody is there to answer.
   *
   * @throws CommandFailure if one is not confirmed, or nobody is there
   */
  public static void confirm(List<FarOff> far, Screen screen) {
    if (far.isEmpty()) {
      return;
    }
    if (screen.answers().isEmpty()) {
      throw CommandFailure.badInput(
          String.join("; ", far.stream().map(FarHours::text).toList())
              + ". Nothing was taken in. Correct the form, or give "
              + AS_WRITTEN
              + " if the hours are right.");
    }
    for (FarOff one : far) {
      screen.err().print(text(one) + ": really? [yes or no] ");
      screen.err().flush();
      if (!saysYes(screen.answers().get())) {
        throw CommandFailure.badInput("Nothing was taken in. Correct the form and close again.");
      }
    }
  }

  private static String text(FarOff far) {
    return far.what()
        + ": "
        + DecimalText.trimmed(far.usedHours(), 2)
        + " h against "
        + DecimalText.fixed(far.quotedHours(), 1)
        + " h quoted";
  }

  private static boolean saysYes(BufferedReader answers) {
    try {
      String line = answers.readLine();
      String word = line == null ? "" : line.strip();
      return word.equalsIgnoreCase("yes") || word.equalsIgnoreCase("y");
    } catch (IOException refused) {
      throw CommandFailure.badInput("The answer cannot be read: " + refused.getMessage() + ".");
    }
  }
}
