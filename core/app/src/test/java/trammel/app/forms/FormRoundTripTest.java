package trammel.app.forms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.closing.ActualsFile;
import trammel.app.fitup.FitUpForm;
import trammel.app.fitup.ReadingsFile;
import trammel.app.start.MeasuringSheet;
import trammel.engine.quantity.Phrase;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.Target;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.order.OrderLine;
import trammel.planning.start.Answers;
import trammel.planning.start.Question;
import trammel.planning.start.Questions;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Problem;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;
import trammel.trade.money.Money;

/**
 * Forms filled in at random, as a person or a spreadsheet would: each filling is read as it was
 * meant, or refused with the lines that cannot be read. What is written and what it means come from
 * one place here, by arithmetic and not by reading.
 */
class FormRoundTripTest {
  private static final int SHORT = 120;
  private static final int LONG = 10_000;
  private static final double INCH_MM = 25.4;

  @TempDir Path folder;

  /** What a person wrote, and what it means; NaN for what nobody can tell. */
  private record Written(String text, double meaning) {
    boolean isClear() {
      return !Double.isNaN(meaning);
    }
  }

  private static Written unclear(String text) {
    return new Written(text, Double.NaN);
  }

  /** Careful people write nothing unclear, and half of all forms are theirs. */
  private static Written written(boolean careful, Supplier<Written> writer) {
    Written written = writer.get();
    while (careful && !written.isClear()) {
      written = writer.get();
    }
    return written;
  }

  private interface RoundTrip {
    void check(Random random, String seed) throws IOException;
  }

  private static void each(int seeds, RoundTrip trip) throws IOException {
    for (int seed = 0; seed < seeds; seed++) {
      trip.check(new Random(new SplittableRandom(seed).nextLong()), "seed " + seed);
    }
  }

  @Test
  void hoursAndMaterialsComeBackAsTheyWereMeant() throws IOException {
    each(SHORT, this::actuals);
  }

  @Test
  void readingsComeBackAsTheyWereMeant() throws IOException {
    each(SHORT, this::readings);
  }

  @Test
  void measurementsComeBackAsTheyWereMeant() throws IOException {
    each(SHORT, this::measurements);
  }

  /** The long run; docs/reliability.md has its command. */
  @Test
  @Tag("long")
  void thirtyThousandFormsComeBackAsTheyWereMeant() throws IOException {
    each(LONG, this::actuals);
    each(LONG, this::readings);
    each(LONG, this::measurements);
  }

  /** Every line that nobody can tell is named, and no other. */
  private static void assertRefused(
      ReturnedForm form,
      List<Map<String, String>> unclear,
      BadInputException refused,
      String seed) {
    List<Integer> expected = unclear.stream().map(form::line).distinct().sorted().toList();
    List<Integer> told =
        refused.problems().stream()
            .filter(problem -> problem.severity() == Problem.Severity.ERROR)
            .map(Problem::line)
            .distinct()
            .sorted()
            .toList();
    assertEquals(
        expected, told, () -> seed + ": written " + unclear + ", told " + refused.problems() + " ");
  }

  // Actuals

  private static final List<OperationLine> WORK =
      List.of(
          work("make-bar", "make a bar, \"complete\"", 2.7),
          work("fit-frame-bracket", "fit frame bracket; tack", 5.1),
          work("torch-time", "weld", 9.3),
          work("road-test", "road test, settle, re-check", 1.4));

  private static final List<OrderLine> BOUGHT =
      List.of(
          bought("tube-1.5", "1 1/2 in x 0.120 tube, 20 ft", "3", "stick"),
          bought("tube-1.5", "1 1/2 in x 0.120 tube, 10 ft", "1", "stick"),
          bought("bolt", "5/8\" bolt, \"grade 8\"", "16", "piece"),
          bought("=wire", "=wire, 0.035 in", "2.5", "lb"));

