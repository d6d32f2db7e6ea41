package trammel.app.text;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.ledger.TableChange;
import trammel.app.rack.RackFile;
import trammel.ledger.Tacking;
import trammel.planning.estimate.Counts;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;

/** The shop's ledger on a screen. */
public final class LedgerText {
  private static final int LATEST_JOBS = 10;

  private LedgerText() {}

  /**
   * What is in a ledger.
   *
   * @param jobs its closed jobs, of which the latest are shown
   */
  public static String contents(
      Path file,
      int version,
      List<ClosedJob> jobs,
      Rack rack,
      int movements,
      int priceChanges,
      List<Tacking> tackings,
      QuantityPrinter printer) {
    StringBuilder text = new StringBuilder("LEDGER ").append(file);
    text.append("\n  version ").append(version).append('\n');
    text.append("\nCLOSED JOBS: ").append(jobs.size()).append('\n');
    Table table = new Table("llrr");
    for (ClosedJob job : jobs.subList(Math.max(0, jobs.size() - LATEST_JOBS), jobs.size())) {
      table.row(
          job.number(),
          "closed " + job.closed(),
          job.wholeHours().isPresent()
              ? Amounts.fixed(job.wholeHours().getAsDouble(), 1) + " h used"
              : "hours in parts",
          Amounts.fixed(job.quotedHours(), 1) + " h quoted");
    }
    if (jobs.size() > LATEST_JOBS) {
      text.append("  the latest ").append(LATEST_JOBS).append(":\n");
    }
    text.append(table.text("  "));
    text.append("\nRACK: ")
        .append(Counts.of(rack.sticks().size(), "stick"))
        .append(", ")
        .append(Counts.of(rack.drops().size(), "drop"))
        .append(", ")
        .append(Counts.of(rack.bins().size(), "bin"))
        .append("; ")
        .append(Counts.of(movements, "movement"))
        .append(" on and off\n");
    text.append(rack(rack, printer));
    text.append("\nPRICES: ").append(Counts.of(priceChanges, "change")).append(" written down\n");
    return text.append(tackings(tackings)).toString();
  }

  /** The latest answer of each job, the latest jobs last. */
  private static String tackings(List<Tacking> tackings) {
    Map<String, List<Tacking>> byJob = new LinkedHashMap<>();
    for (Tacking tacking : tackings) {
      byJob.computeIfAbsent(tacking.job(), job -> new ArrayList<>()).add(tacking);
    }
    List<List<Tacking>> jobs = new ArrayList<>(byJob.values());
    jobs.sort(Comparator.comparing(entries -> last(entries).tackedOn()));
    int readings = tackings.stream().mapToInt(LedgerText::readings).sum();
    Table table = new Table("lllr");
    for (List<Tacking> entries :
        jobs.subList(Math.max(0, jobs.size() - LATEST_JOBS), jobs.size())) {
      Tacking last = last(entries);
      table.row(
          last.job(),
          "tacked " + last.tackedOn(),
          last.answer().words(),
          Counts.of(entries.stream().mapToInt(LedgerText::readings).sum(), "reading"));
    }
    return "\nTACKED: "
        + Counts.of(jobs.size(), "job")
        + ", "
        + Counts.of(readings, "reading")
        + "\n"
        + (jobs.size() > LATEST_JOBS ? "  the latest " + LATEST_JOBS + ":\n" : "")
        + table.text("  ");
  }

  private static Tacking last(List<Tacking> entries) {
    return entries.get(entries.size() - 1);
  }

  private static int readings(Tacking tacking) {
    return tacking.readings().stream().mapToInt(reading -> reading.values().size()).sum();
  }

  private static String rack(Rack rack, QuantityPrinter printer) {
    Table table = new Table("llr");
    for (Rack.Stick stick : rack.sticks()) {
      table.row(stick.name(), stick.barKey(), RackFile.length(stick.lengthMm(), printer));
    }
    for (Rack.Drop drop : rack.drops()) {
      table.row(
          drop.name(),
          drop.plateKey(),
          RackFile.length(drop.lengthMm(), printer)
              + " x "
              + RackFile.length(drop.widthMm(), printer));
    }
    for (Rack.Bin bin : rack.bins()) {
      String length = bin.lengthMm() > 0 ? ", " + RackFile.length(bin.lengthMm(), printer) : "";
      table.row("bin", bin.key() + length, bin.quantity().stripTrailingZeros().toPlainString());
    }
    return table.text("  ");
  }

  /** What a check found. */
  public static String findings(Path file, List<String> findings) {
    if (findings.isEmpty()) {
      return "SOUND: "
          + file
          + "\n  the file itself, what refers to what, every closed job, and the rack as the sum of"
          + " its movements\n";
    }
    StringBuilder text = new StringBuilder("NOT SOUND: ").append(file).append('\n');
    findings.forEach(finding -> text.append("  ").append(finding).append('\n'));
    return text.append(
            "Keep the file as it is, and put the latest backup in its place: trammel ledger restore"
                + " BACKUP.\n")
        .toString();
  }

  /** What a table would change, or has changed. */
  public static String change(TableChange change, boolean done) {
    if (change.lines().isEmpty()) {
      return "The " + change.table() + " are as this table says; nothing is to be changed.\n";
    }
    StringBuilder text = new StringBuilder(done ? "CHANGED, " : "WOULD CHANGE, ");
    text.append(change.table()).append(":\n");
    change.lines().forEach(line -> text.append("  ").append(line).append('\n'));
    return text.append(done ? "" : "Nothing is changed yet: give --apply to carry it out.\n")
        .toString();
  }
}
