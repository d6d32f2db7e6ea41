package trammel.planning.figures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.cutting.bars.BarPiece;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.labour.ThreePoint;

/** Reads lists that are written on one line. */
final class WrittenLists {
  private static final int MOST = 200;

  private WrittenLists() {}

  /** Pieces such as {@code 60x4,40x6}: length, times, how many. */
  static List<BarPiece> pieces(String text, UnitSystem units) {
    List<BarPiece> pieces = new ArrayList<>();
    for (String part : parts(text, ",")) {
      int cross = Math.max(part.lastIndexOf('x'), part.lastIndexOf('X'));
      String length = cross < 0 ? part : part.substring(0, cross).strip();
      String count = cross < 0 ? "1" : part.substring(cross + 1).strip();
      try {
        double lengthMm = Quantities.parse(length, QuantityKind.LENGTH, units);
        pieces.add(new BarPiece(length, lengthMm, Integer.parseInt(count)));
      } catch (QuantityFormatException | NumberFormatException unreadable) {
        throw refusal("pieces", part, "a length and how many, such as 28 1/2x4", "60x4,40x6,30x8");
      }
    }
    return pieces;
  }

  /** Lengths such as {@code 3,2,1 1/2}, mm. */
  static List<Double> lengthsMm(String what, String text, UnitSystem units) {
    List<Double> lengths = new ArrayList<>();
    for (String part : parts(text, ",")) {
      try {
        lengths.add(Quantities.parse(part, QuantityKind.LENGTH, units));
      } catch (QuantityFormatException unreadable) {
        throw refusal(what, part, "lengths with commas between them", "1,2,1");
      }
    }
    return lengths;
  }

  /** Amounts such as {@code 0.99,12.50}. */
  static List<BigDecimal> amounts(String text) {
    List<BigDecimal> amounts = new ArrayList<>();
    for (String part : parts(text, ",")) {
      amounts.add(amount(part));
    }
    return amounts;
  }

  private static BigDecimal amount(String part) {
    boolean plain = !part.isEmpty() && part.length() <= 15;
    for (int i = 0; i < part.length(); i++) {
      plain = plain && "0123456789.".indexOf(part.charAt(i)) >= 0;
    }
    try {
      if (plain) {
        return new BigDecimal(part);
      }
    } catch (NumberFormatException unreadable) {
      // Two points, or nothing but a point: refused below like any other text.
    }
    throw refusal("amounts", part, "amounts of 0 or more with commas between them", "12.50,0.99");
  }

  /** Tasks such as {@code 3,4,8+1,2,4}: low, likely and high hours each. */
  static List<ThreePoint> tasks(String text) {
    List<ThreePoint> tasks = new ArrayList<>();
    for (String part : parts(text, "\\+")) {
      String[] three = part.split(",", -1);
      if (three.length != 3) {
        throw task(part);
      }
      try {
        tasks.add(
            new ThreePoint(
                amount(three[0].strip()).doubleValue(),
                amount(three[1].strip()).doubleValue(),
                amount(three[2].strip()).doubleValue()));
      } catch (IllegalArgumentException unordered) {
        throw task(part);
      }
    }
    return tasks;
  }

  private static IllegalArgumentException task(String part) {
    return refusal(
        "tasks",
        part,
        "low, likely and high hours in rising order, a + between tasks",
        "3,4,8+1,2,4+6,9,18");
  }

  private static String[] parts(String text, String separator) {
    String[] parts = text.strip().split(separator, -1);
    if (parts.length > MOST) {
      throw new IllegalArgumentException(
          "A list was given " + parts.length + " entries; at most " + MOST + " are allowed.");
    }
    for (int i = 0; i < parts.length; i++) {
      parts[i] = parts[i].strip();
    }
    return parts;
  }

  private static IllegalArgumentException refusal(
      String what, String given, String allowed, String example) {
    return new IllegalArgumentException(
        what + ": given '" + given + "'; allowed: " + allowed + ". Write it like " + example + ".");
  }
}
