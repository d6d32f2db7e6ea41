package trammel.planning.job;

import java.util.Optional;

/**
 * A metric tyre code taken apart, such as {@code 255/70R16}: section width in mm, height of the
 * section in percent of the width, rim diameter in inches.
 *
 * @param widthMm nominal section width, mm
 * @param aspectPercent height of the section in percent of its width
 * @param rimInches nominal rim diameter, inches
 */
public record TyreSize(int widthMm, int aspectPercent, double rimInches) {
  /** Refuses sizes that no road tyre has. */
  public TyreSize {
    if (widthMm < 105
        || widthMm > 455
        || aspectPercent < 20
        || aspectPercent > 100
        || !(rimInches >= 10 && rimInches <= 30)) {
      throw new IllegalArgumentException(
          "The tyre size ("
              + widthMm
              + "/"
              + aspectPercent
              + "R"
              + rimInches
              + ") must have a width from 105 to 455 mm, an aspect from 20 to 100 percent and a rim"
              + " from 10 to 30 inches.");
    }
  }

  /** The parts of a code: letters P or LT, width, slash, aspect, R or ZR or a dash, rim. */
  public static Optional<TyreSize> parse(String code) {
    int start = code.startsWith("LT") ? 2 : code.startsWith("P") ? 1 : 0;
    int slash = code.indexOf('/');
    int rim = Math.max(code.indexOf('R'), code.indexOf('-'));
    if (slash < start || rim <= slash) {
      return Optional.empty();
    }
    int aspectEnd = code.charAt(rim - 1) == 'Z' ? rim - 1 : rim;
    String width = code.substring(start, slash);
    if (aspectEnd <= slash || !isDigits(width, 3)) {
      return Optional.empty();
    }
    String aspect = code.substring(slash + 1, aspectEnd);
    String rimText = code.substring(rim + 1);
    boolean half = rimText.endsWith(".5");
    String wholeRim = half ? rimText.substring(0, rimText.length() - 2) : rimText;
    if (!(isDigits(aspect, 2) || aspect.equals("100")) || !isDigits(wholeRim, 2)) {
      return Optional.empty();
    }
    return inRange(
        Integer.parseInt(width),
        Integer.parseInt(aspect),
        Integer.parseInt(wholeRim) + (half ? 0.5 : 0));
  }

  private static Optional<TyreSize> inRange(int widthMm, int aspectPercent, double rimInches) {
    try {
      return Optional.of(new TyreSize(widthMm, aspectPercent, rimInches));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Unloaded diameter: rim and two section heights, mm. */
  public double diameterMm() {
    return rimInches * 25.4 + 2.0 * widthMm * aspectPercent / 100;
  }

  private static boolean isDigits(String text, int length) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return text.length() == length;
  }
}
