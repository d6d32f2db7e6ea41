package trammel.app.text;

import java.util.List;
import java.util.function.Function;
import trammel.engine.checks.Verdict;
import trammel.planning.compare.Difference;
import trammel.planning.compare.Differences;
import trammel.planning.compare.LineDifference;
import trammel.planning.compare.PriceDifference;
import trammel.planning.compare.PriceDifferences;
import trammel.planning.compare.PricedWork;
import trammel.planning.compare.Variant;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.Money;

/** Variants of a job side by side on a screen. */
public final class CompareText {
  private static final int MOST_LABELS = 2;
  private static final int MOST_LINES = 5;
  private static final double SQUARE_INCH_MM2 = 645.16;
  private static final double SQUARE_CENTIMETRE_MM2 = 100;

  private final Amounts amounts;
  private final QuantityPrinter printer;

  /**
   * @param amounts prints values in the reader's units
   */
  public CompareText(Amounts amounts) {
    this.amounts = amounts;
    printer = amounts.printer();
  }

  /** The figures side by side, then what makes each variant differ from the first. */
  public String text(List<Variant> variants) {
    StringBuilder text = new StringBuilder(sideBySide(variants));
    for (Variant other : variants.subList(1, variants.size())) {
      text.append('\n').append(explained(variants.get(0), other));
    }
    return text.toString();
  }

  /** The same with a sentence and the lines that make most of each difference. */
  public String brief(List<Variant> variants) {
    StringBuilder text = new StringBuilder(sideBySide(variants));
    for (Variant other : variants.subList(1, variants.size())) {
      text.append('\n').append(brief(variants.get(0), other));
    }
    return text.append("\n--full gives every hour, weld, plate, tube and part with its reason.\n")
        .toString();
  }

  private String brief(Variant first, Variant other) {
    CostBuildUp before = first.estimate().price();
    CostBuildUp after = other.estimate().price();
    Money change = after.total().minus(before.total());
    double hours = other.estimate().hours().meanHours() - first.estimate().hours().meanHours();
    StringBuilder text =
        new StringBuilder(
            Paragraph.wrap(
                other.label()
                    + " costs "
                    + moreOrLess(change)
                    + " and takes "
                    + moreOrLess(hours)
                    + " than "
                    + first.label()
                    + ". What differs most:",
                "",
                "  "));
    Table table = new Table("lr");
    List<LineDifference> lines = LineDifference.between(before, after);
    Money rest = Money.zero(before.terms().currency());
    for (int i = 0; i < lines.size(); i++) {
      if (i < MOST_LINES) {
        table.row(lines.get(i).title(), lines.get(i).change().signedText());
      } else {
        rest = rest.plus(lines.get(i).change());
      }
    }
    if (lines.size() > MOST_LINES) {
      table.row(lines.size() - MOST_LINES + " other lines, together", rest.signedText());
    }
    return text.append(table.text("  ")).toString();
  }

  private static String moreOrLess(Money change) {
    if (change.isZero()) {
      return "as much";
    }
    boolean less = change.amount().signum() < 0;
    Money size = less ? Money.zero(change.currency()).minus(change) : change;
    return size.text() + (less ? " less" : " more");
  }

  private static String moreOrLess(double hours) {
    String size = hours(Math.abs(hours));
    return size.equals(hours(0)) ? "no longer" : size + (hours < 0 ? " less" : " longer");
  }

  private String sideBySide(List<Variant> variants) {
    Table table = new Table("l" + "r".repeat(variants.size()));
    boolean letters = variants.size() > MOST_LABELS;
    row(table, "", variants, v -> letters ? letter(variants, v) : v.label());
    row(table, "price before tax", variants, v -> v.estimate().price().subtotal().text());
    row(table, "price with tax", variants, v -> v.estimate().price().total().text());
    row(table, "hours, mean", variants, v -> hours(v.estimate().hours().meanHours()));
    row(table, "hours, eight of ten", variants, v -> hours(v.estimate().hours().p80Hours()));
    row(table, "weld length", variants, v -> printer.length(v.estimate().welds().lengthMm()));
    row(table, "steel added", variants, v -> printer.mass(v.estimate().materials().steelMassKg()));
    row(table, "weight added", variants, v -> printer.mass(weightKg(v)));
    row(table, "checks: stop", variants, v -> Integer.toString(v.count(Verdict.STOP)));
    row(table, "checks: look again", variants, v -> Integer.toString(v.count(Verdict.LOOK_AGAIN)));
    StringBuilder text = new StringBuilder("SIDE BY SIDE\n");
    if (letters) {
      Table legend = new Table("ll");
      for (Variant variant : variants) {
        legend.row(letter(variants, variant), variant.label());
      }
      text.append(legend.text("  ")).append('\n');
    }
    text.append(table.text("  "));
    for (Variant variant : variants) {
      String job = variant.estimate().draft().job().header().number();
      Stops stops = Stops.of(job, variant.checks(), amounts);
      if (!stops.isEmpty()) {
        text.append(Paragraph.wrap(variant.label() + ": " + stops.line(), "  ", "    "));
      }
    }
    return text.toString();
  }

