package trammel.trade.labour;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A standard operation of the shop.
 *
 * @param key short name in files: "fit-frame-bracket"
 * @param title name on the hours list
 * @param driverUnit what is counted, singular: "bracket", "metre of weld", "job"
 * @param hoursPerUnit hours for one of them
 * @param factorGroups groups of factors that apply: "access", "rust"
 * @param sourceNote where the hours come from
 */
public record Operation(
    String key,
    String title,
    String driverUnit,
    ThreePoint hoursPerUnit,
    List<String> factorGroups,
    String sourceNote) {

  public Operation {
    Given.text("key of an operation", key, "For example fit-frame-bracket.");
    Given.text("title of the operation '" + key + "'", title, "Say what is done.");
    Given.text("driver of the operation '" + key + "'", driverUnit, "Say what is counted.");
    Given.present("hours of the operation '" + key + "'", hoursPerUnit, "Low, likely, high.");
    Given.text("source of the hours of '" + key + "'", sourceNote, "Own records, or from memory.");
    factorGroups = List.copyOf(factorGroups);
  }

  /** The same operation with other hours, for example after a job was closed. */
  public Operation withHours(ThreePoint hours, String source) {
    return new Operation(key, title, driverUnit, hours, factorGroups, source);
  }
}
