package trammel.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import trammel.app.cutfile.CutFile;
import trammel.app.cutfile.CutPiece;
import trammel.app.cutfile.CutPlan;
import trammel.app.cutfile.CutStock;
import trammel.cutting.CuttingStatus;

/** Cutting plans on a screen, sizes in the unit of the file. */
public final class CutText {
  /** Places of outlines come with every digit; a shop reads this many. */
  private static final int PLACE_DECIMALS = 4;

  private final CutFile file;
  private final List<CutPlan> plans;

  /**
   * @param file what was read
   * @param plans what came out
   */
  public CutText(CutFile file, List<CutPlan> plans) {
    this.file = file;
    this.plans = List.copyOf(plans);
  }

  /** Heading, then every section with its result and every bar, sheet or strip. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append("CUT ").append(file.name()).append("  sizes in ").append(file.unit()).append('\n');
    if (plans.size() > 1) {
      BigDecimal total = BigDecimal.ZERO;
      for (CutPlan plan : plans) {
        total = total.add(plan.objective());
      }
      text.append("  ").append(plans.size()).append(" sections, together ");
      text.append(total.toPlainString()).append('\n');
    }
    for (CutPlan plan : plans) {
      if (!plan.section().isEmpty()) {
        text.append("\nSECTION ").append(plan.section()).append('\n');
      }
      text.append(result(plan));
      text.append(stock(plan));
    }
    return text.toString();
  }

  private static String result(CutPlan plan) {
    String what =
        switch (plan.measure()) {
          case PRICE -> "price";
          case COUNT -> "pieces of stock";
          case LENGTH -> "length of strip";
        };
    String better = plan.measure() == CutPlan.Measure.PRICE ? "cheaper" : "smaller";
    String known =
        plan.status() == CuttingStatus.PROVEN_OPTIMAL
            ? "nothing " + better + " is possible (proven)"
            : "something " + better + " may exist, nothing under the bound";
    return "  "
        + what
        + " "
        + figure(plan, plan.objective())
        + ", lower bound "
        + figure(plan, plan.lowerBound())
        + ": "
        + known
        + "; found in "
        + Amounts.fixed(plan.seconds(), 2)
        + " s\n";
  }

  private static String figure(CutPlan plan, BigDecimal value) {
    return plan.measure() == CutPlan.Measure.LENGTH ? rounded(value) : shown(value);
  }

  /** Bars and sheets that are cut alike, one after the other, are shown once. */
  private static String stock(CutPlan plan) {
    StringBuilder text = new StringBuilder();
    int at = 0;
    while (at < plan.stock().size()) {
      CutStock stock = plan.stock().get(at);
      int next = at + 1;
      while (next < plan.stock().size() && plan.stock().get(next).equals(stock)) {
        next++;
      }
      text.append('\n').append(heading(plan, stock, at + 1, next));
      text.append(pieces(stock));
      at = next;
    }
    return text.toString();
  }

  private static String heading(CutPlan plan, CutStock stock, int first, int last) {
    StringBuilder heading = new StringBuilder("  ");
    if (plan.measure() == CutPlan.Measure.LENGTH) {
      heading.append("Strip");
      return heading
          .append(", length ")
          .append(figure(plan, plan.objective()))
          .append('\n')
          .toString();
    } else {
      heading.append(stock.left().isPresent() ? "Stick" : "Sheet");
      heading.append(last > first ? "s " : " ").append(first);
      heading.append(last > first ? " to " + last + ", cut alike" : "");
      heading.append(": ").append(stock.id());
    }
    heading.append(", ").append(size(stock.size()));
    if (stock.left().isPresent()) {
      heading.append("; left over ").append(shown(stock.left().get()));
    }
    return heading.append('\n').toString();
  }

  private static String size(List<BigDecimal> size) {
    StringBuilder text = new StringBuilder();
    for (BigDecimal side : size) {
      text.append(text.isEmpty() ? "" : " x ").append(shown(side));
    }
    return text.toString();
  }

  private static String pieces(CutStock stock) {
    if (stock.left().isPresent()) {
      Table table = new Table("rrr");
      table.row("length", "from", "to");
      for (CutPiece piece : stock.pieces()) {
        BigDecimal length = piece.size().get(0);
        table.row(shown(length), shown(piece.x()), shown(piece.x().add(length)));
      }
      return table.text("    ");
    }
    Table table = new Table("lrrr");
    table.row("part", "x", "y", "turn");
    for (CutPiece piece : stock.pieces()) {
      boolean outline = piece.size().isEmpty();
      String part = outline ? piece.id().toString() : size(piece.size());
      String x = outline ? rounded(piece.x()) : shown(piece.x());
      String y = outline ? rounded(piece.y()) : shown(piece.y());
      table.row(part, x, y, shown(piece.turn()) + " deg");
    }
    return table.text("    ");
  }

  private static String shown(BigDecimal value) {
    return value.toPlainString();
  }

  private static String rounded(BigDecimal place) {
    if (place.scale() <= PLACE_DECIMALS) {
      return place.toPlainString();
    }
    BigDecimal rounded = place.setScale(PLACE_DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
