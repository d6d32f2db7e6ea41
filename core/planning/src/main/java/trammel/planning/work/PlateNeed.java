package trammel.planning.work;

import trammel.trade.given.Given;
import trammel.trade.plates.Plate;

/**
 * A plate that the job needs cut.
 *
 * @param plate the plate with its outline
 * @param plateKey key of the plate's material in the catalog
 * @param quantity how many, above 0
 * @param why which point or joint asks for it
 * @param stays true when it goes on the vehicle and stays there, false for a tool of the fit-up
 */
public record PlateNeed(Plate plate, String plateKey, int quantity, String why, boolean stays) {
  public PlateNeed {
    Given.present(plate, "Plate", "Draw it.");
    Given.text(plateKey, "Material of plate '" + plate.name() + "'", "Give its catalog key.");
    Given.count(quantity, 1, 1000, "Number of '" + plate.name() + "'", "Leave it out for none.");
    Given.text(why, "Reason for plate '" + plate.name() + "'", "Say what asks for it.");
  }

  /** A plate that stays on the vehicle. */
  public PlateNeed(Plate plate, String plateKey, int quantity, String why) {
    this(plate, plateKey, quantity, why, true);
  }

  /** The same as a tool of the fit-up, taken off again. */
  public PlateNeed asTool() {
    return new PlateNeed(plate, plateKey, quantity, why, false);
  }
}
