package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * A welding process as the shop runs it.
 *
 * @param key short name in files: "gmaw-solid-mix"
 * @param title name on a weld list
 * @param filler what is melted, and how fast
 * @param depositionEfficiency part of the bought filler that ends in the weld, above 0 to 1
 * @param benchOperatingFactor part of the clock that the arc burns at the bench, above 0 to 1
 * @param vehicleOperatingFactor the same under a vehicle
 * @param gasLitresPerMin shielding gas while the arc burns, L/min; 0 for none
 */
public record WeldProcess(
    String key,
    String title,
    Filler filler,
    double depositionEfficiency,
    double benchOperatingFactor,
    double vehicleOperatingFactor,
    double gasLitresPerMin) {

  public WeldProcess {
    Given.text("key of a weld process", key, "For example gmaw-solid-mix.");
    Given.text("title of the weld process '" + key + "'", title, "For example MIG, 75/25 gas.");
    Given.present("filler of the weld process '" + key + "'", filler, "Give wire or rod.");
    checkedFraction(depositionEfficiency, "Deposition efficiency", key, "0.94 for solid wire.");
    checkedFraction(benchOperatingFactor, "Bench operating factor", key, "0.35 for MIG.");
    checkedFraction(vehicleOperatingFactor, "Vehicle operating factor", key, "0.20 for MIG.");
    Given.within(
        "gas flow of the weld process '" + key + "' in L/min",
        gasLitresPerMin,
        0,
        60,
        "",
        "30 cubic feet an hour is 14.2 L/min.");
  }

  private static void checkedFraction(double value, String what, String key, String example) {
    Given.positive(
        what + " of the weld process '" + key + "'", value, 1, "", "Give a fraction: " + example);
  }

  /** Weld metal laid in an hour of arc, kg/h. */
  public double depositKgPerHour() {
    return filler.meltOffKgPerHour() * depositionEfficiency;
  }

  /** Part of the clock that the arc burns, by place. */
  public double operatingFactor(WeldPlace place) {
    return place == WeldPlace.BENCH ? benchOperatingFactor : vehicleOperatingFactor;
  }

  /** The same process with another filler, for example another wire or feed. */
  public WeldProcess withFiller(Filler other) {
    return new WeldProcess(
        key,
        title,
        other,
        depositionEfficiency,
        benchOperatingFactor,
        vehicleOperatingFactor,
        gasLitresPerMin);
  }
}
