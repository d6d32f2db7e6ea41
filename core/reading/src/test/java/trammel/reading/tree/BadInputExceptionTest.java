package trammel.reading.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nobody mends a thousand lines at once: the first twenty are told, the rest counted. */
class BadInputExceptionTest {
  private static BadInputException with(int problems) {
    List<Problem> all = new ArrayList<>();
    for (int line = problems; line > 0; line--) {
      all.add(Problem.error(new Location("job.yaml", line, 1, "a"), "x", "a number", "Write one."));
    }
    return new BadInputException(all);
  }

  @ParameterizedTest
  @CsvSource({
    "21, and 1 more problem; mend these first.",
    "1000, and 980 more problems; mend these first."
  })
  void theMessageTellsTwentyAndCountsTheRest(int problems, String last) {
    List<String> lines = with(problems).getMessage().lines().toList();
    assertEquals(21, lines.size());
    assertEquals(last, lines.get(20));
    assertEquals("job.yaml, line 1, a: given x; allowed: a number. Write one.", lines.get(0));
    assertEquals(problems, with(problems).problems().size());
  }

  @Test
  void twentyAreToldInFull() {
    assertEquals(20, with(20).getMessage().lines().count());
    assertFalse(with(20).getMessage().contains("more"));
  }
}
