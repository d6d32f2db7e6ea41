package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.Problems;

/** The group {@code measured.rails}. */
final class RailsPart {
  /** Two widths and two flanges, each off by a tape's sixteenth, come to a quarter of an inch. */
  private static final double WIDTHS_AGREE_MM = inches(0.25);

  private static final Field<String> SHAPE =
      Field.choice("shape", "section of the rail", List.of("channel", "box"));
  private static final Field<Measurement> OUTSIDE_AT_AXLE =
      Field.measuredLength("outside_at_axle", "width over both rails", inches(20), inches(72))
          .measuredFrom("outside face to outside face, at the axle mark");
  private static final Field<Measurement> BETWEEN_AT_AXLE =
      Field.measuredLength("between_at_axle", "width between the rails", inches(12), inches(70))
          .measuredFrom("inside edge to inside edge, at the axle mark");
  private static final Field<Measurement> OUTSIDE_AT_FRONT_MOUNTS =
      Field.measuredLength(
              "outside_at_front_mounts", "width over both rails", inches(20), inches(72))
          .measuredFrom("outside face to outside face, at the front-mount station");
  private static final Field<Measurement> BETWEEN_AT_FRONT_MOUNTS =
      Field.measuredLength(
              "between_at_front_mounts", "width between the rails", inches(12), inches(70))
          .measuredFrom("inside edge to inside edge, at the front-mount station");
  private static final Field<Measurement> DEPTH =
      Field.measuredLength("depth", "height of the rail's section", inches(2), inches(14))
          .measuredFrom("underside to top, at the axle mark");
  private static final Field<Measurement> FLANGE =
      Field.measuredLength("flange", "width of the rail's section", inches(1), inches(8))
          .measuredFrom("outside face to inside edge, at the axle mark");
  private static final Field<Double> WALL =
      Field.lengthMm("wall", "thickness of the rail's material", inches(0.05), inches(0.75))
          .measuredFrom("calliper, on clean metal");
  private static final Field<Measurement> UNDERSIDE_AT_AXLE =
      Field.measuredLength("underside_at_axle", "height of the rail", inches(3), inches(72))
          .measuredFrom("up from the level floor to the rail's underside, at the axle mark");
  private static final Field<Measurement> UNDERSIDE_AT_FRONT_MOUNTS =
      Field.measuredLength("underside_at_front_mounts", "height of the rail", inches(3), inches(72))
          .measuredFrom("up from the level floor to the underside, at the front-mount station");
  private static final Field<Measurement> FRONT_MOUNTS_FORWARD =
      Field.measuredLength(
              "front_mounts_forward",
              "how far the front-mount station is ahead of the axle",
              inches(8),
              inches(72))
          .measuredFrom("forward from the axle mark on the rail plumbed to the floor");

  private static final Field<String> STEEL =
      Field.choice(
              "steel",
              "what the rails are made of, by the maker's data, the frame's label or a hardness"
                  + " test",
              RailSteel.words())
          .optional();
  private static final Field<Double> RUST_DEPTH =
      Field.lengthMm("rust_depth", "how deep rust has eaten into the rail's wall", 0, inches(0.75))
          .measuredFrom("the deepest pit near the work, after cleaning; 0 for none")
          .optional();
  private static final Field<Double> FLANGE_HOLE =
      Field.lengthMm("flange_hole", "largest hole in a flange of the rail", 0, inches(8))
          .measuredFrom("across the flange, near the work; 0 for none")
          .optional();

  private static final Field<Double> CROSSMEMBER_AHEAD =
      Field.lengthMm(
              "crossmember_ahead",
              "how far the frame's own crossmember next ahead of the axle stands from it",
              inches(6),
              inches(120))
          .measuredFrom("forward from the axle mark to the crossmember's middle")
          .optional();
  private static final Field<Double> CROSSMEMBER_BEHIND =
      Field.lengthMm(
              "crossmember_behind",
              "how far the frame's own crossmember next behind the axle stands from it",
              inches(6),
              inches(120))
          .measuredFrom("rearward from the axle mark to the crossmember's middle")
          .optional();

