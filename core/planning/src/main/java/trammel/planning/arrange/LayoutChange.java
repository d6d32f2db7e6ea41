package trammel.planning.arrange;

import java.util.Objects;
import java.util.Optional;

/**
 * One change to the job file.
 *
 * @param path the field, such as {@code chosen.linkage_options.upper_rise}
 * @param before what stands there now; empty where nothing does
 * @param after what is to stand there
 * @param reason what asked for it: the check that it mends, the price, or the kind of layout
 */
public record LayoutChange(String path, Optional<String> before, String after, String reason) {
  public LayoutChange {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(reason, "reason");
  }
}
