package trammel.planning.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldReader;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;

/**
 * What an answer might be on such a vehicle: what was answered for its other side, else the figure
 * of whichever of a few invented vehicles comes nearest to the answers so far.
 */
public final class Examples {
  private static final String JOB = "job.";
  private static final List<String> KNOWN = List.of("pickup", "car", "one-ton");

  /** An answer that another one mostly equals, by the end of its path. */
  private static final Map<String, String> SAME =
      Map.of(
          "wheelbase.right", "wheelbase.left",
          "front_right", "front_left",
          "rear_right", "rear_left",
          "underside_at_front_mounts", "underside_at_axle",
          "chosen.wheelbase", "measured.wheelbase.left");

  /** What tells vehicles apart. */
  private static final List<String> TELLING =
      List.of(
          "measured.wheelbase.left",
          "measured.rails.outside_at_axle",
          "measured.rails.depth",
          "measured.axle.tube_diameter",
          "measured.axle.flange_to_flange",
          "measured.tyre.loaded_radius",
          "measured.weights.front_left",
          "measured.weights.rear_left");

  private final List<Vehicle> vehicles = new ArrayList<>();

  /** Reads the invented vehicles. */
  public Examples() {
    KNOWN.forEach(name -> vehicles.add(Vehicle.read(name)));
  }

  /**
   * A vehicle to take examples from.
   *
   * @param name what it is, in words
   * @param words words of which one may stand in {@code job.vehicle}
   * @param answers its figures
   */
  private record Vehicle(String name, List<String> words, Answers answers) {
    /** Its figure; of things in the way that of the first which has it. */
    Optional<String> figure(Question question) {
      if (!question.isOfObstacle()) {
        return answers.at(question.path());
      }
      String rest = ObstacleQuestions.rest(question.path());
      return answers.questions().stream()
          .filter(one -> one.isOfObstacle() && ObstacleQuestions.rest(one.path()).equals(rest))
          .flatMap(one -> answers.of(one).stream())
          .findFirst();
    }

    static Vehicle read(String file) {
      String resource = file + ".yaml";
      try (InputStream in = Examples.class.getResourceAsStream(resource)) {
        ObjectNode root =
            DocumentReader.read(resource, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        String name = Questions.at("job.vehicle").orElseThrow().answer(root).orElseThrow();
        String words = Questions.at("job.note").orElseThrow().answer(root).orElseThrow();
        return new Vehicle(name, List.of(words.split(" ")), Answers.of(root));
      } catch (IOException refused) {
        throw new UncheckedIOException(refused);
      }
    }
  }

  /** An example for a question, in the units of the answers, with the vehicle that it is of. */
  public Optional<String> of(Question question, Answers answers) {
    switch (question.field().kind()) {
      case TEXT, CHOICE, FLAG -> {
        // Any words will do, or the words are given already.
        return Optional.empty();
      }
      default -> {}
    }
    Optional<String> other = otherSide(question.path(), answers);
    if (other.isPresent()) {
      return other;
    }
    Vehicle vehicle = nearest(answers);
    return question.path().startsWith(JOB)
        ? Optional.of(fromField(question, answers.units()))
        : vehicle
            .figure(question)
            .map(text -> inUnits(question, text, answers.units()) + " (" + vehicle.name + ")")
            .or(() -> Optional.of(fromField(question, answers.units())));
  }

  private static Optional<String> otherSide(String path, Answers answers) {
    for (Map.Entry<String, String> same : SAME.entrySet()) {
      if (path.endsWith(same.getKey())) {
        String other =
            same.getValue().startsWith("measured.")
                ? same.getValue()
                : path.substring(0, path.length() - same.getKey().length()) + same.getValue();
        return answers.at(other).map(text -> text.split(";")[0].strip());
      }
    }
    return Optional.empty();
  }

  private Vehicle nearest(Answers answers) {
    Vehicle nearest = vehicles.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Vehicle vehicle : vehicles) {
      double distance = distance(vehicle, answers);
      if (distance < least) {
        least = distance;
        nearest = vehicle;
      }
    }
    return nearest;
  }

  /** Mean ratio between the figures, as a logarithm; before there are any, words must do. */
  private static double distance(Vehicle vehicle, Answers answers) {
    double sum = 0;
    int compared = 0;
    for (String path : TELLING) {
      OptionalDouble given = number(path, answers);
      OptionalDouble its = number(path, vehicle.answers);
      if (given.isPresent() && its.isPresent()) {
        sum += Math.abs(Math.log(given.getAsDouble() / its.getAsDouble()));
        compared++;
      }
    }
    if (compared > 0) {
      return sum / compared;
    }
    String told = answers.at("job.vehicle").orElse("").toLowerCase(Locale.ROOT);
    return vehicle.words.stream().anyMatch(told::contains) ? 0 : 1;
  }

  private static OptionalDouble number(String path, Answers answers) {
    Question question = Questions.at(path).orElseThrow();
    Optional<String> text = answers.at(path);
    if (text.isEmpty() || question.problem(text.get(), answers.units()).isPresent()) {
      return OptionalDouble.empty();
    }
    Object value = value(question, text.get(), answers.units()).get(question.field());
    return value instanceof Measurement measured
        ? OptionalDouble.of(measured.mean())
        : OptionalDouble.of((Double) value);
  }

  private static FieldValues value(Question question, String answer, UnitSystem units) {
    ObjectNode group =
        ObjectNode.empty(new Location("example", 1, 1, ""))
            .with(question.field().key(), question.node(answer));
    return FieldReader.readAll(group, List.of(question.field()), units);
  }

  /** The vehicles' figures are in inches and pounds. */
  private static String inUnits(Question question, String text, UnitSystem units) {
    return units == UnitSystem.US
        ? text.split(";")[0].strip()
        : typed(question, printed(question.field(), value(question, text, UnitSystem.US), units));
  }

  private static <T> String printed(Field<T> field, FieldValues values, UnitSystem units) {
    return field.print(values.get(field), units);
  }

  private static String fromField(Question question, UnitSystem units) {
    return typed(question, question.field().example(units));
  }

  /** As it would be typed: without the brackets of a file. */
  private static String typed(Question question, String printed) {
    try {
      DocumentNode node =
          DocumentReader.readValue(new Location("example", 1, 1, question.path()), printed);
      return question.text(node).orElse(printed);
    } catch (BadInputException unread) {
      return printed;
    }
  }
}
