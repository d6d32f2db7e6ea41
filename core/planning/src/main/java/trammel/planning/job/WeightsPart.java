package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.poundFeet;
import static trammel.planning.job.ShopUnits.pounds;
import static trammel.planning.job.ShopUnits.poundsPerInch;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;

/** The group {@code measured.weights}. */
final class WeightsPart {
  private static final Field<Measurement> FRONT_LEFT = wheel("front_left", "left front wheel");
  private static final Field<Measurement> FRONT_RIGHT = wheel("front_right", "right front wheel");
  private static final Field<Measurement> REAR_LEFT = wheel("rear_left", "left rear wheel");
  private static final Field<Measurement> REAR_RIGHT = wheel("rear_right", "right rear wheel");
  private static final Field<Double> UNSPRUNG_REAR =
      Field.massKg(
          "unsprung_rear",
          "axle, wheels, brakes and half of what joins them to the body",
          pounds(50),
          pounds(4000));
  private static final Field<Double> HEIGHT =
      Field.lengthMm(
              "centre_of_gravity_height",
              "height of the whole vehicle's centre of gravity at ride",
              inches(10),
              inches(72))
          .measuredFrom("up from the ground");
  private static final Field<String> HEIGHT_FROM =
      Field.choice(
          "centre_of_gravity_from", "how that height was found", List.of("measured", "estimated"));

  private static final Field<Double> FRONT_ROLL =
      Field.torqueNmm(
              "front_roll_stiffness",
              "moment that rolls the body on its front axle by one degree, anti-roll bar included;"
                  + " left out, estimated from 1.2 Hz",
              poundFeet(20),
              poundFeet(5000))
          .optional();

  private static final Field<Double> FRONT_RATE =
      Field.rateNPerMm(
              "front_wheel_rate",
              "load on one front wheel over how far the body sinks there, springs alone; for the front's"
                  + " ride frequency, and for its roll stiffness where that is not given",
              poundsPerInch(20),
              poundsPerInch(2000))
          .optional();

  static final Field<FieldValues> FIELD =
      Field.section(
          "weights",
          "the vehicle on the scales, ready to drive",
          List.of(
              FRONT_LEFT,
              FRONT_RIGHT,
              REAR_LEFT,
              REAR_RIGHT,
              UNSPRUNG_REAR,
              HEIGHT,
              HEIGHT_FROM,
              FRONT_ROLL,
              FRONT_RATE));

  private WeightsPart() {}

  private static Field<Measurement> wheel(String key, String help) {
    return Field.measuredMass(key, help, pounds(50), pounds(15000))
        .measuredFrom("all four wheels on scales on a level floor");
  }

  static Weights of(FieldValues values) {
    return new Weights(
        values.get(FRONT_LEFT),
        values.get(FRONT_RIGHT),
        values.get(REAR_LEFT),
        values.get(REAR_RIGHT),
        values.get(UNSPRUNG_REAR),
        values.get(HEIGHT),
        values.get(HEIGHT_FROM).equals("measured"),
        values.find(FRONT_ROLL),
        values.find(FRONT_RATE));
  }

  static void check(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Measurement> left = values.find(REAR_LEFT);
    Optional<Measurement> right = values.find(REAR_RIGHT);
    Optional<Double> unsprungKg = values.find(UNSPRUNG_REAR);
    if (left.isEmpty() || right.isEmpty() || unsprungKg.isEmpty()) {
      return;
    }
    double rearKg = left.get().meanKg() + right.get().meanKg();
    if (unsprungKg.get() < rearKg) {
      return;
    }
    problems.error(
        values.locationOf(UNSPRUNG_REAR),
        printer.mass(unsprungKg.get()),
        "less than both rear wheels together, " + printer.mass(rearKg),
        "Weigh the bare axle with its wheels, or estimate it again.");
  }
}
