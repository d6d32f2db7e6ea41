package trammel.app.ledger;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.zip.CRC32;
import trammel.app.files.Csv;
import trammel.planning.catalog.Catalog;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * The lists that were kept before there was a ledger, written as they were then: the code is that
 * of the release before, so that a reader of today is held against what shops really have.
 */
final class OldLists {
  private static final String NONE = "-";
  private static final String[] STARTS = {"D-", "-", "=", "+", "@", "\u05d0 ", "a, \"b\" ", "J"};

  private OldLists() {}

  static String line(ClosedJob job) {
    StringBuilder operations = new StringBuilder();
    for (ClosedOperation operation : job.operations()) {
      operations.append(operations.length() == 0 ? "" : "; ");
      operations.append(operation.key()).append(' ').append(operation.standardHours());
      operations.append(' ').append(operation.deviationHours()).append(' ');
      operations.append(text(operation.usedHours()));
    }
    String number = job.number().replace('\n', ' ').replace('\r', ' ');
    String start =
        new Csv()
            .row(
                number,
                job.closed().toString(),
                job.quotedHours(),
                job.quotedEightOfTen(),
                text(job.usedHours()),
                operations.toString())
            .text()
            .strip();
    return start + "," + check(start) + "\n";
  }

  private static String text(OptionalDouble hours) {
    return hours.isPresent() ? Double.toString(hours.getAsDouble()) : NONE;
  }

  private static String check(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(crc.getValue());
  }

  static String rack(Rack rack, UnitSystem units) {
    QuantityPrinter printer = new QuantityPrinter(units);
    Csv csv = new Csv().row("kind", "item", "name", "length", "width", "quantity");
    for (Rack.Stick stick : rack.sticks()) {
      csv.row("stick", stick.barKey(), stick.name(), printer.length(stick.lengthMm()), "", "");
    }
    for (Rack.Drop drop : rack.drops()) {
      csv.row(
          "drop",
          drop.plateKey(),
          drop.name(),
          printer.length(drop.lengthMm()),
          printer.length(drop.widthMm()),
          "");
    }
    for (Rack.Bin bin : rack.bins()) {
      csv.row(
          "bin",
          bin.key(),
          "",
          bin.lengthMm() > 0 ? printer.length(bin.lengthMm()) : "",
          "",
          bin.quantity().stripTrailingZeros().toPlainString());
    }
    return csv.text();
  }

  /** Invented jobs; with whole hours, with hours in parts, with both. */
  static List<ClosedJob> jobs(Random random) {
    List<ClosedJob> jobs = new ArrayList<>();
    int count = random.nextInt(12);
    for (int i = 0; i < count; i++) {
      jobs.add(job(STARTS[random.nextInt(STARTS.length)] + i, random));
    }
    return jobs;
  }

  private static ClosedJob job(String number, Random random) {
    List<ClosedOperation> operations = new ArrayList<>();
    double apart = 0;
    int known = random.nextInt(3);
    for (int i = 1 + random.nextInt(8); i > 0; i--) {
      double standard = 0.1 + 10 * random.nextDouble();
      boolean used = known == 0 || known == 1 && random.nextBoolean();
      double hours = standard * (0.5 + random.nextDouble());
      apart += used ? hours : 0;
      operations.add(
          new ClosedOperation(
              "operation-" + i,
              standard,
              standard * 0.2 * random.nextDouble(),
              used ? OptionalDouble.of(hours) : OptionalDouble.empty()));
    }
    return new ClosedJob(
        number,
        LocalDate.of(2024, 1, 1).plusDays(random.nextInt(1000)),
        20 + 100 * random.nextDouble(),
        30 + 100 * random.nextDouble(),
        operations,
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(1.2 * apart + 5));
  }

  /** An invented rack of things of the catalog, in 32nds of an inch as a tape reads. */
  static Rack rack(Catalog catalog, Random random) {
    List<String> bars = List.copyOf(catalog.bars().keySet());
    List<String> plates = List.copyOf(catalog.plates().keySet());
    List<String> bolts = List.copyOf(catalog.bolts().keySet());
    List<String> items = List.copyOf(catalog.items().keySet());
    List<Rack.Stick> sticks = new ArrayList<>();
    for (int i = random.nextInt(10); i > 0; i--) {
      sticks.add(new Rack.Stick(name(random) + "S" + i, any(bars, random), inches(random, 240)));
    }
    List<Rack.Drop> drops = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      drops.add(
          new Rack.Drop(
              name(random) + "D" + i, any(plates, random), inches(random, 48), inches(random, 96)));
    }
    List<Rack.Bin> bins = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      boolean bolt = random.nextBoolean();
      bins.add(
          new Rack.Bin(
              any(bolt ? bolts : items, random),
              bolt ? inches(random, 8) : 0,
              random.nextBoolean()
                  ? BigDecimal.valueOf(random.nextInt(400))
                  : new BigDecimal(random.nextInt(400) + ".5")));
    }
    return new Rack(sticks, drops, bins);
  }

  private static String name(Random random) {
    return STARTS[random.nextInt(STARTS.length)];
  }

  private static String any(List<String> keys, Random random) {
    return keys.get(random.nextInt(keys.size()));
  }

  private static double inches(Random random, int most) {
    // Exact, as it is read again: 25.4 mm is not a binary fraction.
    return new BigDecimal("0.79375")
        .multiply(BigDecimal.valueOf(1 + random.nextInt(32 * most)))
        .doubleValue();
  }
}
