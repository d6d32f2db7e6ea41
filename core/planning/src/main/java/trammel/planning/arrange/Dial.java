package trammel.planning.arrange;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A field of the job file that a search may turn.
 *
 * @param path the field
 * @param kind what its values are
 * @param least the least value, in mm or rad where it is a length or an angle
 * @param most the greatest value
 * @param usual the value where the job sets none; empty where the vehicle decides
 * @param choices the words to choose from, of a choice
 */
record Dial(
    String path, Kind kind, double least, double most, OptionalDouble usual, List<String> choices) {
  enum Kind {
    LENGTH,
    ANGLE,
    NUMBER,
    CHOICE
  }

  Dial {
    choices = List.copyOf(choices);
  }

  /** The last word of its path, by which the options that plugins share are known. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  boolean isChoice() {
    return kind == Kind.CHOICE;
  }

  /** The same with another range. */
  Dial within(double from, double to) {
    return new Dial(path, kind, from, to, usual, choices);
  }
}
