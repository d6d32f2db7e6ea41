package trammel.page.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;

/**
 * Who may ask: the keys that devices send along with every request. The first is made at the start
 * and handed to the browser of this machine. Where other devices are let in, each gets one of its
 * own for a code that is shown on the first screen, is good for a short time and allows few tries.
 */
public final class Keys {
  /** How long a code is good. */
  public static final Duration CODE_LASTS = Duration.ofMinutes(10);

  /** How often a wrong code may be given before another one is made. */
  public static final int MOST_TRIES = 5;

  /** Wrong codes after which nobody new is let in until Trammel is started again. */
  private static final int MOST_WRONG = 20;

  private static final int KEY_BYTES = 32;
  private static final int CODE_DIGITS = 6;
  private static final int MOST_DEVICES = 50;

  private final SecureRandom random = new SecureRandom();
  private final List<String> keys = new CopyOnWriteArrayList<>();
  private final Supplier<Instant> clock;
  private String code = "";
  private Instant codeMade = Instant.EPOCH;
  private int tries;
  private int wrong;

  /**
   * @param clock tells the time
   */
  public Keys(Supplier<Instant> clock) {
    this.clock = clock;
    keys.add(newKey());
  }

  /** The key of the browser on this machine. */
  public String first() {
    return keys.get(0);
  }

  /** True if a key was given out; it takes as long to say no to a near miss as to any other. */
  public boolean knows(String key) {
    boolean known = false;
    byte[] given = key.getBytes(StandardCharsets.UTF_8);
    for (String one : keys) {
      known |= MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), given);
    }
    return known;
  }

  /** The code that lets a device in now. */
  public synchronized String code() {
    if (code.isEmpty() || clock.get().isAfter(codeMade.plus(CODE_LASTS))) {
      newCode();
    }
    return code;
  }

  /**
   * A key for a device.
   *
   * @param given what was typed there
   * @return empty if it is not the code
   */
  public synchronized Optional<String> enter(String given) {
    String wanted = code();
    if (wrong >= MOST_WRONG || keys.size() > MOST_DEVICES) {
      return Optional.empty();
    }
    if (!MessageDigest.isEqual(
        wanted.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8))) {
      wrong++;
      tries++;
      if (tries >= MOST_TRIES) {
        newCode();
      }
      return Optional.empty();
    }
    // Each device is shown another code.
    newCode();
    String key = newKey();
    keys.add(key);
    return Optional.of(key);
  }

  private void newCode() {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < CODE_DIGITS; i++) {
      digits.append(random.nextInt(10));
    }
    code = digits.toString();
    codeMade = clock.get();
    tries = 0;
  }

  private String newKey() {
    byte[] bytes = new byte[KEY_BYTES];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
