package trammel.app.text;

import trammel.app.fitup.FitUpForm;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityPrinter;

/** The fit-up sheet on a screen. */
public final class FitUpText {
  private static final String BLANK = "________";
  private static final int ANGLE_PLACES = 1;

  private final FitUpSheet sheet;
  private final QuantityPrinter printer;

  /**
   * @param sheet the sheet
   * @param printer prints values in the reader's units
   */
  public FitUpText(FitUpSheet sheet, QuantityPrinter printer) {
    this.sheet = sheet;
    this.printer = printer;
  }

  /** The whole sheet. */
  public String text() {
    return "FIT-UP SHEET\n" + datums() + "\n" + struts() + "\n" + angles() + "\n" + targets();
  }

  private static String datums() {
    return Paragraph.wrap(
        "Mark first: the axle line on both rails, plumb above the wheel centres at ride; the body's"
            + " centre line on the floor. Measure everything from these marks, never from one"
            + " bracket to the next. Lengths go to the centre of the joint's bolt.",
        "  ",
        "  ");
  }

  private String struts() {
    StringBuilder text = new StringBuilder("HOLD THE AXLE AT RIDE with struts, hole to hole\n");
    Table table = new Table("lr");
    for (FitUpSheet.Strut strut : sheet.struts()) {
      table.row("in place of " + strut.name(), printer.length(strut.lengthMm()));
    }
    return text.append(table.text("  ")).toString();
  }

  private String angles() {
    Table table = new Table("lrrr");
    table.row("", "on the stands", "from the rail", "at ride");
    for (FitUpSheet.FinderAngle angle : sheet.angles()) {
      table.row(
          angle.what(),
          printer.angle(angle.onStandsRad(), ANGLE_PLACES),
          printer.angle(angle.fromFrameRad(), ANGLE_PLACES),
          printer.angle(angle.atRideRad(), ANGLE_PLACES));
    }
    return "ANGLE FINDER: from level as the frame sits now; zeroed on the rail's underside; at"
        + " ride\n"
        + table.text("  ");
  }

  private String targets() {
    StringBuilder text =
        new StringBuilder("SET, TACK, MEASURE AGAIN: set to, within, what it is after tacking\n");
    String group = "";
    Table table = new Table("rrll");
    for (Target target : sheet.inOrderOfWork()) {
      if (!target.group().equals(group)) {
        text.append(table.text("  "));
        table = new Table("rrll");
        group = target.group();
        text.append("  ").append(group).append('\n');
      }
      table.row(
          FitUpForm.value(target, target.plan(), printer),
          "+/- " + FitUpForm.value(target, target.tolerance(), printer),
          BLANK,
          target.what());
    }
    return text.append(table.text("  ")).toString();
  }
}