  private static OperationLine work(String key, String title, double hours) {
    return new OperationLine(
        new Operation(
            key, title, "piece", new ThreePoint(hours, hours, 2 * hours), List.of(), "invented"),
        1,
        Phrase.text("1 piece"),
        List.of(),
        Phrase.of("invented"));
  }

  private static OrderLine bought(String key, String title, String quantity, String unit) {
    return new OrderLine(
        key,
        title,
        new BigDecimal(quantity),
        unit,
        BigDecimal.ONE,
        Money.of("1.00", "USD"),
        1,
        "invented");
  }

  private void actuals(Random random, String seed) throws IOException {
    ActualsFile file = new ActualsFile("D-101", WORK, WORK, BOUGHT);
    ReturnedForm form = new ReturnedForm(file.form(), random);
    boolean careful = random.nextBoolean();
    Map<String, Double> hours = new HashMap<>();
    Map<String, Double> used = new HashMap<>();
    List<Map<String, String>> unclear = new ArrayList<>();
    for (Map<String, String> row : List.copyOf(form.rows())) {
      if (row.get("kind").equals("form")) {
        continue;
      }
      if (random.nextInt(3) == 0) {
        if (random.nextInt(4) == 0) {
          form.takeOut(row);
        }
        continue;
      }
      boolean isHours = row.get("kind").equals("hours");
      Written written =
          written(
              careful,
              () -> isHours ? hours(random, form.decimalCommas()) : count(random, row.get("unit")));
      row.put("used", written.text());
      if (!written.isClear()) {
        unclear.add(row);
      } else {
        String name = isHours ? row.get("item") : row.get("item") + row.get("what");
        (isHours ? hours : used).put(name.replace("'=", "="), written.meaning());
      }
    }
    form.shuffle();
    Path back = form.write(folder.resolve("actuals.csv"));
    if (!unclear.isEmpty()) {
      assertRefused(
          form, unclear, assertThrows(BadInputException.class, () -> file.read(back), seed), seed);
      return;
    }
    if (hours.isEmpty()) {
      assertThrows(RuntimeException.class, () -> file.read(back), seed);
      return;
    }
    ActualsFile.Actuals read = file.read(back);
    for (ClosedOperation operation : read.operations()) {
      assertEquals(
          hours.getOrDefault(operation.key(), -1.0),
          operation.usedHours().orElse(-1),
          1e-9,
          seed + " " + operation.key());
    }
    assertEquals(hours.getOrDefault("whole job", -1.0), read.whole().orElse(-1), 1e-9, seed);
    Map<String, Double> other = new HashMap<>();
    for (OrderLine line : BOUGHT) {
      Double meant = used.get(line.key() + line.title());
      if (meant != null && Math.abs(meant - line.quantity().doubleValue()) > 1e-9) {
        other.put(line.title(), meant);
      }
    }
    Map<String, Double> told = new HashMap<>();
    read.material().forEach(one -> told.put(one.line().title(), one.used()));
    assertEquals(other, told, seed);
  }

