package trammel.planning.job;

import static trammel.planning.job.ShopUnits.degrees;
import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.milesPerHour;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.PartialPosition;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/** The part {@code chosen} of a job file. */
final class ChosenPart {
  private static final double LEAST_MM = inches(-150);
  private static final double GREATEST_MM = inches(200);

  private static final Field<String> LINKAGE =
      Field.text("linkage", "id of the linkage, as listed by trammel layouts", 60);
  private static final Field<String> SPRING =
      Field.text("spring", "id of the spring, as listed by trammel layouts", 60);
  private static final Field<ObjectNode> LINKAGE_OPTIONS =
      Field.options("linkage_options", "options of the linkage, as listed by trammel layouts")
          .optional();
  private static final Field<ObjectNode> SPRING_OPTIONS =
      Field.options("spring_options", "options of the spring, as listed by trammel layouts")
          .optional();

  private static final Field<Map<String, ObjectNode>> ADDITIONS =
      Field.namedOptions(
              "additions",
              "what is added to linkage and springs, by its id as listed by trammel layouts, with"
                  + " its options")
          .optional();

  private static final Field<Double> RAIL_UNDERSIDE =
      Field.lengthMm(
              "rail_underside_at_axle", "ride height wanted at the axle", inches(2), inches(60))
          .measuredFrom("up from the ground to the rail's underside, at the axle");
  private static final Field<Double> BUMP =
      Field.lengthMm("bump", "travel wanted upward from ride", inches(0.5), inches(14));
  private static final Field<Double> DROOP =
      Field.lengthMm("droop", "travel wanted downward from ride", inches(0.5), inches(14));
  private static final Field<FieldValues> RIDE =
      Field.section(
          "ride",
          "where the body is to sit and how far the axle is to move",
          List.of(RAIL_UNDERSIDE, BUMP, DROOP));

  private static final Field<Double> PINION_ANGLE =
      Field.levelAngleRad(
              "pinion_angle",
              "pinion angle wanted at ride, nose up positive",
              degrees(-15),
              degrees(20))
          .optional();

  private static final Field<Double> TRANSMISSION_ANGLE =
      Field.levelAngleRad(
              "transmission_angle",
              "angle to which the transmission's output is shimmed at ride, front higher positive;"
                  + " left out, it stays as measured, unless pinion_angle is left out too and a"
                  + " joint could not stand it: then both are turned by no more than it takes",
              degrees(-10),
              degrees(15))
          .optional();
  private static final Field<Double> SHAFT_LONGER =
      Field.lengthMm(
              "shaft_longer",
              "how much longer the driveshaft is made than it is, negative for shorter",
              inches(-12),
              inches(12))
          .optional();
  private static final Field<String> SHAFT_TUBE =
      Field.text(
              "shaft_tube",
              "driveshaft that is made anew, by its name in shaft_tubes of the catalog; left out,"
                  + " the shaft stays as measured, unless it would whirl below the top speed: then"
                  + " it is the slenderest that does not",
              60)
          .optional();
  private static final Field<Double> WHEELBASE =
      Field.lengthMm(
              "wheelbase",
              "wheelbase to which the axle is set on both sides; left out, each side as measured",
              inches(60),
              inches(280))
          .optional();
  private static final Field<List<String>> MOVED_AWAY =
      Field.names(
              "moved_away",
              "names of measured exhausts, tanks and floors that are moved or relieved before the"
                  + " axle goes in, so that the clearances leave them out",
              60)
          .optional();

  private static final Field<String> NOTCH =
      Field.choice(
              "notch",
              "side plates of a notch that the travel asks for: flush with the rail's top, or"
                  + " raised above it; left out, flush where that keeps the rail's section from a"
                  + " STOP",
              NotchKind.words())
          .optional();

  private static final Field<Double> BOXED_BEHIND =
      Field.lengthMm("behind", "how far behind the axle", 0, BoxedStretch.MOST_MM)
          .measuredFrom("back from the axle mark, along the rail");
  private static final Field<Double> BOXED_AHEAD =
      Field.lengthMm("ahead", "how far ahead of the axle", inches(1), BoxedStretch.MOST_MM)
          .measuredFrom("forward from the axle mark, along the rail");
  private static final Field<FieldValues> BOXING =
      Field.section(
              "boxing",
              "stretch over which both open rails are closed without a gap, such as up to the"
                  + " frame's own crossmembers; left out, they are closed behind brackets and"
                  + " mounts only",
              List.of(BOXED_BEHIND, BOXED_AHEAD))
          .optional();

  private static final Field<Double> TOP_SPEED =
      Field.speedMPerS(
              "top_speed",
              "road speed up to which driveshaft and joints are judged; left out, that of the"
                  + " shop's catalog",
              milesPerHour(25),
              milesPerHour(220))
          .optional();

