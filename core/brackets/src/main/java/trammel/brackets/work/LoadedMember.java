package trammel.brackets.work;

import java.util.Map;
import trammel.engine.quantity.Given;

/**
 * A part of a mount that springs, shocks or bars load, for the check of its strength.
 *
 * @param name the part, as the lists have it
 * @param stressPerN stress at its worst place (MPa, by von Mises) for each newton of force in the
 *     spring, shock or bar of a name; those of several add up, on the safe side
 * @param yieldMPa what its steel yields at (MPa)
 * @param how how the stress comes about, such as {@code bent and twisted between the rails}
 */
public record LoadedMember(
    String name, Map<String, Double> stressPerN, double yieldMPa, String how) {
  public LoadedMember {
    Given.text("name of a loaded part", name, "Say what the lists call it.");
    stressPerN = Map.copyOf(stressPerN);
    Given.count("forces on '" + name + "'", stressPerN.size(), 1, 20, "Name what loads it.");
    stressPerN.forEach(
        (unit, stress) ->
            Given.notNegative("stress in " + name + " for a newton of " + unit, stress));
    Given.positive("yield of " + name + " (MPa)", yieldMPa);
    Given.text("how '" + name + "' is loaded", how, "Say how the stress comes about.");
  }
}
