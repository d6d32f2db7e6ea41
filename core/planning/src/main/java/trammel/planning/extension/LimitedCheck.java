package trammel.planning.extension;

import trammel.engine.checks.Check;
import trammel.engine.checks.Limit;

/**
 * A check that a plugin brings, with the limit that holds unless the job overrides it.
 *
 * @param check the check; its short name is unlike every other
 * @param limit its limit
 */
public record LimitedCheck(Check check, Limit limit) {}
