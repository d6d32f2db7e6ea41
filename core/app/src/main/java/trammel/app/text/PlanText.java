package trammel.app.text;

import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.bars.BarOffcut;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.cutting.sheets.SheetOffcut;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PartLine;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.labour.OperationLine;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.welding.SeamEstimate;
import trammel.trade.welding.WeldSeam;

/** The plan of a job on a screen: parts, bolts, tubes, plates, welds and hours. */
public final class PlanText {
  private final Estimate estimate;
  private final QuantityPrinter printer;

  /**
   * @param estimate the job
   * @param amounts prints values in the reader's units
   */
  public PlanText(Estimate estimate, Amounts amounts) {
    this.estimate = estimate;
    printer = amounts.printer();
  }

  /** All of it. */
  public String text() {
    return parts() + "\n" + bolts() + "\n" + tubes() + "\n" + plates() + "\n" + welds() + "\n"
        + hours();
  }

  private String parts() {
    Table table = new Table("rll");
    for (PartLine part : estimate.materials().parts()) {
      table
          .row(Amounts.plain(part.quantity()), part.item().unit(), part.item().title())
          .note(part.why().in(printer));
    }
    return "PARTS to buy\n" + table.text("  ");
  }

  private String bolts() {
    Table table = new Table("rlrl");
    for (BoltLine bolt : estimate.materials().bolts()) {
      table
          .row(
              Integer.toString(bolt.quantity()),
              bolt.size().title() + " x " + printer.length(bolt.choice().lengthMm()),
              printer.torque(bolt.torqueNmm()),
              "grip " + printer.length(bolt.gripMm()))
          .note(bolt.where());
    }
    return "BOLTS, each with lock nut and two washers; torque dry\n" + table.text("  ");
  }

  private String tubes() {
    StringBuilder text = new StringBuilder("TUBES to saw\n");
    for (SectionCut section : estimate.materials().sections()) {
      text.append("  ").append(section.material().title()).append('\n');
      Table table = new Table("rrl");
      for (TubeNeed need : section.needs()) {
        table
            .row(Integer.toString(need.quantity()), printer.length(need.cutLengthMm()), need.name())
            .note(need.ends().in(printer) + "; " + need.why().in(printer));
      }
      text.append(table.text("    ")).append(sticks(section));
    }
    return text.toString();
  }

  private String sticks(SectionCut section) {
    StringBuilder text = new StringBuilder();
    for (CutBar bar : section.plan().bars()) {
      StringBuilder line = new StringBuilder("stick ");
      line.append(printer.length(bar.stock().lengthMm())).append(':');
      for (PlacedPiece piece : bar.pieces()) {
        line.append(' ').append(printer.length(piece.lengthMm())).append(',');
      }
      line.append(" left ").append(printer.length(bar.offcutMm()));
      text.append(Paragraph.wrap(line.toString(), "    ", "      "));
    }
    for (BarOffcut offcut : section.plan().offcuts()) {
      text.append("    to the rack: ").append(printer.length(offcut.lengthMm())).append('\n');
    }
    return text.append("    sawing plan: ")
        .append(Amounts.proven(section.plan().status(), section.plan().lowerBound()))
        .append('\n')
        .toString();
  }

  private String plates() {
    StringBuilder text = new StringBuilder("PLATES to cut\n");
    for (PlateCut cut : estimate.materials().plates()) {
      text.append("  ").append(cut.material().title()).append('\n');
      Table table = new Table("rlrrr");
      for (PlateNeed need : cut.needs()) {
        Outline outline = need.plate().outline();
        Bounds bounds = outline.bounds();
        table
            .row(
                Integer.toString(need.quantity()),
                need.plate().name(),
                printer.length(bounds.widthMm()) + " x " + printer.length(bounds.heightMm()),
                Counts.of(outline.holes().size(), "hole"),
                printer.mass(need.plate().weightKg()))
            .note(need.why().in(printer));
      }
      text.append(table.text("    "));
      for (PlateCut.Bought sheet : cut.bought()) {
        text.append("    from ")
            .append(Counts.of(sheet.count(), "sheet"))
            .append(" of ")
            .append(printer.length(sheet.widthMm()))
            .append(" x ")
            .append(printer.length(sheet.lengthMm()))
            .append('\n');
      }
      for (SheetOffcut offcut : cut.plan().offcuts()) {
        text.append("    to the rack: ")
            .append(printer.length(offcut.widthMm()))
            .append(" x ")
            .append(printer.length(offcut.heightMm()))
            .append('\n');
      }
      text.append("    cutting plan: ")
          .append(Amounts.proven(cut.plan().status(), cut.plan().lowerBound()))
          .append('\n');
    }
    return text.toString();
  }

  private String welds() {
    Table table = new Table("rlrrll");
    for (SeamEstimate line : estimate.welds().lines()) {
      WeldSeam seam = line.seam();
      table
          .row(
              Integer.toString(seam.count()),
              seam.joint().title(),
              printer.length(seam.joint().sizeMm()),
              seam.lengthMm() > 0 ? printer.length(seam.lengthMm()) : "",
              seam.position().title() + ", " + seam.place().title(),
              seam.name())
          .note(seam.why().in(printer));
    }
    String total =
        "  total "
            + printer.length(estimate.welds().lengthMm())
            + " of weld, "
            + printer.mass(estimate.welds().depositKg())
            + " deposited, "
            + printer.mass(estimate.welds().fillerKg())
            + " of wire, "
            + Amounts.fixed(estimate.welds().clockHours(), 1)
            + " h torch time\n";
    return "WELDS: number, kind, size, length each\n" + table.text("  ") + total;
  }

  private String hours() {
    Table table = new Table("lrrrrl");
    table.row("", "low", "likely", "high", "mean", "");
    for (OperationLine line : estimate.hours().lines()) {
      table.row(
          line.operation().title(),
          hours(line.hours().low()),
          hours(line.hours().likely()),
          hours(line.hours().high()),
          hours(line.hours().mean()),
          line.driverText().in(printer));
    }
    return "HOURS\n"
        + table.text("  ")
        + "  mean "
        + hours(estimate.hours().meanHours())
        + " h, half the jobs within "
        + hours(estimate.hours().p50Hours())
        + " h, eight of ten within "
        + hours(estimate.hours().p80Hours())
        + " h\n"
        + learned();
  }

  private String learned() {
    int jobs = estimate.closedJobs();
    return jobs == 0
        ? ""
        : "  the shop's own hours, learned from " + Counts.of(jobs, "closed job") + "\n";
  }

  private static String hours(double hours) {
    return Amounts.fixed(hours, 1);
  }
}
