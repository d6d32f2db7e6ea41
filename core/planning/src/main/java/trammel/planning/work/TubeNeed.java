package trammel.planning.work;

import java.util.List;
import trammel.trade.given.Given;
import trammel.trade.tubes.Cope;

/**
 * A length of a section that the job needs cut.
 *
 * @param name the part's name, as in the parts list and drawings
 * @param barKey key of the section in the catalog
 * @param cutLengthMm length to saw (mm), above 0
 * @param quantity how many, above 0
 * @param ends what happens to its ends, such as {@code square, both ends threaded}
 * @param copes what its coped ends are cut to, each with a wrap-round template
 * @param why which link or crossmember asks for it and how its length comes about
 */
public record TubeNeed(
    String name,
    String barKey,
    double cutLengthMm,
    int quantity,
    String ends,
    List<Cope> copes,
    String why) {
  public TubeNeed {
    Given.text(name, "Name of a tube", "Say which part it is.");
    Given.text(barKey, "Section of tube '" + name + "'", "Give its catalog key.");
    Given.positive(cutLengthMm, 20_000, "Cut length of '" + name + "' in mm", "Check its ends.");
    Given.count(quantity, 1, 1000, "Number of '" + name + "'", "Leave it out for none.");
    Given.text(ends, "Ends of '" + name + "'", "Say square, coped or mitred.");
    copes = List.copyOf(copes);
    Given.text(why, "Reason for tube '" + name + "'", "Say what asks for it.");
  }

  /** A tube without copes. */
  public TubeNeed(
      String name, String barKey, double cutLengthMm, int quantity, String ends, String why) {
    this(name, barKey, cutLengthMm, quantity, ends, List.of(), why);
  }
}