  static final Field<FieldValues> FIELD =
      Field.section(
          "rails",
          "the frame rails, as they sit on the stands",
          List.of(
              SHAPE,
              OUTSIDE_AT_AXLE,
              BETWEEN_AT_AXLE,
              OUTSIDE_AT_FRONT_MOUNTS,
              BETWEEN_AT_FRONT_MOUNTS,
              DEPTH,
              FLANGE,
              WALL,
              STEEL,
              RUST_DEPTH,
              FLANGE_HOLE,
              CROSSMEMBER_AHEAD,
              CROSSMEMBER_BEHIND,
              UNDERSIDE_AT_AXLE,
              UNDERSIDE_AT_FRONT_MOUNTS,
              FRONT_MOUNTS_FORWARD));

  private RailsPart() {}

  static boolean isBoxed(FieldValues values) {
    return values.get(SHAPE).equals("box");
  }

  static Rails of(FieldValues values) {
    return new Rails(
        isBoxed(values) ? RailShape.BOX : RailShape.CHANNEL,
        values.get(OUTSIDE_AT_AXLE),
        values.get(BETWEEN_AT_AXLE),
        values.get(OUTSIDE_AT_FRONT_MOUNTS),
        values.get(BETWEEN_AT_FRONT_MOUNTS),
        values.get(DEPTH),
        values.get(FLANGE),
        values.get(WALL),
        values.get(UNDERSIDE_AT_AXLE),
        values.get(UNDERSIDE_AT_FRONT_MOUNTS),
        values.get(FRONT_MOUNTS_FORWARD),
        values.find(STEEL).flatMap(RailSteel::ofWord),
        values.find(RUST_DEPTH),
        values.find(FLANGE_HOLE),
        values.find(CROSSMEMBER_AHEAD),
        values.find(CROSSMEMBER_BEHIND));
  }

  static void check(FieldValues values, Problems problems, QuantityPrinter printer) {
    checkWidths(values, OUTSIDE_AT_AXLE, BETWEEN_AT_AXLE, problems, printer);
    checkWidths(values, OUTSIDE_AT_FRONT_MOUNTS, BETWEEN_AT_FRONT_MOUNTS, problems, printer);
    checkWall(values, problems, printer);
  }

  private static void checkWidths(
      FieldValues values,
      Field<Measurement> outside,
      Field<Measurement> between,
      Problems problems,
      QuantityPrinter printer) {
    Optional<Measurement> over = values.find(outside);
    Optional<Measurement> inner = values.find(between);
    Optional<Measurement> flange = values.find(FLANGE);
    if (over.isEmpty() || inner.isEmpty() || flange.isEmpty()) {
      return;
    }
    double differenceMm = over.get().meanMm() - inner.get().meanMm();
    double flangesMm = 2 * flange.get().meanMm();
    if (Math.abs(differenceMm - flangesMm) <= WIDTHS_AGREE_MM * (1 + 1e-9)) {
      return;
    }
    problems.error(
        values.locationOf(outside),
        printer.length(over.get().meanMm())
            + " outside less "
            + printer.length(inner.get().meanMm())
            + " between, which leaves "
            + printer.length(differenceMm)
            + " for two flanges",
        "twice the flange, "
            + printer.length(flangesMm)
            + ", within "
            + printer.length(WIDTHS_AGREE_MM),
        "Measure " + outside.key() + ", " + between.key() + " and flange again.");
  }

  private static void checkWall(FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<Double> wallMm = values.find(WALL);
    Optional<Measurement> flange = values.find(FLANGE);
    if (wallMm.isEmpty() || flange.isEmpty() || 2 * wallMm.get() < flange.get().meanMm()) {
      return;
    }
    problems.error(
        values.locationOf(WALL),
        printer.decimalLength(wallMm.get(), 3),
        "less than half the flange, " + printer.length(flange.get().meanMm() / 2),
        "Measure wall and flange again.");
  }
}
