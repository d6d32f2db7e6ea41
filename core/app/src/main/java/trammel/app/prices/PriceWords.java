package trammel.app.prices;

import trammel.reading.quantity.QuantityPrinter;

/** How a priced thing is called on a screen and on orders. */
final class PriceWords {
  private PriceWords() {}

  /** Its title with its size. */
  static String title(Priced priced, QuantityPrinter printer) {
    if (!priced.isSized()) {
      return priced.title();
    }
    String length = printer.length(priced.lengthMm());
    return priced.title()
        + ", "
        + (priced.widthMm() > 0 ? printer.length(priced.widthMm()) + " x " + length : length);
  }
}
