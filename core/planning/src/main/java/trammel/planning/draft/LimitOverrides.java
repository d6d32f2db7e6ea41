package trammel.planning.draft;

import java.util.List;
import java.util.Map;
import trammel.engine.checks.Check;
import trammel.engine.checks.Limit;
import trammel.planning.catalog.LimitText;
import trammel.planning.job.LimitOverride;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;

/** Moves the limits that a job overrides, each with its reason. */
final class LimitOverrides {
  private final List<Check> checks;
  private final UnitSystem units;

  LimitOverrides(List<Check> checks, UnitSystem units) {
    this.checks = checks;
    this.units = units;
  }

  /** The limits with the overrides put in. */
  Map<String, Limit> over(Map<String, Limit> limits, List<LimitOverride> overrides) {
    for (LimitOverride override : overrides) {
      limits.put(override.check(), moved(limits, override));
    }
    return limits;
  }

  private Limit moved(Map<String, Limit> limits, LimitOverride override) {
    Check check = check(override);
    Limit limit = limits.get(check.id());
    LimitText text = new LimitText(check.measure(), units);
    try {
      LimitText.Range good = new LimitText.Range(limit.goodMin(), limit.goodMax());
      LimitText.Range stop = new LimitText.Range(limit.stopMin(), limit.stopMax());
      if (override.good().isPresent()) {
        good = text.range(override.good().get(), good);
      }
      if (override.stop().isPresent()) {
        stop = text.range(override.stop().get(), stop);
      }
      return new Limit(
          good.min(), good.max(), stop.min(), stop.max(), "this job: " + override.reason());
    } catch (IllegalArgumentException refused) {
      throw refusal(override, "a limit for check " + check.id(), refused.getMessage());
    }
  }

  private Check check(LimitOverride override) {
    StringBuilder ids = new StringBuilder();
    for (Check check : checks) {
      if (check.id().equals(override.check())) {
        return check;
      }
      ids.append(ids.length() == 0 ? "" : ", ").append(check.id());
    }
    throw refusal(override, "a check: " + ids, "Name one of these checks.");
  }

  private static BadInputException refusal(LimitOverride override, String allowed, String remedy) {
    String given =
        override.check()
            + override.good().map(good -> ", good " + good).orElse("")
            + override.stop().map(stop -> ", stop " + stop).orElse("");
    return new BadInputException(
        List.of(Problem.error(override.location(), given, allowed, remedy)));
  }
}
