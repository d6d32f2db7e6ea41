package trammel.brackets.work;

import java.util.Map;
import trammel.engine.quantity.Given;

/**
 * A part of a mount that springs, shocks or bars load, or the weld that holds it, for the checks of
 * their strength.
 *
 * @param name the part, or the weld, as the lists have it
 * @param kind what is stressed
 * @param stressPerN stress at its worst place (MPa; by von Mises in steel, on the throat of a weld)
 *     for each newton of force in the spring, shock or bar of a name; those of several add up, on
 *     the safe side
 * @param bearsMPa what its steel yields at, or what its weld may bear (MPa)
 * @param how how the stress comes about, such as {@code bent and twisted between the rails}
 */
public record LoadedMember(
    String name, Kind kind, Map<String, Double> stressPerN, double bearsMPa, String how) {
  /** What is stressed. */
  public enum Kind {
    /** The part itself, held to the yield of its steel. */
    STEEL,
    /** Its weld, held to what filler metal of 70 ksi may bear. */
    WELD
  }

  /**
   * Steel.
   *
   * @param yieldMPa what it yields at (MPa)
   */
  public LoadedMember(String name, Map<String, Double> stressPerN, double yieldMPa, String how) {
    this(name, Kind.STEEL, stressPerN, yieldMPa, how);
  }

  public LoadedMember {
    Given.text("name of a loaded part", name, "Say what the lists call it.");
    stressPerN = Map.copyOf(stressPerN);
    Given.count("forces on '" + name + "'", stressPerN.size(), 1, 20, "Name what loads it.");
    stressPerN.forEach(
        (unit, stress) ->
            Given.notNegative("stress in " + name + " for a newton of " + unit, stress));
    Given.present("kind of '" + name + "'", kind, "Say what is stressed.");
    Given.positive("what " + name + " bears (MPa)", bearsMPa);
    Given.text("how '" + name + "' is loaded", how, "Say how the stress comes about.");
  }
}
