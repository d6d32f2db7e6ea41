package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;

/** The group {@code measured.tyre}. */
final class TyrePart {
  private static final Field<String> SIZE =
      Field.text("size", "metric code on the sidewall, such as 255/70R16", 20).optional();
  private static final Field<Double> DIAMETER =
      Field.lengthMm("diameter", "unloaded diameter, instead of size", inches(16), inches(60))
          .optional();
  private static final Field<Double> WIDTH =
      Field.lengthMm("width", "section width, instead of size", inches(3), inches(24)).optional();
  private static final Field<Double> RIM_WIDTH =
      Field.lengthMm("rim_width", "width of the rim between the beads", inches(2), inches(20))
          .optional();
  private static final Field<Double> WHEEL_OFFSET =
      Field.lengthMm(
              "wheel_offset",
              "mounting face outboard of the rim's middle; negative if inboard",
              inches(-8),
              inches(8))
          .measuredFrom("from the middle of the rim to the mounting face");
  private static final Field<Measurement> LOADED_RADIUS =
      Field.measuredLength(
              "loaded_radius",
              "wheel centre above the ground at ride weight",
              inches(7),
              inches(30))
          .measuredFrom("up from the level floor, tyre at its pressure");

  private static final Field<Integer> LOAD_INDEX =
      Field.count("load_index", "load index on the sidewall, such as 111 of 111T", 60, 126)
          .optional();
  private static final Field<Boolean> PASSENGER_ON_TRUCK =
      Field.flag(
              "passenger_on_truck",
              "a passenger tyre (P, or no letters before the size) on a pickup, van or other truck:"
                  + " its load then counts divided by 1.10")
          .withDefault(false);

  static final Field<FieldValues> FIELD =
      Field.section(
          "tyre",
          "the rear tyre and wheel; give size, or diameter and width",
          List.of(
              SIZE,
              DIAMETER,
              WIDTH,
              RIM_WIDTH,
              WHEEL_OFFSET,
              LOADED_RADIUS,
              LOAD_INDEX,
              PASSENGER_ON_TRUCK));

  private TyrePart() {}

  static Tyre of(FieldValues values) {
    Optional<TyreSize> size = size(values);
    return new Tyre(
        values.find(SIZE),
        size.isPresent() ? size.get().diameterMm() : values.get(DIAMETER),
        size.isPresent() ? size.get().widthMm() : values.get(WIDTH),
        values.find(RIM_WIDTH),
        values.get(WHEEL_OFFSET),
        values.get(LOADED_RADIUS),
        values.find(LOAD_INDEX),
        values.get(PASSENGER_ON_TRUCK));
  }

  static void check(FieldValues values, Problems problems, QuantityPrinter printer) {
    boolean bySize = values.isWritten(SIZE);
    boolean diameter = values.isWritten(DIAMETER);
    boolean width = values.isWritten(WIDTH);
    if (bySize && (diameter || width)) {
      problems.error(
          values.locationOf(diameter ? DIAMETER : WIDTH),
          "size and also " + (diameter ? "diameter" : "width"),
          "either size, or diameter and width",
          "Take one of them out.");
    } else if (!bySize && !(diameter && width)) {
      problems.error(
          values.locationOf(SIZE),
          diameter ? "diameter without width" : width ? "width without diameter" : "nothing",
          "either size, or diameter and width",
          "Add size, such as 255/70R16, or measure diameter and width.");
    }
    checkSize(values, problems);
    checkRadius(values, problems, printer);
  }

  private static Optional<TyreSize> size(FieldValues values) {
    Optional<String> code = values.find(SIZE);
    return code.isPresent() ? TyreSize.parse(code.get()) : Optional.empty();
  }

  private static void checkSize(FieldValues values, Problems problems) {
    Optional<String> code = values.find(SIZE);
    if (code.isPresent() && size(values).isEmpty()) {
      problems.error(
          values.locationOf(SIZE),
          "'" + code.get() + "'",
          "a metric tyre code: width in mm, slash, aspect in percent, R, rim in inches",
          "Write for example 255/70R16; for any other code give diameter and width instead.");
    }
  }

  private static void checkRadius(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<TyreSize> size = size(values);
    Optional<Double> diameterMm =
        size.isPresent() ? Optional.of(size.get().diameterMm()) : values.find(DIAMETER);
    Optional<Measurement> radius = values.find(LOADED_RADIUS);
    if (diameterMm.isEmpty()
        || radius.isEmpty()
        || radius.get().meanMm() <= diameterMm.get() / 2 + radius.get().tolerance()) {
      return;
    }
    problems.error(
        values.locationOf(LOADED_RADIUS),
        printer.length(radius.get().meanMm()),
        "at most half the unloaded diameter, " + printer.length(diameterMm.get() / 2),
        "A loaded tyre is lower than an unloaded one: check the tyre's size and measure again.");
  }
}
