package trammel.engine.mechanism;

import java.util.List;

/** A mechanism that cannot move as it is described. */
public final class MechanismFaultException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong, in the order in which it is looked for. */
  public enum Kind {
    /** A name that is there twice, is blank, or stands for nothing. */
    UNKNOWN_BODY("unknown-body"),
    /** An axis or line without a direction. */
    BAD_AXIS("bad-axis"),
    /** A stiffness that is not above 0. */
    BAD_STIFFNESS("bad-stiffness"),
    /** A link without a length. */
    ZERO_LENGTH("zero-length"),
    /** A sliding point that is off its line at ride. */
    OPEN_JOINT("open-joint"),
    /** Exact joints that let the axle not heave, or not roll. */
    LOCKED("locked"),
    /** Exact joints that repeat each other. */
    REDUNDANT("redundant"),
    /** A motion that nothing holds. */
    FREE_MOTION("free-motion");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** The word that machines read. */
    public String key() {
      return key;
    }
  }

  private final Kind kind;
  private final transient List<String> locked;

  MechanismFaultException(Kind kind, String message) {
    this(kind, List.of(), message);
  }

  MechanismFaultException(Kind kind, List<String> locked, String message) {
    super(message);
    this.kind = kind;
    this.locked = List.copyOf(locked);
  }

  /** What is wrong. */
  public Kind kind() {
    return kind;
  }

  /** Which of {@code heave} and {@code roll} cannot change, of a locked mechanism. */
  public List<String> locked() {
    return locked;
  }
}