  private static final Field<PartialPosition> FRAME =
      Field.partialPoint("frame", "the end on the frame", LEAST_MM, GREATEST_MM).optional();
  private static final Field<PartialPosition> AXLE =
      Field.partialPoint("axle", "the end on the axle", LEAST_MM, GREATEST_MM).optional();
  private static final Field<Map<String, FieldValues>> PICKUPS =
      Field.namedSections(
              "pickups",
              "distances that the vehicle dictates, by the name of the link",
              List.of(FRAME, AXLE))
          .optional()
          .measuredFrom("at ride, from level: forward of the axle, left, up from the ground");

  static final Field<FieldValues> FIELD =
      Field.section(
          "chosen",
          "linkage, spring, additions, ride height and overrides",
          List.of(
              LINKAGE,
              SPRING,
              LINKAGE_OPTIONS,
              SPRING_OPTIONS,
              ADDITIONS,
              RIDE,
              PINION_ANGLE,
              TRANSMISSION_ANGLE,
              SHAFT_LONGER,
              SHAFT_TUBE,
              WHEELBASE,
              MOVED_AWAY,
              NOTCH,
              BOXING,
              TOP_SPEED,
              PICKUPS));

  private ChosenPart() {}

  static Chosen of(FieldValues values) {
    FieldValues ride = values.get(RIDE);
    return new Chosen(
        values.get(LINKAGE),
        values.get(SPRING),
        options(values, LINKAGE_OPTIONS),
        options(values, SPRING_OPTIONS),
        values.find(ADDITIONS).orElse(Map.of()),
        new Ride(ride.get(RAIL_UNDERSIDE), ride.get(BUMP), ride.get(DROOP)),
        values.find(PINION_ANGLE),
        values.find(TRANSMISSION_ANGLE),
        values.find(SHAFT_LONGER).orElse(0.0),
        values.find(SHAFT_TUBE),
        values.find(WHEELBASE),
        values.find(MOVED_AWAY).orElse(List.of()),
        new RailWork(
            values.find(NOTCH).map(NotchKind::ofWord), values.find(BOXING).map(ChosenPart::boxed)),
        values.find(TOP_SPEED),
        pickups(values.find(PICKUPS).orElse(Map.of())));
  }

  private static BoxedStretch boxed(FieldValues values) {
    return new BoxedStretch(values.get(BOXED_BEHIND), values.get(BOXED_AHEAD));
  }

  private static ObjectNode options(FieldValues values, Field<ObjectNode> field) {
    Optional<ObjectNode> given = values.find(field);
    return given.isPresent() ? given.get() : ObjectNode.empty(values.locationOf(field));
  }

  private static Map<String, PickupOverride> pickups(Map<String, FieldValues> all) {
    Map<String, PickupOverride> pickups = new LinkedHashMap<>();
    for (Map.Entry<String, FieldValues> one : all.entrySet()) {
      FieldValues values = one.getValue();
      pickups.put(
          one.getKey(),
          new PickupOverride(end(values, FRAME), end(values, AXLE), values.location()));
    }
    return pickups;
  }

  private static PartialPosition end(FieldValues values, Field<PartialPosition> field) {
    Optional<PartialPosition> given = values.find(field);
    return given.isPresent() ? given.get() : PartialPosition.NONE;
  }

  static void check(FieldValues values, Problems problems) {
    for (FieldValues one : values.find(PICKUPS).orElse(Map.of()).values()) {
      boolean written = one.isWritten(FRAME) || one.isWritten(AXLE);
      if (!written || isEmpty(one, FRAME) || isEmpty(one, AXLE)) {
        Location where = one.location();
        problems.error(
            where,
            "an override that changes nothing",
            "frame or axle, each with some of forward, left and up",
            "Write for example frame: {up: 12 1/4 in}, or take the name out.");
      }
    }
  }

  /** Reports what is chosen and does not go with what was measured. */
  static void checkAgainst(FieldValues measured, FieldValues values, Problems problems) {
    List<String> movable = MeasuredPart.movableObstacles(measured);
    for (String name : values.find(MOVED_AWAY).orElse(List.of())) {
      if (!movable.contains(name)) {
        problems.error(
            values.locationOf(MOVED_AWAY),
            "'" + name + "'",
            movable.isEmpty()
                ? "no name: no exhaust, tank or floor is measured"
                : "an exhaust, tank or floor that is measured: " + String.join(", ", movable),
            "Write its name as it stands in measured.obstacles, or take it out.");
      }
    }
    if (values.find(BOXING).isPresent() && MeasuredPart.hasBoxedRails(measured)) {
      problems.error(
          values.locationOf(BOXING),
          "boxing of rails that are closed boxes already",
          "no boxing where measured.rails.shape is box",
          "Take boxing out, or set the shape to channel if the rails are open.");
    }
  }

  private static boolean isEmpty(FieldValues values, Field<PartialPosition> field) {
    Optional<PartialPosition> given = values.find(field);
    return given.isPresent() && given.get().isEmpty();
  }
}
