package trammel.page.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Who is let in: the first browser by its key, another device once by the code of the moment. */
class KeysTest {
  private Instant now = Instant.parse("2026-11-25T08:00:00Z");
  private final Keys keys = new Keys(() -> now);

  /** Another six digits than these. */
  private static String wrong(String code) {
    return code.equals("000000") ? "000001" : "000000";
  }

  @Test
  void every_start_has_a_key_of_its_own_and_no_other_is_known() {
    Set<String> made = new HashSet<>();
    for (int i = 0; i < 50; i++) {
      made.add(new Keys(() -> now).first());
    }
    assertEquals(50, made.size());
    assertTrue(keys.knows(keys.first()));
    assertFalse(keys.knows(""));
    assertFalse(keys.knows(keys.first() + "x"));
    assertFalse(keys.knows(made.iterator().next()));
    // 256 bits (RFC 4086 asks for 128 at least), in 43 signs.
    assertEquals(43, keys.first().length());
  }

  @Test
  void the_code_lets_one_device_in_and_is_another_then() {
    String code = keys.code();
    Optional<String> tablet = keys.enter(code);
    assertTrue(keys.knows(tablet.orElseThrow()));
    assertNotEquals(keys.first(), tablet.get());
    assertEquals(Optional.empty(), keys.enter(code.equals(keys.code()) ? wrong(code) : code));
  }

  @Test
  void a_code_is_good_for_ten_minutes() {
    String code = keys.code();
    now = now.plus(Keys.CODE_LASTS);
    assertEquals(code, keys.code());
    now = now.plusSeconds(1);
    String next = keys.code();
    assertEquals(code.equals(next), keys.enter(code).isPresent());
  }

  @Test
  void five_wrong_codes_make_another_one_and_twenty_shut_the_door() {
    String code = keys.code();
    for (int i = 0; i < Keys.MOST_TRIES; i++) {
      assertEquals(Optional.empty(), keys.enter(wrong(code)));
    }
    assertEquals(keys.code().equals(code), keys.enter(code).isPresent());
    for (int i = 0; i < 20; i++) {
      keys.enter(wrong(keys.code()));
    }
    assertEquals(Optional.empty(), keys.enter(keys.code()), "nobody new is let in");
    assertTrue(keys.knows(keys.first()), "the first browser goes on");
  }
}
