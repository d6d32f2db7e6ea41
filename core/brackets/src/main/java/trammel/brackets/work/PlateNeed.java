package trammel.brackets.work;

import java.util.List;
import java.util.Optional;
import trammel.assembly.Held;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Plate;

/**
 * A plate that the job needs cut.
 *
 * @param plate the plate with its outline
 * @param plateKey key of the plate's material in the catalog
 * @param places where each of them stands, as many as are needed; the outline lies in the x-y plane
 *     of its place and the thickness goes along z
 * @param why which point or joint asks for it
 * @param stays true when it goes on the vehicle and stays there, false for a tool of the fit-up
 * @param formed its form once it is rolled or bent; empty for a plate that stays flat
 */
public record PlateNeed(
    Plate plate,
    String plateKey,
    List<Held> places,
    Phrase why,
    boolean stays,
    Optional<Solid> formed) {
  public PlateNeed {
    Given.present("plate", plate, "Draw it.");
    Given.text("material of plate '" + plate.name() + "'", plateKey, "Give its catalog key.");
    places = List.copyOf(places);
    Given.count("places of '" + plate.name() + "'", places.size(), 1, 1000, "Say where it goes.");
    Given.text("reason for plate '" + plate.name() + "'", why, "Say what asks for it.");
    Given.present("form of plate '" + plate.name() + "'", formed, "Empty for a flat one.");
  }

  /** Flat plates that stay on the vehicle. */
  public PlateNeed(Plate plate, String plateKey, List<Held> places, Phrase why) {
    this(plate, plateKey, places, why, true, Optional.empty());
  }

  /** The same as a tool of the fit-up, taken off again. */
  public PlateNeed asTool() {
    return new PlateNeed(plate, plateKey, places, why, false, formed);
  }

  /** The same, rolled or bent before it is fitted. */
  public PlateNeed formedTo(Solid form) {
    return new PlateNeed(plate, plateKey, places, why, stays, Optional.of(form));
  }

  /** The same under another name. */
  public PlateNeed named(String name) {
    return new PlateNeed(plate.named(name), plateKey, places, why, stays, formed);
  }

  /** How many are cut. */
  public int quantity() {
    return places.size();
  }

  /** Its form as it stands on the vehicle. */
  public Solid solid() {
    return formed.orElseGet(() -> Prism.plate(plate.outline(), plate.thicknessMm()));
  }
}
