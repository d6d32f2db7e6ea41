package trammel.planning.work;

import trammel.planning.given.Given;

/**
 * A length of a section that the job needs cut.
 *
 * @param name the part's name, as in the parts list and drawings
 * @param barKey key of the section in the catalog
 * @param cutLengthMm length to saw (mm), above 0
 * @param quantity how many, above 0
 * @param ends what happens to its ends, such as {@code square, both ends threaded}
 * @param why which link or crossmember asks for it and how its length comes about
 */
public record TubeNeed(
    String name, String barKey, double cutLengthMm, int quantity, String ends, String why) {
  public TubeNeed {
    Given.text(name, "Name of a tube", "Say which part it is.");
    Given.text(barKey, "Section of tube '" + name + "'", "Give its catalog key.");
    Given.positive(cutLengthMm, 20_000, "Cut length of '" + name + "' in mm", "Check its ends.");
    Given.count(quantity, 1, 1000, "Number of '" + name + "'", "Leave it out for none.");
    Given.text(ends, "Ends of '" + name + "'", "Say square, coped or mitred.");
    Given.text(why, "Reason for tube '" + name + "'", "Say what asks for it.");
  }
}
