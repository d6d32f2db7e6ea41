package trammel.planning.job;

import java.util.Optional;
import trammel.reading.tree.Location;

/**
 * A limit of a check that this job moves. Its texts are read when the check is known.
 *
 * @param check id of the check
 * @param good limit of good, if it is moved
 * @param stop limit of stop, if it is moved
 * @param reason why
 * @param location where it stands in the file
 */
public record LimitOverride(
    String check, Optional<String> good, Optional<String> stop, String reason, Location location) {}
