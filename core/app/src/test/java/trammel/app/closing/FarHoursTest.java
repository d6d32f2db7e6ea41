package trammel.app.closing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.planning.learning.FarOff;

class FarHoursTest {
  private static final List<FarOff> FAR = List.of(new FarOff("the whole job", 1300, 129));

  private final StringWriter err = new StringWriter();

  private Screen screen(Optional<String> typed) {
    return new Screen(
        new PrintWriter(new StringWriter()),
        new PrintWriter(err, true),
        false,
        false,
        typed.map(text -> new BufferedReader(new StringReader(text))));
  }

  @Test
  void withNobodyToAskItIsRefusedWithTheFlagThatSaysSo() {
    CommandFailure refused =
        assertThrows(CommandFailure.class, () -> FarHours.confirm(FAR, screen(Optional.empty())));
    assertEquals(ExitCode.BAD_INPUT, refused.exitCode());
    assertTrue(
        refused.getMessage().contains("1300 h against 129.0 h quoted")
            && refused.getMessage().contains("--as-written"),
        refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes\n", "Y\n", " yes"})
  void atATerminalItIsAskedAndTaken(String typed) {
    FarHours.confirm(FAR, screen(Optional.of(typed)));
    assertTrue(err.toString().contains("1300 h against 129.0 h quoted: really?"), err.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"no\n", "\n", "", "yesterday\n"})
  void anythingButYesTakesNothingIn(String typed) {
    CommandFailure refused =
        assertThrows(CommandFailure.class, () -> FarHours.confirm(FAR, screen(Optional.of(typed))));
    assertEquals(ExitCode.BAD_INPUT, refused.exitCode());
  }

  @Test
  void hoursNearTheQuoteAreNotAskedAbout() {
    FarHours.confirm(List.of(), screen(Optional.empty()));
    assertEquals("", err.toString());
  }
}
