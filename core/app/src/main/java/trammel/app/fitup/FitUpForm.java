package trammel.app.fitup;

import java.util.ArrayList;
import java.util.List;
import trammel.app.files.Csv;
import trammel.app.files.FormMark;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;

/** The fit-up sheet as a table with empty columns for the readings. */
public final class FitUpForm {
  /** Name of the column by which a reading is known. */
  public static final String ID = "target";

  /** What the names of the columns with readings start with. */
  public static final String READING = "reading";

  /** Name of the column that says what is to be set. */
  static final String SET_TO = "set to";

  static final List<String> COLUMNS =
      List.of(ID, "bracket", "what", SET_TO, "within", READING, READING + " again");

  private FitUpForm() {}

  /** Tells the forms of a job's plan from all others, whatever units they are printed in. */
  static FormMark mark(String jobNumber, FitUpSheet sheet) {
    List<String> plan = new ArrayList<>();
    for (Target target : sheet.targets()) {
      int places = target.kind() == QuantityKind.ANGLE ? 3 : 1;
      plan.add(target.id() + " " + DecimalText.fixed(target.plan(), places));
    }
    return FormMark.of(jobNumber, plan);
  }

  /** The form as comma-separated values, its lines in the order of work. */
  public static String csv(String jobNumber, FitUpSheet sheet, QuantityPrinter printer) {
    Csv csv = new Csv().row(COLUMNS.toArray());
    csv.row(FormMark.LINE, mark(jobNumber, sheet).text(), FormMark.note(jobNumber), "", "", "", "");
    for (Target target : sheet.inOrderOfWork()) {
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
