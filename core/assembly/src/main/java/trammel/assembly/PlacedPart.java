package trammel.assembly;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * One part of the finished vehicle in its place.
 *
 * @param id its own name, found once in the assembly and readable
 * @param name the name under which the lists have it
 * @param kind plate, tube, bought or vehicle
 * @param carrier the body that carries it: the frame, the axle, a bar or a further body
 * @param place where it stands at ride
 * @param solid its form
 * @param massKg its mass (kg): steel by its volume, bought parts by the catalog, 0 where the
 *     vehicle's own weight has it
 * @param why which point, joint or obstacle asks for it
 */
public record PlacedPart(
    String id,
    String name,
    PartKind kind,
    String carrier,
    Place place,
    Solid solid,
    double massKg,
    Phrase why) {
  public PlacedPart {
    Given.text("id of a placed part", id, "Give it a name of its own.");
    Given.text("name of the part '" + id + "'", name, "Give the name that the lists use.");
    Objects.requireNonNull(kind, "kind");
    Given.text("carrier of the part '" + id + "'", carrier, "Say which body moves it.");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(solid, "solid");
    Given.within("mass of the part '" + id + "' in kg", massKg, 0, 10_000, "", "0 if not added.");
    Given.text("reason for the part '" + id + "'", why, "Say what asks for it.");
  }

  /** Middle of its volume at ride, in vehicle axes (mm). */
  public Point3 centre() {
    return place.apply(solid.centre());
  }
}
