package trammel.brackets.work;

import java.util.List;
import trammel.assembly.Place;
import trammel.assembly.Solid;
import trammel.engine.quantity.Given;

/**
 * One bought part in its place.
 *
 * @param id its own name on the vehicle, readable
 * @param carrier the body that moves it
 * @param place its place at ride
 * @param solid its form, as simple as it may be
 * @param holdsTo ids of the parts that it is screwed into, pressed into or stands on
 */
public record BoughtPiece(
    String id, String carrier, Place place, Solid solid, List<String> holdsTo) {
  public BoughtPiece {
    Given.text("id of a bought part", id, "Give it a name of its own.");
    Given.text("carrier of '" + id + "'", carrier, "Say which body moves it.");
    Given.present("place of '" + id + "'", place, "Say where it goes.");
    Given.present("form of '" + id + "'", solid, "Give a simple one.");
    holdsTo = List.copyOf(holdsTo);
  }
}
