package trammel.planning.arrange;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;

/**
 * A field that the user lets vary, with its range ({@code 3 in..4 in}) or its values ({@code
 * inboard,outboard}).
 *
 * @param path the field
 * @param range as it was given
 * @param step reads values
 */
record VaryRange(String path, String range, ShopStep step) {
  private static final String TO = "..";

  /**
   * The dial.
   *
   * @throws BadInputException if it is neither a range of lengths or angles nor values to choose
   *     from
   */
  Dial dial() {
    int to = range.indexOf(TO);
    if (to < 0) {
      List<String> choices = Arrays.stream(range.split(",")).map(String::strip).toList();
      if (choices.stream().anyMatch(String::isBlank)) {
        throw refused();
      }
      return new Dial(path, Dial.Kind.CHOICE, 0, 0, OptionalDouble.empty(), choices);
    }
    String least = range.substring(0, to).strip();
    String most = range.substring(to + TO.length()).strip();
    Dial.Kind kind = most.contains("deg") ? Dial.Kind.ANGLE : Dial.Kind.LENGTH;
    try {
      double from = step.value(kind, least);
      double upTo = step.value(kind, most);
      if (from > upTo) {
        throw refused();
      }
      return new Dial(path, kind, from, upTo, OptionalDouble.empty(), List.of());
    } catch (QuantityFormatException unreadable) {
      throw refused();
    }
  }

  private BadInputException refused() {
    return new BadInputException(
        List.of(
            Problem.error(
                new Location("search", 0, 0, path),
                "'" + range + "'",
                "a range, the lesser value first, or words with commas between them",
                "Write for example 3 in..4 in, 1 deg..3 deg or inboard,outboard.")));
  }
}
