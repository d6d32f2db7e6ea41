package trammel.brackets.work;

import java.util.Objects;
import trammel.assembly.Held;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * A stretch of a channel rail that something asks to be closed by a plate. Stretches that meet are
 * closed by one plate, whoever asks for them: {@code RailClosings} makes the plates once all of a
 * job's plans are together.
 *
 * @param kind how the plate is laid
 * @param name what the lists call the plate where it stays by itself
 * @param mark its side where two plates share a name, else empty
 * @param left true for the left rail
 * @param rearMm its rear end, forward of the axle (mm)
 * @param frontMm its front end (mm), ahead of the rear one
 * @param stock what it is cut from
 * @param behind what stands on it
 * @param why what asks for it
 */
public record RailClosing(
    Kind kind,
    String name,
    String mark,
    boolean left,
    double rearMm,
    double frontMm,
    BracketStock stock,
    String behind,
    Phrase why) {
  /** How a plate is laid. */
  public enum Kind {
    /** One long plate behind several brackets of bars, welded in skips. */
    ALONG,
    /** A short plate behind a bracket of a bar, welded in skips. */
    BRACKET,
    /** A short plate behind a mount, its seams run through. */
    MOUNT
  }

  public RailClosing {
    Objects.requireNonNull(kind, "kind");
    Given.text("name of a boxing plate", name, "Say what the lists call it.");
    Objects.requireNonNull(mark, "mark");
    Given.positive(
        "length of '" + name + "' in mm", frontMm - rearMm, 20_000, "", "Give its rear end first.");
    Objects.requireNonNull(stock, "stock");
    Given.text("what '" + name + "' stands behind", behind, "Name the bracket or mount.");
    Given.text("reason for '" + name + "'", why, "Say what asks for it.");
  }

  /** Id of the plate where it stays by itself, under which seams name it. */
  public String id() {
    return Held.id(name, mark);
  }
}
