package trammel.trade.labour;

import trammel.engine.quantity.Given;

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
    Given.text("group of a labour factor", group, "For example rust or access.");
    Given.text("title of a labour factor in '" + group + "'", title, "For example heavy rust.");
    Given.text("reason for the labour factor '" + title + "'", why, "Say what asks for it.");
    Given.within(
        "labour factor '" + title + "'",
        multiplier,
        0.1,
        10,
        "",
        "1 changes nothing, 1.25 is a quarter longer.");
  }
}
