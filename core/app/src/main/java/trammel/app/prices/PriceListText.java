package trammel.app.prices;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.material.PriceBreak;
import trammel.planning.estimate.Counts;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.money.Money;

/** A supplier's list on a screen and for machines. */
public final class PriceListText {
  private static final int MOST_UNKNOWN = 20;
  private static final int TITLE_WIDTH = 52;

  private final PriceList list;
  private final QuantityPrinter printer;
  private final Currency currency;

  /**
   * @param list the list
   * @param printer prints sizes
   * @param currency of the prices
   */
  public PriceListText(PriceList list, QuantityPrinter printer, Currency currency) {
    this.list = list;
    this.printer = printer;
    this.currency = currency;
  }

  /** What of the list is read as what. */
  public String headings() {
    StringBuilder text = new StringBuilder("PRICE LIST ").append(list.file());
    text.append(": ").append(Counts.of(list.lines(), "line")).append('\n');
    list.columns()
        .forEach(
            (column, heading) ->
                text.append("  ")
                    .append(column.word())
                    .append(" ".repeat(10 - column.word().length()))
                    .append("from  ")
                    .append(heading)
                    .append('\n'));
    if (!list.others().isEmpty()) {
      text.append("  not read        ").append(String.join(", ", list.others())).append('\n');
    }
    return text.toString();
  }

  /** What changes, and what of the list is of nothing in the catalog. */
  public String changes() {
    List<PriceList.NewPrice> changes = list.changes();
    StringBuilder text = new StringBuilder();
    text.append("\nPRICES: ")
        .append(changes.size())
        .append(" change, ")
        .append(list.prices().size() - changes.size())
        .append(" stay\n");
    for (PriceList.NewPrice price : changes) {
      text.append("  ").append(line(price)).append('\n');
    }
    if (!list.unknown().isEmpty()) {
      text.append("\nNOT IN THE CATALOG: ")
          .append(Counts.of(list.unknown().size(), "line"))
          .append('\n');
      list.unknown().stream()
          .limit(MOST_UNKNOWN)
          .forEach(
              one ->
                  text.append("  line ")
                      .append(one.line())
                      .append("  ")
                      .append(one.words())
                      .append('\n'));
      if (list.unknown().size() > MOST_UNKNOWN) {
        text.append("  and ").append(list.unknown().size() - MOST_UNKNOWN).append(" more\n");
      }
    }
    return text.toString();
  }

  private String line(PriceList.NewPrice price) {
    Priced priced = price.priced();
    BigDecimal was = priced.price();
    BigDecimal becomes = price.price();
    StringBuilder line =
        new StringBuilder(pad(PriceWords.title(priced, printer)))
            .append("  ")
            .append(money(was))
            .append(" to ")
            .append(money(becomes));
    if (was.signum() > 0 && becomes.compareTo(was) != 0) {
      BigDecimal percent =
          becomes
              .subtract(was)
              .multiply(BigDecimal.valueOf(100))
              .divide(was, 1, RoundingMode.HALF_UP);
      line.append(", ").append(percent.signum() > 0 ? "+" : "").append(percent).append(" %");
    }
    price
        .packPrice()
        .ifPresent(
            pack ->
                line.append("; ")
                    .append(priced.pack().orElseThrow().title())
                    .append(' ')
                    .append(money(priced.pack().orElseThrow().price()))
                    .append(" to ")
                    .append(money(pack)));
    for (PriceBreak one : price.breaks()) {
      line.append("; from ").append(one.from()).append(" ").append(money(one.price()));
    }
    if (!priced.breaks().isEmpty() && price.breaks().isEmpty()) {
      line.append("; its lower prices from a number on are not on this list and go");
    }
    return line.append(price.isFar() ? "  FAR OFF: really?" : "").toString();
  }

  private static String pad(String title) {
    return title + " ".repeat(Math.max(0, TITLE_WIDTH - title.length()));
  }

  /** Prices of one may have more decimals than coins. */
  private String money(BigDecimal price) {
    int digits = currency.getDefaultFractionDigits();
    BigDecimal plain = price.stripTrailingZeros();
    if (plain.scale() <= digits) {
      return new Money(price, currency).text();
    }
    String whole = new Money(price, currency).text();
    return currency.getCurrencyCode().equals("USD")
        ? "$" + plain.toPlainString()
        : plain.toPlainString() + whole.substring(whole.lastIndexOf(' '));
  }

  /** What the new prices do to jobs. */
  public static String jobs(List<TouchedJob> jobs) {
    if (jobs.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder("\nJOBS\n");
    for (TouchedJob job : jobs) {
      text.append("  ").append(job.number()).append("  ").append(job.file()).append("  ");
      text.append(
          job.isTouched()
              ? job.before().text()
                  + " to "
                  + job.after().text()
                  + " with tax, "
                  + job.after().minus(job.before()).signedText()
              : "not touched, " + job.before().text());
      text.append('\n');
    }
    return text.toString();
  }

  /** The list for machines. */
  public Map<String, Object> json(
      List<TouchedJob> jobs, String pricedOn, String source, Path file, boolean written) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("list", list.file().toString());
    json.put("lines", list.lines());
    Map<String, Object> columns = new LinkedHashMap<>();
    list.columns().forEach((column, heading) -> columns.put(column.word(), heading));
    json.put("columns", columns);
    json.put("columns_not_read", list.others());
    json.put("priced_on", pricedOn);
    json.put("source", source);
    json.put("currency", currency.getCurrencyCode());
    List<Object> prices = new ArrayList<>();
    list.prices().forEach(price -> prices.add(row(price)));
    json.put("prices", prices);
    List<Object> unknown = new ArrayList<>();
    for (PriceList.Unknown one : list.unknown()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("line", one.line());
      row.put("words", one.words());
      unknown.add(row);
    }
    json.put("not_in_the_catalog", unknown);
    List<Object> touched = new ArrayList<>();
    for (TouchedJob job : jobs) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("job", job.number());
      row.put("file", job.file());
      row.put("total_before", job.before().amount());
      row.put("total_after", job.after().amount());
      touched.add(row);
    }
    json.put("jobs", touched);
    json.put("written", written);
    json.put("file", file.toString());
    return json;
  }

  private static Map<String, Object> row(PriceList.NewPrice price) {
    Priced priced = price.priced();
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("item", priced.name());
    row.put("title", priced.title());
    if (priced.isSized()) {
      row.put("length_mm", priced.lengthMm());
      if (priced.widthMm() > 0) {
        row.put("width_mm", priced.widthMm());
      }
    }
    row.put("price_before", priced.price());
    row.put("price", price.price());
    price.packPrice().ifPresent(pack -> row.put("pack_price", pack));
    List<Object> breaks = new ArrayList<>();
    for (PriceBreak one : price.breaks()) {
      Map<String, Object> from = new LinkedHashMap<>();
      from.put("from", one.from());
      from.put("price", one.price());
      breaks.add(from);
    }
    row.put("breaks", breaks);
    row.put("changes", price.isChanged());
    row.put("far_off", price.isFar());
    return row;
  }
}
