package trammel.reading.quantity;

import java.util.Optional;

/** Reads one quantity from left to right: sign, number, unit, and inches after feet. */
final class QuantityScanner {
  /** More digits than this cannot be held exactly, and no shop measures them. */
  private static final int MOST_DIGITS = 15;

  private static final int FINEST_FRACTION = 64;
  private static final int INCHES_IN_A_FOOT = 12;

  private final String given;
  private final String text;
  private final QuantityKind kind;
  private final UnitSystem system;
  private int at;

  /** The number last scanned, as a fraction of two integers. */
  private double over;

  private double under;
  private boolean isFraction;

  QuantityScanner(String given, QuantityKind kind, UnitSystem system) {
    this.given = given;
    this.text = plain(given);
    this.kind = kind;
    this.system = system;
  }

  double quantity() {
    refuseEmptyAndCommas();
    boolean negative = scanSign();
    scanNumber();
    double size = scanUnitAndRest();
    return negative && size != 0 ? -size : size;
  }

  private void refuseEmptyAndCommas() {
    if (text.isEmpty()) {
      throw refused("Write a number and its unit, such as " + example() + ".");
    }
    if (text.indexOf(',') >= 0) {
      throw refused("A comma can mean a decimal or a thousand: write 1.5 or 1500 without one.");
    }
  }

  private boolean scanSign() {
    char first = text.charAt(0);
    if (first != '-' && first != '+') {
      return false;
    }
    at++;
    skipSpaces();
    return first == '-';
  }

  private void scanNumber() {
    int start = at;
    isFraction = false;
    long whole = scanDigits();
    boolean hasWhole = at > start;
    if (peek() == '.') {
      scanDecimals(whole, hasWhole);
    } else if (!hasWhole) {
      throw refused("It must start with a number, such as " + example() + ".");
    } else if (peek() == '/') {
      scanFraction(0, whole);
    } else {
      scanPossibleMixed(whole);
    }
    refuseTrailingNumber();
  }

  private void scanDecimals(long whole, boolean hasWhole) {
    at++;
    int start = at;
    int digits = text.length();
    double ten = 1;
    double value = whole;
    int significant = whole == 0 ? 0 : Long.toString(whole).length();
    while (at < digits && isDigit(text.charAt(at))) {
      if (significant < MOST_DIGITS) {
        value = value * 10 + (text.charAt(at) - '0');
        ten *= 10;
        significant += value == 0 ? 0 : 1;
      }
      at++;
    }
    if (at == start) {
      throw refused(
          hasWhole
              ? "Write digits after the point, such as " + whole + ".5, or leave the point out."
              : "It must start with a number, such as " + example() + ".");
    }
    over = value;
    under = ten;
  }

  private void scanPossibleMixed(long whole) {
    over = whole;
    under = 1;
    int mark = at;
    boolean hyphen = peek() == '-' && isDigit(peekAt(at + 1));
    if (hyphen) {
      at++;
    } else {
      skipSpaces();
    }
    if (at == mark || !isDigit(peek())) {
      at = mark;
      return;
    }
    long top = scanDigits();
    if (peek() != '/') {
      throw refused(
          "Two numbers stand side by side: write one, such as "
              + whole
              + " 1/2 or "
              + whole
              + ".5.");
    }
    scanFraction(whole, top);
  }

  private void scanFraction(long whole, long top) {
    at++;
    int start = at;
    long bottom = scanDigits();
    if (at == start) {
      throw refused("Write a whole fraction, such as 3/16.");
    }
    if (bottom < 2 || bottom > FINEST_FRACTION || Long.bitCount(bottom) != 1) {
      throw refused(
          "A fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths; write a decimal for"
              + " anything else.");
    }
    if (top >= bottom) {
      throw refused(
          "The fraction "
              + top
              + "/"
              + bottom
              + " is one or more, so a space may be missing: write the whole number apart, such as"
              + " 1 1/2 in.");
    }
    isFraction = true;
    over = (double) whole * bottom + top;
    under = bottom;
  }