  /** A, B, C: the labels of many variants are too wide for the heads of a table. */
  private static String letter(List<Variant> variants, Variant variant) {
    int index = variants.indexOf(variant);
    return index < 26 ? String.valueOf((char) ('A' + index)) : Integer.toString(index + 1);
  }

  private static double weightKg(Variant variant) {
    return variant.estimate().materials().steelMassKg()
        + variant.estimate().materials().partsMassKg();
  }

  private static void row(
      Table table, String title, List<Variant> variants, Function<Variant, String> figure) {
    String[] cells = new String[variants.size() + 1];
    cells[0] = title;
    for (int i = 0; i < variants.size(); i++) {
      cells[i + 1] = figure.apply(variants.get(i));
    }
    table.row(cells);
  }

  private String explained(Variant first, Variant other) {
    StringBuilder text =
        new StringBuilder("WHAT MAKES THE DIFFERENCE: ")
            .append(other.label())
            .append(" against ")
            .append(first.label())
            .append('\n');
    text.append(prices(first, other));
    Difference.Kind kind = null;
    Table table = new Table("lrrr");
    for (Difference difference : Differences.between(first.estimate(), other.estimate())) {
      if (difference.kind() != kind) {
        text.append(table.text("    "));
        table = new Table("lrrr");
        kind = difference.kind();
        text.append("  ").append(heading(kind)).append('\n');
      }
      table
          .row(
              difference.name(),
              amount(kind, difference.first()),
              amount(kind, difference.other()),
              (difference.change() > 0 ? "+" : "") + amount(kind, difference.change()))
          .note(difference.why().in(printer));
    }
    return text.append(table.text("    ")).toString();
  }

  /** The parts of the price, and what is paid when; both add up to the difference. */
  private static String prices(Variant first, Variant other) {
    CostBuildUp before = first.estimate().price();
    CostBuildUp after = other.estimate().price();
    Money whole = after.total().minus(before.total());
    return prices(
            "price with tax, part by part",
            PriceDifferences.between(
                PricedWork.of(first.estimate()), PricedWork.of(other.estimate())),
            whole)
        + prices("what is paid when", PriceDifferences.ofPayments(before, after), whole);
  }

  private static String prices(String heading, List<PriceDifference> parts, Money whole) {
    if (parts.isEmpty()) {
      return "";
    }
    Table table = new Table("lrrr");
    for (PriceDifference part : parts) {
      table.row(part.name(), part.first(), part.other(), part.change().signedText());
    }
    table.row("together", "", "", whole.signedText());
    return "  " + heading + "\n" + table.text("    ");
  }

  private static String heading(Difference.Kind kind) {
    return switch (kind) {
      case HOURS -> "hours, mean";
      case WELD -> "welds";
      case PLATE -> "plate area";
      case TUBE -> "tube length";
      case PART -> "bought parts";
    };
  }

  private String amount(Difference.Kind kind, double amount) {
    return switch (kind) {
      case HOURS -> hours(amount);
      case WELD, TUBE -> printer.length(amount);
      case PLATE -> area(amount);
      case PART -> Amounts.plain(amount);
    };
  }

  private String area(double areaMm2) {
    return amounts.us()
        ? Amounts.fixed(areaMm2 / SQUARE_INCH_MM2, 1) + " sq in"
        : Amounts.fixed(areaMm2 / SQUARE_CENTIMETRE_MM2, 0) + " cm2";
  }

  private static String hours(double hours) {
    return Amounts.fixed(hours, 1) + " h";
  }
}
