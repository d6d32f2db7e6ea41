package trammel.planning.job;

import static trammel.planning.job.ShopUnits.degrees;
import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.pounds;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.Tolerances;
import trammel.reading.tree.Problems;

/** The part {@code measured} of a job file. */
final class MeasuredPart {
  private static final Field<Measurement> WHEELBASE_LEFT = wheelbase("left", "left side");
  private static final Field<Measurement> WHEELBASE_RIGHT = wheelbase("right", "right side");
  private static final Field<FieldValues> WHEELBASE =
      Field.section(
          "wheelbase", "wheelbase on each side", List.of(WHEELBASE_LEFT, WHEELBASE_RIGHT));

  private static final Field<Measurement> ON_STANDS =
      Field.measuredLevelAngle(
              "on_stands",
              "slope of the rail as the frame sits on the stands, positive with the rear higher",
              degrees(-10),
              degrees(10))
          .measuredFrom("on the straight run of the rail, from level");
  private static final Field<Double> AT_RIDE =
      Field.levelAngleRad(
              "at_ride",
              "slope of the rail wanted at ride, positive with the rear higher",
              degrees(-10),
              degrees(10))
          .measuredFrom("on the straight run of the rail, from level");
  private static final Field<FieldValues> RAKE =
      Field.section("rake", "slope of the straight run of the rail", List.of(ON_STANDS, AT_RIDE));

  private static final Field<Double> TYRE_GRIP =
      Field.number("tyre_grip", "greatest friction of the tyres on the road", 0.3, 1.8).optional();

  private static final Field<Double> FRONT_SHARE =
      Field.percent("front_share", "share of the braking force at the front wheels", 0.3, 0.95)
          .withDefault(0.65);
  private static final Field<FieldValues> BRAKES =
      Field.section("brakes", "how the brakes share the work", List.of(FRONT_SHARE));

  private static final Field<Double> TAPE =
      Field.lengthMm("tape", "how far a tape reading may be off", inches(1.0 / 64), inches(0.5))
          .withDefault(Tolerances.USUAL.tapeMm());
  private static final Field<Double> ANGLE_FINDER =
      Field.angleRad(
              "angle_finder", "how far an angle reading may be off", degrees(0.02), degrees(2))
          .withDefault(Tolerances.USUAL.angleFinderRad());
  private static final Field<Double> SCALES =
      Field.massKg("scales", "how far one scale may be off", pounds(0.5), pounds(100))
          .withDefault(Tolerances.USUAL.scalesKg());

  static final Field<FieldValues> TOLERANCE =
      Field.section(
          "tolerance", "how well the instruments read", List.of(TAPE, ANGLE_FINDER, SCALES));

  static final Field<FieldValues> FIELD =
      Field.section(
          "measured",
          "what the tape, the angle finder and the scales say",
          List.of(
              WHEELBASE,
              RAKE,
              RailsPart.FIELD,
              AxlePart.FIELD,
              TyrePart.FIELD,
              DrivelinePart.TRANSMISSION,
              DrivelinePart.DRIVESHAFT,
              WeightsPart.FIELD,
              DrivelinePart.DRIVE,
              TYRE_GRIP,
              BRAKES,
              ObstaclePart.FIELD,
              LoadsPart.FIELD,
              HosesPart.FIELD,
              HitchPart.FIELD,
              TOLERANCE));

  private MeasuredPart() {}

  private static Field<Measurement> wheelbase(String key, String help) {
    return Field.measuredLength(key, help, inches(60), inches(280))
        .measuredFrom("from the axle mark to the front wheel's centre, both plumbed to the floor");
  }

  /** Names of the obstacles that can be moved or relieved. */
  static List<String> movableObstacles(FieldValues values) {
    return ObstaclePart.movable(values.find(ObstaclePart.FIELD).orElse(List.of()));
  }

  static boolean hasBoxedRails(FieldValues values) {
    return values.find(RailsPart.FIELD).filter(RailsPart::isBoxed).isPresent();
  }

  static Tolerances tolerances(FieldValues values) {
    return new Tolerances(values.get(TAPE), values.get(ANGLE_FINDER), values.get(SCALES));
  }

  static Measured of(FieldValues values) {
    FieldValues wheelbase = values.get(WHEELBASE);
    FieldValues rake = values.get(RAKE);
    Optional<FieldValues> shaft = values.find(DrivelinePart.DRIVESHAFT);
    Optional<FieldValues> drive = values.find(DrivelinePart.DRIVE);
    return new Measured(
        new Wheelbase(wheelbase.get(WHEELBASE_LEFT), wheelbase.get(WHEELBASE_RIGHT)),
        new Rake(rake.get(ON_STANDS), rake.get(AT_RIDE)),
        RailsPart.of(values.get(RailsPart.FIELD)),
        AxlePart.of(values.get(AxlePart.FIELD)),
        TyrePart.of(values.get(TyrePart.FIELD)),
        DrivelinePart.transmission(values.get(DrivelinePart.TRANSMISSION)),
        shaft.isPresent() ? Optional.of(DrivelinePart.driveshaft(shaft.get())) : Optional.empty(),
        WeightsPart.of(values.get(WeightsPart.FIELD)),
        drive.isPresent() ? Optional.of(DrivelinePart.engine(drive.get())) : Optional.empty(),
        values.find(TYRE_GRIP),
        values.get(BRAKES).get(FRONT_SHARE),
        ObstaclePart.of(values.get(ObstaclePart.FIELD)),
        LoadsPart.of(values.get(LoadsPart.FIELD)),
        HosesPart.of(values.get(HosesPart.FIELD)),
        values.find(HitchPart.FIELD).map(HitchPart::of),
        tolerances(values.get(TOLERANCE)));
  }

  static void check(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<FieldValues> rails = values.find(RailsPart.FIELD);
    if (rails.isPresent()) {
      RailsPart.check(rails.get(), problems, printer);
    }
    Optional<FieldValues> axle = values.find(AxlePart.FIELD);
    if (axle.isPresent()) {
      AxlePart.check(axle.get(), problems, printer);
    }
    Optional<FieldValues> tyre = values.find(TyrePart.FIELD);
    if (tyre.isPresent()) {
      TyrePart.check(tyre.get(), problems, printer);
    }
    Optional<FieldValues> weights = values.find(WeightsPart.FIELD);
    if (weights.isPresent()) {
      WeightsPart.check(weights.get(), problems, printer);
    }
    Optional<FieldValues> shaft = values.find(DrivelinePart.DRIVESHAFT);
    if (shaft.isPresent()) {
      DrivelinePart.checkShaft(shaft.get(), problems, printer);
    }
    ObstaclePart.check(values.get(ObstaclePart.FIELD), problems);
    checkLaunch(values, problems);
  }

  private static void checkLaunch(FieldValues values, Problems problems) {
    if (values.isWritten(DrivelinePart.DRIVE) || values.isWritten(TYRE_GRIP)) {
      return;
    }
    problems.error(
        values.locationOf(TYRE_GRIP),
        "neither drive nor tyre_grip",
        "at least one of drive and tyre_grip",
        "Add tyre_grip: 0.9, or drive with engine_torque, first_gear and final_drive.");
  }
}