  private static Written hours(Random random, boolean decimalCommas) {
    int quarters = 1 + random.nextInt(400);
    int whole = quarters / 4;
    int quarter = quarters % 4;
    double hours = quarters / 4.0;
    String cents = List.of("00", "25", "50", "75").get(quarter);
    String fraction = List.of("", "1/4", "1/2", "3/4").get(quarter);
    String sign = List.of("", "\u00bc", "\u00bd", "\u00be").get(quarter);
    String mixed = whole == 0 && quarter > 0 ? fraction : (whole + " " + fraction).strip();
    return switch (random.nextInt(24)) {
      case 0 -> new Written(whole + "." + cents, hours);
      case 1 -> new Written(whole + "," + cents, hours);
      case 2 -> new Written(mixed, hours);
      case 3 -> new Written((whole == 0 && quarter > 0 ? "" : whole) + sign, hours);
      case 4 -> new Written(mixed.replace(' ', '-'), hours);
      case 5 -> new Written(mixed + " h", hours);
      case 6 -> new Written(whole + "." + cents + "hours", hours);
      case 7 -> new Written(60 * whole + 15 * quarter + " min", hours);
      case 8 -> new Written(whole + ":" + List.of("00", "15", "30", "45").get(quarter), hours);
      case 9 -> new Written("'" + whole + "." + cents, hours);
      case 10 -> new Written("+" + whole + "." + cents, hours);
      case 11 -> new Written("\u2019" + mixed, hours);
      case 12 -> new Written(whole + "," + cents + " h", hours);
      case 13 -> decimalCommas ? unclear(whole + ".500") : new Written(whole + ".500", whole + 0.5);
      case 14 -> unclear("1,500");
      case 15 -> unclear("=" + whole + "+" + (quarter + 1));
      case 16 -> unclear("-" + (whole + 1));
      case 17 -> unclear("0");
      case 18 ->
          unclear(List.of("n/a", "lots", "?", "-", "ask him", "about 9", "~9").get(whole % 7));
      case 19 -> unclear(whole + " 300");
      case 20 -> unclear(whole + "." + cents + " lb");
      case 21 -> unclear(List.of("09.05.2026", "2026-05-09", "9-May", "1.2E+05").get(quarter));
      case 22 -> unclear("1.234,5");
      default -> unclear(whole + "h" + 15 * quarter);
    };
  }

  private static Written count(Random random, String unit) {
    int tenths = random.nextInt(300);
    String plain = tenths / 10 + "." + tenths % 10;
    return switch (random.nextInt(9)) {
      case 0, 1 -> new Written(Integer.toString(tenths), tenths);
      case 2 -> new Written(plain, tenths / 10.0);
      case 3 -> new Written(plain.replace('.', ','), tenths / 10.0);
      case 4 -> new Written(plain + " " + unit, tenths / 10.0);
      case 5 -> new Written("'" + tenths, tenths);
      case 6 -> unclear("-" + tenths);
      case 7 -> unclear(List.of("some", "=2*3", "1,200", "2 or 3").get(tenths % 4));
      default -> unclear(tenths + " furlong");
    };
  }

  // Fit-up

  private static final List<Target> TARGETS =
      List.of(
          length("lower-left.frame.forward", 24 * INCH_MM),
          length("lower-left.frame.up", -7.65625 * INCH_MM),
          length("lower-right.axle.left", -17.25 * INCH_MM),
          length("wheelbase.left", 118 * INCH_MM),
          new Target(
              "pinion.angle",
              "axle",
              "pinion, \"as it sits\"",
              QuantityKind.ANGLE,
              Math.toRadians(2.9),
              0.01,
              0.003));

  private static Target length(String id, double planMm) {
    return new Target(
        id, "bracket, of a bar", "ahead; behind is minus", QuantityKind.LENGTH, planMm, 1.6, 0.8);
  }

