package trammel.engine.checks;

/** What a check says of a value, best first. */
public enum Verdict {
  /** Within the good range. */
  GOOD,
  /** Outside the good range and inside the stop limit: a judgement for the fabricator. */
  LOOK_AGAIN,
  /** Outside the stop limit: do not weld it like this. */
  STOP
}
