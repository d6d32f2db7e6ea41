package trammel.planning.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The good job files of the tests. */
final class JobFiles {
  static final String PICKUP = text("pickup.yaml");

  private JobFiles() {}

  static String text(String name) {
    try (InputStream in = JobFiles.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The good pickup with one passage of its text replaced; the passage must be there. */
  static String pickupWith(String passage, String replacement) {
    if (!PICKUP.contains(passage)) {
      throw new IllegalArgumentException("The passage (" + passage + ") is not in the pickup.");
    }
    return PICKUP.replace(passage, replacement);
  }
}