  private void readings(Random random, String seed) throws IOException {
    FitUpSheet sheet = new FitUpSheet(TARGETS, List.of(), List.of());
    UnitSystem printed = UnitSystem.values()[random.nextInt(2)];
    ReturnedForm form =
        new ReturnedForm(FitUpForm.csv("D-101", sheet, new QuantityPrinter(printed)), random);
    boolean careful = random.nextBoolean();
    Map<String, List<Double>> meant = new LinkedHashMap<>();
    List<Map<String, String>> unclear = new ArrayList<>();
    for (Map<String, String> row : List.copyOf(form.rows())) {
      if (row.get("target").equals("form")) {
        continue;
      }
      if (random.nextInt(3) == 0) {
        if (random.nextInt(4) == 0) {
          form.takeOut(row);
        }
        continue;
      }
      Target target =
          TARGETS.stream()
              .filter(one -> one.id().equals(row.get("target")))
              .findFirst()
              .orElseThrow();
      boolean isUnclear = false;
      for (String column : List.of("reading", "reading again")) {
        if (random.nextInt(3) > 0) {
          Written written = written(careful, () -> reading(random, target, form.decimalCommas()));
          row.put(column, written.text());
          isUnclear |= !written.isClear();
          meant.computeIfAbsent(target.id(), id -> new ArrayList<>()).add(written.meaning());
        }
      }
      if (!careful && random.nextInt(12) == 0) {
        // Written over what was to be set.
        row.put("set to", target.kind() == QuantityKind.ANGLE ? "7.5 deg" : "5 1/2 in");
        isUnclear = true;
      }
      if (isUnclear) {
        unclear.add(row);
      }
    }
    form.shuffle();
    Path back = form.write(folder.resolve("fitup.csv"));
    ReadingsFile file = new ReadingsFile(back, sheet, UnitSystem.US, "D-101");
    if (!unclear.isEmpty()) {
      assertRefused(form, unclear, assertThrows(BadInputException.class, file::read, seed), seed);
      return;
    }
    if (meant.isEmpty()) {
      assertThrows(RuntimeException.class, file::read, seed);
      return;
    }
    Map<String, List<Double>> read = new HashMap<>();
    for (TackReading reading : file.read()) {
      read.put(reading.id(), reading.values());
    }
    assertEquals(meant.keySet(), read.keySet(), seed);
    // Columns may have changed places, and repeats with them.
    meant.forEach(
        (id, values) -> {
          List<Double> sorted = values.stream().sorted().toList();
          List<Double> found = read.get(id).stream().sorted().toList();
          assertEquals(sorted.size(), found.size(), seed + " " + id);
          for (int i = 0; i < sorted.size(); i++) {
            assertEquals(sorted.get(i), found.get(i), 1e-9, seed + " " + id);
          }
        });
  }

  private static Written reading(Random random, Target target, boolean decimalCommas) {
    if (target.kind() == QuantityKind.ANGLE) {
      int tenths = random.nextInt(60);
      String degrees = tenths / 10 + "." + tenths % 10;
      double rad = Math.toRadians(tenths / 10.0);
      return switch (random.nextInt(6)) {
        case 0 -> new Written(degrees, rad);
        case 1 -> new Written(degrees + " deg", rad);
        case 2 -> new Written(degrees + "\u00b0", rad);
        case 3 -> new Written("'" + degrees, rad);
        case 4 -> decimal(degrees, rad, decimalCommas);
        default -> unclear(degrees + " in");
      };
    }
    // Near the plan, in 32nds of an inch.
    int parts = (int) Math.round(target.plan() / INCH_MM * 32) + random.nextInt(33) - 16;
    String sign = parts < 0 ? (random.nextBoolean() ? "-" : "\u2212") : "";
    int size = Math.abs(parts);
    int whole = size / 32;
    int top = size % 32;
    double mm = parts * INCH_MM / 32;
    String mixed = sign + whole + (top > 0 ? " " + reduced(top) : "");
    return switch (random.nextInt(16)) {
      case 0 -> new Written(mixed + " in", mm);
      case 1 -> new Written(mixed + "\"", mm);
      case 2 -> new Written(mixed, mm);
      case 3 -> new Written(mixed.replaceFirst("(\\d) ", "$1-") + "\u2033", mm);
      case 4 -> new Written(sign + size / 32.0 + " in", mm);
      case 5 -> new Written(sign + size / 32.0, mm);
      case 6 -> new Written(sign + tenths(size * INCH_MM / 32) + " mm", mmOf(parts));
      case 7 ->
          new Written("'" + mixed.replace(" 1/2", "\u00bd").replace("3/8", "\u215c") + " in", mm);
      case 8 ->
          whole < 12
              ? new Written(mixed + "in", mm)
              : new Written(
                  sign
                      + whole / 12
                      + "' "
                      + whole % 12
                      + (top > 0 ? " " + reduced(top) : "")
                      + "\"",
                  mm);
      // Three digits behind a comma may be a thousand.
      case 9 -> unclear(mixed.replace(' ', ',') + ",500 in");
      case 14 -> decimal(sign + tenths(size * INCH_MM / 32) + " mm", mmOf(parts), decimalCommas);
      case 10 -> unclear("=" + whole + "+1");
      case 11 -> unclear(List.of("ok", "see sketch", "x", "1/16 low", "29/2").get(top % 5));
      case 12 -> unclear(mixed + " lb");
      // A foot off, or the wrong sign: a slip of the pen.
      case 13 -> unclear(sign + (whole + 12) + " in");
      default -> unclear(whole + " " + (top + 1) + " in");
    };
  }

