package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.Span;
import trammel.reading.tree.Problems;

/** The list {@code measured.obstacles}. */
final class ObstaclePart {
  private static final double LEAST_MM = inches(-150);
  private static final double GREATEST_MM = inches(300);

  private static final Field<String> NAME = Field.text("name", "what the shop calls it", 60);
  private static final Field<String> KIND = Field.choice("kind", "what it is", kindWords());

  private static final Field<Span> FORWARD =
      Field.span("forward", "extent forward", LEAST_MM, GREATEST_MM);
  private static final Field<Span> LEFT =
      Field.span("left", "extent to the left; negative to the right", LEAST_MM, GREATEST_MM);
  private static final Field<Span> UP = Field.span("up", "extent up", LEAST_MM, GREATEST_MM);
  private static final Field<FieldValues> BOX =
      Field.section("box", "the space it takes, as a box", List.of(FORWARD, LEFT, UP))
          .optional()
          .measuredFrom(
              "forward from the axle mark, left from the centre plane, up from the floor");

  private static final Field<Position> FROM =
      Field.point("from", "middle of one end", LEAST_MM, GREATEST_MM);
  private static final Field<Position> TO =
      Field.point("to", "middle of the other end", LEAST_MM, GREATEST_MM);
  private static final Field<Double> DIAMETER =
      Field.lengthMm("diameter", "outside diameter", inches(0.25), inches(60));
  private static final Field<FieldValues> CYLINDER =
      Field.section("cylinder", "the space it takes, as a cylinder", List.of(FROM, TO, DIAMETER))
          .optional()
          .measuredFrom(
              "forward from the axle mark, left from the centre plane, up from the floor");

  static final Field<List<FieldValues>> FIELD =
      Field.sections(
              "obstacles",
              "what the suspension must stay clear of; each with box or cylinder",
              List.of(NAME, KIND, BOX, CYLINDER))
          .withDefault(List.of());

  private ObstaclePart() {}

  private static List<String> kindWords() {
    List<String> words = new ArrayList<>();
    for (ObstacleKind kind : ObstacleKind.values()) {
      words.add(kind.word());
    }
    return words;
  }

  static List<Obstacle> of(List<FieldValues> all) {
    List<Obstacle> obstacles = new ArrayList<>(all.size());
    for (FieldValues values : all) {
      obstacles.add(new Obstacle(values.get(NAME), kind(values.get(KIND)), shape(values)));
    }
    return obstacles;
  }

  /** Names of exhausts, tanks and floors; what cannot be read is reported elsewhere. */
  static List<String> movable(List<FieldValues> all) {
    List<String> names = new ArrayList<>();
    for (FieldValues values : all) {
      boolean movable =
          values
              .find(KIND)
              .filter(
                  word ->
                      word.equals(ObstacleKind.EXHAUST.word())
                          || word.equals(ObstacleKind.FUEL_LINE.word())
                          || word.equals(ObstacleKind.TANK.word())
                          || word.equals(ObstacleKind.BED_FLOOR.word()))
              .isPresent();
      if (movable) {
        values.find(NAME).ifPresent(names::add);
      }
    }
    return names;
  }

  private static ObstacleKind kind(String word) {
    for (ObstacleKind kind : ObstacleKind.values()) {
      if (kind.word().equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(
        "The kind of obstacle (" + word + ") is not known; allowed: " + kindWords() + ".");
  }

  private static ObstacleShape shape(FieldValues values) {
    Optional<FieldValues> box = values.find(BOX);
    if (box.isPresent()) {
      return new ObstacleShape.Box(box.get().get(FORWARD), box.get().get(LEFT), box.get().get(UP));
    }
    FieldValues cylinder = values.get(CYLINDER);
    return new ObstacleShape.Cylinder(cylinder.get(FROM), cylinder.get(TO), cylinder.get(DIAMETER));
  }

  static void check(List<FieldValues> all, Problems problems) {
    List<String> names = new ArrayList<>();
    for (FieldValues values : all) {
      checkShape(values, problems);
      checkEnds(values, problems);
      Optional<String> name = values.find(NAME);
      if (name.isPresent() && names.contains(name.get())) {
        problems.error(
            values.locationOf(NAME),
            "'" + name.get() + "' a second time",
            "a name of its own for each obstacle",
            "Tell them apart, such as " + name.get() + " left.");
      }
      if (name.isPresent()) {
        names.add(name.get());
      }
    }
  }

  private static void checkShape(FieldValues values, Problems problems) {
    boolean box = values.isWritten(BOX);
    if (box != values.isWritten(CYLINDER)) {
      return;
    }
    problems.error(
        values.locationOf(BOX),
        box ? "box and also cylinder" : "neither box nor cylinder",
        "one of box and cylinder",
        box ? "Take one of them out." : "Add the space it takes, as a box or a cylinder.");
  }

  private static void checkEnds(FieldValues values, Problems problems) {
    Optional<FieldValues> cylinder = values.find(CYLINDER);
    if (cylinder.isEmpty()) {
      return;
    }
    Optional<Position> from = cylinder.get().find(FROM);
    Optional<Position> to = cylinder.get().find(TO);
    if (from.isPresent() && to.isPresent() && from.get().isAt(to.get())) {
      problems.error(
          cylinder.get().locationOf(TO),
          "the same place as from",
          "the other end of the cylinder",
          "Measure the middle of both ends.");
    }
  }
}
