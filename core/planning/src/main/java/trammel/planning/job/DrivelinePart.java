package trammel.planning.job;

import static trammel.planning.job.ShopUnits.degrees;
import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.poundFeet;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;

/**
 * The groups {@code measured.transmission}, {@code measured.driveshaft}, {@code measured.drive}.
 */
final class DrivelinePart {
  /** A converter of a road vehicle at stall: common practice, no source. */
  private static final double USUAL_STALL_RATIO = 2.0;

  private static final Field<MeasuredPosition> JOINT =
      Field.measuredPoint("joint", "centre of the front universal joint", inches(-40), inches(240))
          .measuredFrom(
              "forward from the axle mark, left from the centre plane, up from the floor");
  private static final Field<MeasuredAngle> ANGLE =
      Field.measuredAngle(
              "angle",
              "elevation of the output axis looking forward: positive with the tail down",
              degrees(-15),
              degrees(15))
          .measuredFrom("on a machined face of the transmission, against level or frame as stated");

  static final Field<FieldValues> TRANSMISSION =
      Field.section("transmission", "where the driveshaft starts", List.of(JOINT, ANGLE));

  private static final Field<Double> SHAFT_DIAMETER =
      Field.lengthMm("tube_diameter", "outside diameter of the shaft's tube", inches(1), inches(7));
  private static final Field<Double> SHAFT_WALL =
      Field.lengthMm("tube_wall", "wall of the shaft's tube", inches(0.03), inches(0.5));
  private static final Field<Double> SLIP_ENGAGEMENT =
      Field.lengthMm(
              "slip_engagement", "length of spline engaged as measured", inches(0.25), inches(12))
          .measuredFrom("from the end of the spline to the end of the slip yoke");
  private static final Field<Double> SLIP_ROOM =
      Field.lengthMm("slip_room", "how far the slip yoke can still move in", 0, inches(12))
          .measuredFrom("from where it sits to where it stops");

  private static final Field<MeasuredPosition> CENTRE_JOINT =
      Field.measuredPoint(
              "centre_joint",
              "centre of the joint behind the centre bearing, for a shaft of two pieces",
              inches(-40),
              inches(240))
          .measuredFrom("forward from the axle mark, left from the centre plane, up from the floor")
          .optional();

  static final Field<FieldValues> DRIVESHAFT =
      Field.section(
              "driveshaft",
              "the driveshaft, if it is kept; of two pieces, both of one tube",
              List.of(SHAFT_DIAMETER, SHAFT_WALL, SLIP_ENGAGEMENT, SLIP_ROOM, CENTRE_JOINT))
          .optional();

  private static final Field<Double> ENGINE_TORQUE =
      Field.torqueNmm("engine_torque", "greatest engine torque", poundFeet(20), poundFeet(3000));
  private static final Field<Double> FIRST_GEAR =
      Field.number("first_gear", "ratio of the lowest gear used to launch", 0.5, 25);
  private static final Field<Double> STALL_RATIO =
      Field.number(
              "stall_ratio",
              "what the torque converter multiplies torque by at stall; 1 for a clutch",
              1,
              4)
          .withDefault(USUAL_STALL_RATIO);
  private static final Field<Double> LOW_RANGE =
      Field.number("low_range", "ratio of the transfer case in low range; 1 without one", 1, 6)
          .withDefault(1.0);
  private static final Field<Double> FINAL_DRIVE =
      Field.number("final_drive", "ratio of the axle", 1.5, 10);

  static final Field<FieldValues> DRIVE =
      Field.section(
              "drive",
              "what the engine can put on the axle; give the drive, the grip of the tyres, or both",
              List.of(ENGINE_TORQUE, FIRST_GEAR, STALL_RATIO, LOW_RANGE, FINAL_DRIVE))
          .optional();

  private DrivelinePart() {}

  static Transmission transmission(FieldValues values) {
    return new Transmission(values.get(JOINT), values.get(ANGLE));
  }

  static Driveshaft driveshaft(FieldValues values) {
    return new Driveshaft(
        values.get(SHAFT_DIAMETER),
        values.get(SHAFT_WALL),
        values.get(SLIP_ENGAGEMENT),
        values.get(SLIP_ROOM),
        values.find(CENTRE_JOINT));
  }

  static EngineDrive engine(FieldValues values) {
    return new EngineDrive(
        values.get(ENGINE_TORQUE),
        values.get(FIRST_GEAR),
        values.get(STALL_RATIO),
        values.get(LOW_RANGE),
        values.get(FINAL_DRIVE));
  }

  static void checkShaft(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Double> diameterMm = values.find(SHAFT_DIAMETER);
    Optional<Double> wallMm = values.find(SHAFT_WALL);
    if (diameterMm.isEmpty() || wallMm.isEmpty() || 2 * wallMm.get() < diameterMm.get()) {
      return;
    }
    problems.error(
        values.locationOf(SHAFT_WALL),
        printer.decimalLength(wallMm.get(), 3),
        "less than half the tube's diameter, " + printer.length(diameterMm.get() / 2),
        "Measure tube_wall and tube_diameter again.");
  }
}
