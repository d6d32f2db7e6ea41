package trammel.planning.job;

import static trammel.planning.job.ShopUnits.degrees;
import static trammel.planning.job.ShopUnits.inches;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;

/** The group {@code measured.axle}. */
final class AxlePart {
  private static final Field<Double> TUBE_DIAMETER =
      Field.lengthMm("tube_diameter", "outside diameter of the axle tube", inches(1.5), inches(6))
          .measuredFrom("calliper, where the brackets will sit");
  private static final Field<Double> TUBE_WALL =
      Field.lengthMm("tube_wall", "wall of the axle tube", inches(0.1), inches(1))
          .measuredFrom("calliper at an open end, or the maker's figure");
  private static final Field<Measurement> FLANGE_TO_FLANGE =
      Field.measuredLength("flange_to_flange", "width of the axle", inches(36), inches(96))
          .measuredFrom("wheel-mounting face to wheel-mounting face");
  private static final Field<Measurement> INNER_LIMIT =
      Field.measuredLength(
              "inner_limit",
              "half-width of the housing's centre section: brackets sit outside it",
              inches(1),
              inches(30))
          .measuredFrom("out from the axle's middle");
  private static final Field<Measurement> OUTER_LIMIT =
      Field.measuredLength(
              "outer_limit",
              "half-distance to the spring pad or backing plate: brackets sit inside it",
              inches(10),
              inches(46))
          .measuredFrom("out from the axle's middle");
  private static final Field<Measurement> HOUSING_RADIUS =
      Field.measuredLength(
              "housing_radius",
              "largest radius of the centre housing; left out, it is taken as 6 in, and the"
                  + " clearances say so",
              inches(1),
              inches(15))
          .measuredFrom("out from the axle's line")
          .optional();
  private static final Field<MeasuredPosition> PINION =
      Field.measuredPoint("pinion", "centre of the rear universal joint", inches(-30), inches(40))
          .measuredFrom("from the axle's centre, in the attitude in which pinion_angle was read");
  private static final Field<MeasuredAngle> PINION_ANGLE =
      Field.measuredAngle(
              "pinion_angle",
              "elevation of the pinion's axis, nose up positive",
              degrees(-30),
              degrees(30))
          .measuredFrom("on the machined face of the yoke, against level or frame as stated");

  private static final Field<Double> RATING =
      Field.massKg(
              "rating",
              "what the rear axle may carry by its maker, the rear GAWR of the vehicle's label",
              300,
              10_000)
          .optional();

  static final Field<FieldValues> FIELD =
      Field.section(
          "axle",
          "the axle housing",
          List.of(
              TUBE_DIAMETER,
              TUBE_WALL,
              FLANGE_TO_FLANGE,
              INNER_LIMIT,
              OUTER_LIMIT,
              HOUSING_RADIUS,
              PINION,
              PINION_ANGLE,
              RATING));

  private AxlePart() {}

  static Axle of(FieldValues values) {
    return new Axle(
        values.get(TUBE_DIAMETER),
        values.get(TUBE_WALL),
        values.get(FLANGE_TO_FLANGE),
        values.get(INNER_LIMIT),
        values.get(OUTER_LIMIT),
        values.find(HOUSING_RADIUS),
        values.get(PINION),
        values.get(PINION_ANGLE),
        values.find(RATING));
  }

  static void check(FieldValues values, Problems problems, QuantityPrinter printer) {
    checkBore(values, problems, printer);
    checkLimits(values, problems, printer);
    checkHousing(values, problems, printer);
    checkWidth(values, problems, printer);
  }

  private static void checkBore(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Double> diameterMm = values.find(TUBE_DIAMETER);
    Optional<Double> wallMm = values.find(TUBE_WALL);
    if (diameterMm.isEmpty() || wallMm.isEmpty() || 2 * wallMm.get() < diameterMm.get()) {
      return;
    }
    problems.error(
        values.locationOf(TUBE_WALL),
        printer.decimalLength(wallMm.get(), 3),
        "less than half the tube's diameter, " + printer.length(diameterMm.get() / 2),
        "Measure tube_wall and tube_diameter again.");
  }

  private static void checkLimits(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Measurement> inner = values.find(INNER_LIMIT);
    Optional<Measurement> outer = values.find(OUTER_LIMIT);
    if (inner.isEmpty() || outer.isEmpty() || inner.get().meanMm() < outer.get().meanMm()) {
      return;
    }
    problems.error(
        values.locationOf(INNER_LIMIT),
        printer.length(inner.get().meanMm()),
        "less than outer_limit, " + printer.length(outer.get().meanMm()),
        "Brackets sit between the two: check that both are half-distances from the axle's middle.");
  }

  private static void checkHousing(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Measurement> radius = values.find(HOUSING_RADIUS);
    Optional<Double> tubeMm = values.find(TUBE_DIAMETER);
    if (radius.isEmpty() || tubeMm.isEmpty() || radius.get().meanMm() >= tubeMm.get() / 2) {
      return;
    }
    problems.error(
        values.locationOf(HOUSING_RADIUS),
        printer.length(radius.get().meanMm()),
        "at least the tube's radius, " + printer.length(tubeMm.get() / 2),
        "Measure from the axle's line to the housing's furthest point.");
  }

  private static void checkWidth(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Measurement> outer = values.find(OUTER_LIMIT);
    Optional<Measurement> width = values.find(FLANGE_TO_FLANGE);
    if (outer.isEmpty() || width.isEmpty() || 2 * outer.get().meanMm() <= width.get().meanMm()) {
      return;
    }
    problems.error(
        values.locationOf(OUTER_LIMIT),
        printer.length(outer.get().meanMm()),
        "at most half of flange_to_flange, " + printer.length(width.get().meanMm() / 2),
        "Check that outer_limit is a half-distance from the axle's middle.");
  }
}
