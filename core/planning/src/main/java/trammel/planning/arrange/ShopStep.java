package trammel.planning.arrange;

import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * The steps in which a shop sets things, and values as they stand in a job file: positions in 1/8
 * in or 3 mm, angles in 1/4 degree.
 *
 * @param units the unit system of the job
 */
record ShopStep(UnitSystem units) {
  private static final double INCH_MM = 25.4;
  private static final double METRIC_MM = 3;

  /** How many of the finest steps a stride takes at each level, the longest first. */
  private static final int[] LENGTH_STRIDES = {16, 8, 4, 2, 1};

  private static final int[] ANGLE_STRIDES = {6, 4, 2, 1, 1};
  private static final double NUMBER_STEP = 0.05;
  private static final double ROUNDING = 1e-6;

  /** How many levels of strides there are. */
  static int levels() {
    return LENGTH_STRIDES.length;
  }

  /** The finest step of a dial. */
  double finest(Dial.Kind kind) {
    return switch (kind) {
      case LENGTH -> units == UnitSystem.US ? INCH_MM / 8 : METRIC_MM;
      case ANGLE -> Math.toRadians(0.25);
      case NUMBER, CHOICE -> NUMBER_STEP;
    };
  }

  /** The stride of a dial at a level. */
  double stride(Dial.Kind kind, int level) {
    return finest(kind) * (kind == Dial.Kind.LENGTH ? LENGTH_STRIDES : ANGLE_STRIDES)[level];
  }

  /** A value in whole steps, as near as can be. */
  double stepped(Dial.Kind kind, double value) {
    return finest(kind) * Math.rint(value / finest(kind));
  }

  /** A value in whole steps, no less than the one given. */
  double up(Dial.Kind kind, double value) {
    return finest(kind) * Math.ceil(value / finest(kind) - ROUNDING);
  }

  /** A value as it stands in a job file. */
  String text(Dial.Kind kind, double value) {
    return switch (kind) {
      case LENGTH ->
          units == UnitSystem.US
              ? QuantityPrinter.inches(value)
              : new QuantityPrinter(units).length(value);
      case ANGLE -> new QuantityPrinter(units).angle(value, 2);
      case NUMBER, CHOICE -> String.valueOf(Math.rint(value * 100) / 100);
    };
  }

  /** The value of a text that stands in a job file. */
  double value(Dial.Kind kind, String text) {
    return switch (kind) {
      case LENGTH -> Quantities.parse(text, QuantityKind.LENGTH, units);
      case ANGLE ->
          Quantities.parse(text.replace("from level", "").strip(), QuantityKind.ANGLE, units);
      case NUMBER, CHOICE -> Double.parseDouble(text.strip());
    };
  }
}
