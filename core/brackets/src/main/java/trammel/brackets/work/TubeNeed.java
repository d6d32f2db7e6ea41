package trammel.brackets.work;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trammel.assembly.CopedTube;
import trammel.assembly.Held;
import trammel.assembly.Solid;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;
import trammel.trade.tubes.Cope;

/**
 * A length of a section that the job needs cut.
 *
 * @param name the part's name, as in the parts list and drawings
 * @param barKey key of the section in the catalog
 * @param cutLengthMm length to saw (mm), above 0
 * @param solid its form with the ends as they are cut, along its own z axis
 * @param places where each of them stands, as many as are needed
 * @param ends what happens to its ends, such as {@code square, both ends threaded}
 * @param why which link or crossmember asks for it and how its length comes about
 */
public record TubeNeed(
    String name,
    String barKey,
    double cutLengthMm,
    Solid solid,
    List<Held> places,
    Phrase ends,
    Phrase why) {
  public TubeNeed {
    Given.text("name of a tube", name, "Say which part it is.");
    Given.text("section of tube '" + name + "'", barKey, "Give its catalog key.");
    Given.positive(
        "cut length of '" + name + "' in mm", cutLengthMm, 20_000, "", "Check its ends.");
    Given.present("form of tube '" + name + "'", solid, "Give it with its ends.");
    places = List.copyOf(places);
    Given.count("places of '" + name + "'", places.size(), 1, 1000, "Say where it goes.");
    Given.text("ends of '" + name + "'", ends, "Say square, coped or mitred.");
    Given.text("reason for tube '" + name + "'", why, "Say what asks for it.");
  }

  /** The same under another name. */
  public TubeNeed named(String otherName) {
    return new TubeNeed(otherName, barKey, cutLengthMm, solid, places, ends, why);
  }

  /** How many are cut. */
  public int quantity() {
    return places.size();
  }

  /** What its coped ends are cut to, each with a wrap-round template. */
  public List<Cope> copes() {
    return solid instanceof CopedTube tube
        ? Stream.of(tube.start(), tube.end()).flatMap(Optional::stream).toList()
        : List.of();
  }
}
