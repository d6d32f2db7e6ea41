package trammel.reading.tree;

import java.util.Locale;
import java.util.Optional;

/** The two ways to write a document. */
public enum DocumentFormat {
  /** {@code .json}. */
  JSON,
  /** {@code .yaml} or {@code .yml}. */
  YAML;

  /** The format that the name of a file promises. */
  public static Optional<DocumentFormat> ofFileName(String fileName) {
    String lower = fileName.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".json")) {
      return Optional.of(JSON);
    }
    boolean yaml = lower.endsWith(".yaml") || lower.endsWith(".yml");
    return yaml ? Optional.of(YAML) : Optional.empty();
  }
}
