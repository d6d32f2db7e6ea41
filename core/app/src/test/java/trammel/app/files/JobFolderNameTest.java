package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobFolderNameTest {

  @ParameterizedTest
  @ValueSource(strings = {"D-101", "2026-014", "TR_7", "1.5", "7"})
  void aPlainNumberIsItsOwnName(String number) {
    assertEquals(number, JobFolderName.of(number));
  }

  @ParameterizedTest
  @CsvSource({
    "2026/014, 2026-014-",
    "2026\\014, 2026-014-",
    "../../etc, etc-",
    "'D 101', D-101-",
    "\u00c4-7, A-7-",
    "\ud83d\ude97, job-",
    "CON, job-CON-",
    "lpt1.x, job-lpt1.x-",
    "7., 7-",
    ".hidden, hidden-"
  })
  void anyOtherKeepsWhatItCanAndIsToldApartByASum(String number, String start) {
    String name = JobFolderName.of(number);
    assertTrue(name.matches(java.util.regex.Pattern.quote(start) + "[0-9a-f]{6}"), name);
  }

  @Test
  void numbersThatLoseTheSameSignsHaveNamesOfTheirOwn() {
    String[] numbers = {
      "2026/014", "2026\\014", "2026 014", "2026-014", "2026.014", "2026\u2013014"
    };
    Map<String, String> names = new HashMap<>();
    for (String number : numbers) {
      String other = names.put(JobFolderName.of(number), number);
      assertEquals(null, other, number + " and " + other + " share a folder");
    }
  }

  @Test
  void everyNameIsOneThatEverySystemTakes() {
    for (int seed = 0; seed < 2000; seed++) {
      Random random = new Random(seed);
      String number =
          random
              .ints(1 + random.nextInt(40), 32, 0x1F700)
              .filter(c -> c < 0xD800 || c > 0xDFFF)
              .map(c -> random.nextBoolean() ? 32 + c % 95 : c)
              .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
              .toString();
      String name = JobFolderName.of(number);
      assertTrue(
          name.matches("[A-Za-z0-9]([A-Za-z0-9._-]*[A-Za-z0-9])?") && name.length() <= 60,
          "seed " + seed + ": " + number + " became " + name);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "D-101, d-101",
    "2026/014, 2026\\014",
    "1.5, 1-5",
    "\u00c9-1, e-1",
    "\u00e9-1, e\u0301-1",
    "\u2460, 1",
    "STRASSE, stra\u00dfe",
    "\ud83d\ude97, \ud83d\ude9a"
  })
  void numbersThatLookAlikeFoldToTheSame(String one, String other) {
    assertNotEquals(one, other);
    assertEquals(JobFolderName.folded(one), JobFolderName.folded(other));
  }

  @ParameterizedTest
  @CsvSource({"D-101, D-102", "1.5, 15", "\u0411-1, \u0412-1", "\u4f1a-1, \u5de5-1"})
  void numbersOfOtherLettersOrDigitsDoNot(String one, String other) {
    assertFalse(JobFolderName.folded(one).equals(JobFolderName.folded(other)));
  }
}
