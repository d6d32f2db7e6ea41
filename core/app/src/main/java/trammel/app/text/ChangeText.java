package trammel.app.text;

import java.util.List;
import java.util.Set;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Change;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.planning.draft.FieldChange;
import trammel.reading.quantity.QuantityPrinter;

/** Says a tried change in the words of the floor. */
public final class ChangeText {
  private final QuantityPrinter printer;

  /**
   * @param printer prints amounts in the reader's units
   */
  public ChangeText(QuantityPrinter printer) {
    this.printer = printer;
  }

  /** What a change makes worse, a sentence without its full stop; empty where it upsets nothing. */
  public static String upsets(Change change) {
    if (change.upsets().isEmpty()) {
      return "";
    }
    String stop = change.bringsStop() ? ", as far as a STOP" : "";
    return "It makes worse" + stop + ": " + String.join(", ", change.upsets());
  }

  /** What to change, by how much. */
  public String words(Change change) {
    double amount = change.amount();
    Adjustment adjustment = change.adjustment();
    if (adjustment instanceof Adjustment.MoveEnds move) {
      return "move the "
          + (move.end() == End.FRAME ? "frame" : "axle")
          + (move.names().size() == 1 ? " end of " : " ends of ")
          + names(move.names())
          + " "
          + way(move.direction(), amount)
          + " "
          + printer.length(Math.abs(amount));
    }
    if (adjustment instanceof Adjustment.MoveBars move) {
      return "move "
          + names(move.names())
          + ", both ends, "
          + way(move.direction(), amount)
          + " "
          + printer.length(Math.abs(amount));
    }
    if (adjustment instanceof Adjustment.TurnPinion) {
      return "turn the pinion nose " + upDown(amount) + " " + printer.angle(Math.abs(amount), 2);
    }
    if (adjustment instanceof Adjustment.TiltTransmission) {
      return "shim the transmission so that its output rises to the front "
          + printer.angle(Math.abs(amount), 2)
          + (amount < 0 ? " less" : " more")
          + ", and turn the pinion with it";
    }
    if (adjustment instanceof Adjustment.ChangeShaft) {
      return "make the driveshaft "
          + printer.length(Math.abs(amount))
          + (amount < 0 ? " shorter" : " longer");
    }
    if (adjustment instanceof Adjustment.ChangeBump) {
      return lessMore(amount) + " bump travel by " + printer.length(Math.abs(amount));
    }
    if (adjustment instanceof Adjustment.ChangeDroop) {
      return lessMore(amount) + " droop travel by " + printer.length(Math.abs(amount));
    }
    if (adjustment instanceof Adjustment.ThickenBrackets) {
      return "cut the brackets of the bars from plate that is "
          + printer.length(Math.abs(amount))
          + (amount < 0 ? " thinner" : " thicker");
    }
    if (adjustment instanceof Adjustment.FitJoint fit) {
      return "fit " + fit.joint().name() + " to the bars' weaker ends";
    }
    return "fit springs that are "
        + printer.rate(Math.abs(amount))
        + (amount < 0 ? " softer" : " stiffer");
  }

  private static String names(Set<String> bars) {
    return String.join(" and ", bars.stream().sorted().toList());
  }

  private static String way(Direction direction, double amount) {
    return switch (direction) {
      case FORWARD -> amount < 0 ? "rearward" : "forward";
      case OUTBOARD -> amount < 0 ? "inboard" : "outboard";
      case UP -> upDown(amount);
    };
  }

  private static String upDown(double amount) {
    return amount < 0 ? "down" : "up";
  }

  private static String lessMore(double amount) {
    return amount < 0 ? "take off" : "allow more";
  }

  /** Where the job file is to be changed. */
  static String fields(List<FieldChange> changes) {
    StringBuilder text = new StringBuilder();
    for (FieldChange change : changes) {
      text.append(text.length() == 0 ? "" : "; ");
      text.append(change.path()).append(": ").append(change.value());
    }
    return text.toString();
  }
}
