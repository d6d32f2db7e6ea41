package trammel.app.fitup;

import trammel.app.files.Csv;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;

/** The fit-up sheet as a table with empty columns for the readings. */
public final class FitUpForm {
  /** Name of the column by which a reading is known. */
  public static final String ID = "target";

  /** What the names of the columns with readings start with. */
  public static final String READING = "reading";

  private FitUpForm() {}

  /** The form as comma-separated values. */
  public static String csv(FitUpSheet sheet, QuantityPrinter printer) {
    Csv csv = new Csv().row(ID, "bracket", "what", "set to", "within", READING, READING + " again");
    for (Target target : sheet.targets()) {
      csv.row(
          target.id(),
          target.group(),
          target.what(),
          Value.of(value(target, target.plan(), printer)),
          value(target, target.tolerance(), printer),
          "",
          "");
    }
    return csv.text();
  }

  /** A value of a target in the reader's units. */
  public static String value(Target target, double value, QuantityPrinter printer) {
    return target.kind() == QuantityKind.ANGLE ? printer.angle(value) : printer.length(value);
  }

  /** A quantity starts with a minus without being a formula; a space in front keeps it a text. */
  private static final class Value {
    static String of(String quantity) {
      return quantity.startsWith("-") ? " " + quantity : quantity;
    }
  }
}