  /** A number with one digit behind a comma, which counts where decimals are written so. */
  private static Written decimal(String number, double meaning, boolean decimalCommas) {
    String text = number.replace('.', ',');
    return decimalCommas ? new Written(text, meaning) : unclear(text);
  }

  private static String reduced(int top) {
    int halvings = Integer.numberOfTrailingZeros(top);
    return (top >> halvings) + "/" + (32 >> halvings);
  }

  private static String tenths(double mm) {
    long tenths = Math.round(10 * mm);
    return tenths / 10 + "." + tenths % 10;
  }

  private static double mmOf(int parts) {
    return Math.signum(parts) * Double.parseDouble(tenths(Math.abs(parts) * INCH_MM / 32));
  }

  // The measuring sheet

  private static final Answers DEMO =
      Answers.of(DocumentReader.read(Path.of("..", "..", "catalogs", "demo", "pickup.yaml")));

  private void measurements(Random random, String seed) throws IOException {
    ReturnedForm form = new ReturnedForm(MeasuringSheet.csv(UnitSystem.US), random);
    boolean careful = random.nextBoolean();
    Answers meant = new Answers();
    List<Map<String, String>> unclear = new ArrayList<>();
    for (Map<String, String> row : List.copyOf(form.rows())) {
      Question question = Questions.at(row.get("field")).orElseThrow();
      String answer = DEMO.of(question).orElse("");
      // What says the units of bare numbers stays: without it they are inches.
      boolean units = row.get("field").equals("job.units");
      if (answer.isEmpty() || !units && random.nextInt(8) == 0) {
        if (random.nextInt(3) == 0) {
          form.takeOut(row);
        }
        continue;
      }
      meant.give(question, answer);
      int semicolon = answer.indexOf(';');
      // Half of all forms are a careful person's.
      switch (random.nextInt(60) + (careful ? 1 : 0)) {
        case 0 -> {
          row.put("reading", units ? "furlongs" : wrong(question, answer));
          unclear.add(row);
        }
        case 1 -> {
          row.put("reading", answer);
          row.put("again", answer);
          if (question.takesRepeats()) {
            meant.give(question, answer + "; " + answer);
          }
        }
        case 2 -> {
          if (careful) {
            row.put("reading", answer);
            break;
          }
          row.put("reading", answer);
          row.put("again", "something else");
          unclear.add(row);
        }
        default -> {
          boolean apart = question.takesRepeats() && semicolon > 0 && random.nextBoolean();
          row.put("reading", apart ? answer.substring(0, semicolon) : answer);
          row.put("again", apart ? answer.substring(semicolon + 1).strip() : "");
        }
      }
    }
    form.shuffle();
    Path back = form.write(folder.resolve("sheet.csv"));
    if (!unclear.isEmpty()) {
      assertRefused(
          form,
          unclear,
          assertThrows(BadInputException.class, () -> MeasuringSheet.read(back), seed),
          seed);
      return;
    }
    Answers read = MeasuringSheet.read(back).answers();
    for (Question question : Questions.ofSheet()) {
      // Repeats may have changed places with their columns.
      assertEquals(
          sorted(meant.of(question).orElse("")),
          sorted(read.of(question).orElse("")),
          seed + " " + question.path());
    }
  }

  private static List<String> sorted(String answer) {
    return java.util.Arrays.stream(answer.split(";")).map(String::strip).sorted().toList();
  }

  /** Something that no field takes: too long for a text, in no unit, no word, no number. */
  private static String wrong(Question question, String answer) {
    return switch (question.field().kind()) {
      case TEXT -> "x".repeat(2001);
      default -> "=" + answer;
    };
  }
}
