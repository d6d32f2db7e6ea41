package trammel.app.prices;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/** What a column of a supplier's list may say, with the headings that are taken for it. */
public enum PriceColumn {
  ITEM(
      "item",
      "item number",
      "item no",
      "key",
      "code",
      "article",
      "article number",
      "article no",
      "part",
      "part number",
      "part no",
      "number",
      "no",
      "order number"),
  TITLE("title", "description", "designation", "product", "name", "text"),
  PRICE(
      "price", "unit price", "price each", "each price", "net price", "net", "cost", "list price"),
  UNIT("unit", "per", "unit of measure", "uom", "price unit"),
  LENGTH("length"),
  WIDTH("width"),
  SIZE("size", "dimensions", "dimension"),
  FROM("from", "from quantity", "quantity", "qty", "min qty", "minimum quantity", "break"),
  CURRENCY("currency");

  private final List<String> headings;

  PriceColumn(String... headings) {
    this.headings = List.of(headings);
  }

  /** Its name on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The columns that {@code --column WHAT=HEADING} tells.
   *
   * @throws CommandFailure if one of them is none
   */
  public static Map<PriceColumn, String> told(List<String> words) {
    Map<PriceColumn, String> told = new EnumMap<>(PriceColumn.class);
    for (String word : words) {
      int equals = word.indexOf('=');
      Optional<PriceColumn> column =
          equals < 0 ? Optional.empty() : ofWord(word.substring(0, equals));
      if (column.isEmpty() || equals == word.length() - 1) {
        throw CommandFailure.badInput(
            "--column was given '"
                + word
                + "'; give WHAT=HEADING, WHAT one of "
                + columnWords()
                + ".");
      }
      told.put(column.get(), word.substring(equals + 1));
    }
    return told;
  }

  private static String columnWords() {
    List<String> words = new ArrayList<>();
    for (PriceColumn column : PriceColumn.values()) {
      words.add(column.word());
    }
    return String.join(", ", words);
  }

  /** The column of a name. */
  private static Optional<PriceColumn> ofWord(String word) {
    for (PriceColumn column : values()) {
      if (column.word().equals(word)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  /** True if a heading is taken for it, whatever its capitals and signs, a currency behind it. */
  boolean isCalled(String heading, String currencyCode) {
    String plain = plain(heading);
    return headings.contains(plain)
        || this == PRICE && headings.contains(withoutCurrency(plain, currencyCode));
  }

  private static String withoutCurrency(String plain, String currencyCode) {
    String code = currencyCode.toLowerCase(Locale.ROOT);
    String bare = plain.replace("in " + code, "").replace(code, "");
    return bare.strip();
  }

  private static String plain(String heading) {
    return heading
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip()
        .replaceAll("\\s+", " ");
  }
}