  private void refuseTrailingNumber() {
    int mark = at;
    skipSpaces();
    char next = peek();
    if (isDigit(next) || next == '.' || next == '/') {
      throw refused("It holds more than one number: write one, such as " + example() + ".");
    }
    at = mark;
  }

  private double scanUnitAndRest() {
    String name = scanUnitName();
    if (name.isEmpty()) {
      return bare();
    }
    boolean more = at < text.length();
    Unit unit = unitNamed(more && name.endsWith("-") ? name.substring(0, name.length() - 1) : name);
    double size = inside(unit);
    if (!more) {
      return size;
    }
    if (unit != Unit.FOOT || under != 1) {
      throw refused("It holds more than one number: write one, such as " + example() + ".");
    }
    return size + inchesAfterFeet();
  }

  private double inchesAfterFeet() {
    scanNumber();
    String name = scanUnitName();
    Optional<Unit> unit = Unit.find(QuantityKind.LENGTH, name);
    if (unit.isEmpty() || unit.get() != Unit.INCH || at < text.length()) {
      throw refused("After feet come inches with their mark, such as 5' 3 1/2\" or 5 ft 3 1/2 in.");
    }
    if (over >= INCHES_IN_A_FOOT * under) {
      throw refused("After feet come less than 12 inches, such as 5' 3 1/2\".");
    }
    return inside(Unit.INCH);
  }

  private double bare() {
    if (kind == QuantityKind.PERCENT && over > 0 && over <= under) {
      throw refused(
          "It can mean a share or a percentage: write 65 % for 0.65, or 0.65 % if meant.");
    }
    return inside(kind.bareUnit(system));
  }

  private double inside(Unit unit) {
    if (isFraction && !unit.takesFractions()) {
      throw refused(
          "Fractions are for inches: write a decimal, such as "
              + example()
              + ", or name the unit.");
    }
    return unit.toInside(over, under);
  }

  private Unit unitNamed(String name) {
    Optional<Unit> unit = Unit.find(kind, name);
    if (unit.isPresent()) {
      return unit.get();
    }
    Optional<Unit> other = Unit.findAny(name);
    if (other.isPresent()) {
      throw refused(
          name + " is for " + other.get().kind().noun() + ": write " + example() + " here.");
    }
    throw refused("The unit " + name + " is not one of " + Unit.symbolsOf(kind) + ".");
  }

  /** The words up to the next digit: a unit never holds one. */
  private String scanUnitName() {
    skipSpaces();
    int start = at;
    while (at < text.length() && !isDigit(text.charAt(at))) {
      at++;
    }
    int end = at;
    if (at < text.length() && end > start && text.charAt(end - 1) == '.') {
      // The point belongs to the number that follows: 5 ft .5 in.
      end--;
      at--;
    }
    String name = text.substring(start, end).strip();
    return name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
  }

  private long scanDigits() {
    long value = 0;
    int start = at;
    while (isDigit(peek())) {
      if (at - start >= MOST_DIGITS) {
        throw refused("It has too many digits to be a measurement.");
      }
      value = value * 10 + (text.charAt(at) - '0');
      at++;
    }
    return value;
  }

  private void skipSpaces() {
    while (peek() == ' ') {
      at++;
    }
  }

  private char peek() {
    return peekAt(at);
  }

  private char peekAt(int index) {
    return index < text.length() ? text.charAt(index) : 0;
  }

  private String example() {
    return kind.example(system);
  }

  private QuantityFormatException refused(String remedy) {
    return new QuantityFormatException(
        "'" + given + "'", kind.noun() + " such as " + example(), remedy);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The text with typographic marks and spaces as the keyboard has them. */
  private static String plain(String given) {
    StringBuilder plain = new StringBuilder(given.length());
    for (int i = 0; i < given.length(); i++) {
      char c = given.charAt(i);
      switch (c) {
        case '\u2019', '\u2032' -> plain.append('\'');
        case '\u201d', '\u2033' -> plain.append('"');
        case '\u2212' -> plain.append('-');
        case '\u00b7' -> plain.append(' ');
        case '\u00a0', '\u202f', '\t' -> plain.append(' ');
        default -> plain.append(c);
      }
    }
    return plain.toString().strip();
  }
}
