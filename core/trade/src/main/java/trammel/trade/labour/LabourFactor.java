package trammel.trade.labour;

import trammel.trade.given.Given;

/**
 * A stated reason why an operation takes longer or shorter on this job.
 *
 * @param group what it is about: "rust"; one factor of a group applies to a line
 * @param title what holds on this job: "heavy rust"
 * @param multiplier 0.1 to 10; 1.25 for a quarter longer
 * @param why what on this vehicle asks for it
 */
public record LabourFactor(String group, String title, double multiplier, String why) {

  public LabourFactor {
    Given.text(group, "Group of a labour factor", "For example rust or access.");
    Given.text(title, "Title of a labour factor in '" + group + "'", "For example heavy rust.");
    Given.text(why, "Reason for the labour factor '" + title + "'", "Say what asks for it.");
    Given.between(
        multiplier,
        0.1,
        10,
        "Labour factor '" + title + "'",
        "1 changes nothing, 1.25 is a quarter longer.");
  }
}
