package trammel.brackets.work;

import java.util.List;
import trammel.assembly.Held;
import trammel.engine.quantity.Given;

/**
 * One bolt in its place.
 *
 * @param held where it goes: the origin is where the grip begins under the head's washer, z points
 *     to the nut
 * @param through ids of the parts that it clamps, from the head on
 */
public record Bolting(Held held, List<String> through) {
  public Bolting {
    Given.present("place of a bolt", held, "Say where it goes.");
    through = List.copyOf(through);
    Given.count("parts that a bolt clamps", through.size(), 1, 20, "Give their ids.");
  }
}
