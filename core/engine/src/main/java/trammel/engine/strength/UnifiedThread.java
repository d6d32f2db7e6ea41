package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A unified (inch) thread. Source of its relations: ASME B1.1 and Machinery's Handbook.
 *
 * @param majorDiameterMm nominal diameter, mm, 1 to 150
 * @param pitchMm distance from thread to thread, mm: 25.4 over threads an inch; 0.2 to 8 and under
 *     0.4 of the diameter
 */
public record UnifiedThread(double majorDiameterMm, double pitchMm) {
  /**
   * Checks the thread.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public UnifiedThread {
    Given.within("thread diameter", majorDiameterMm, 1, 150, "mm", "Give the nominal size.");
    Given.within(
        "thread pitch",
        pitchMm,
        0.2,
        Math.min(8, 0.4 * majorDiameterMm),
        "mm",
        "Divide 25.4 by the threads to an inch.");
  }

  /**
   * Area that carries tension, 0.7854 (D − 0.9743/n)², n threads an inch. Machinery's Handbook has
   * another form for steels over 100 ksi, 3 % smaller, for which the pitch diameter must be known
   * ({@link #minimumStressAreaMm2}); bolt tables use this one, and so does this class throughout.
   *
   * @return stress area, mm²
   */
  public double stressAreaMm2() {
    double diameter = majorDiameterMm - 0.9743 * pitchMm;
    return Math.PI / 4.0 * diameter * diameter;
  }

  /**
   * The smaller stress area for steels over 100 ksi, π (Es/2 − 0.16238/n)². Source: Machinery's
   * Handbook.
   *
   * @param leastPitchDiameterMm least pitch diameter of the external thread, mm, from half the
   *     nominal diameter up to it
   * @return stress area, mm²
   * @throws IllegalArgumentException if the pitch diameter is outside its range
   */
  public double minimumStressAreaMm2(double leastPitchDiameterMm) {
    checkDiameter("least pitch diameter", leastPitchDiameterMm);
    double radius = leastPitchDiameterMm / 2.0 - 0.16238 * pitchMm;
    return Math.PI * radius * radius;
  }

  /**
   * Depth of thread a drilled hole leaves, (D − drill) n/0.01299 per cent. Source: Machinery's
   * Handbook.
   *
   * @param drillMm drill diameter, mm, from half the nominal diameter up to it
   * @return share of a full thread, per cent; about 65 to 80 is tapped in practice
   * @throws IllegalArgumentException if the drill is outside its range
   */
  public double threadPercent(double drillMm) {
    checkDiameter("tap drill", drillMm);
    return (majorDiameterMm - drillMm) / (0.01299 * pitchMm);
  }

  /**
   * Drill that leaves a given share of a full thread.
   *
   * @param percent share of a full thread, per cent, 30 to 100
   * @return drill diameter, mm
   * @throws IllegalArgumentException if the share is outside its range
   */
  public double tapDrillMm(double percent) {
    Given.within("share of a full thread", percent, 30, 100, "%", "About 75 % is usual.");
    return majorDiameterMm - 0.01299 * pitchMm * percent;
  }

  /**
   * Tensile load that gives a stress on the stress area.
   *
   * @param stressMPa stress, MPa, 0 or more
   * @return load, N
   * @throws IllegalArgumentException if the stress is negative
   */
  public double loadAtN(double stressMPa) {
    Given.notNegative("stress", stressMPa, "MPa", "Take proof, yield or tensile strength.");
    return stressMPa * stressAreaMm2();
  }

  /**
   * Engaged length at which bolt and nut of equal steel are equally strong, 2 At/{π Kn [0.5 +
   * 0.57735 n (Es − Kn)]}. Source: FED-STD-H28/2B.
   *
   * @param leastPitchDiameterMm least pitch diameter of the external thread Es, mm
   * @param largestMinorDiameterMm largest minor diameter of the internal thread Kn, mm, under the
   *     pitch diameter
   * @return length, mm
   * @throws IllegalArgumentException if a diameter is outside its range
   */
  public double fullStrengthEngagementMm(
      double leastPitchDiameterMm, double largestMinorDiameterMm) {
    checkDiameter("least pitch diameter", leastPitchDiameterMm);
    checkDiameter("largest minor diameter", largestMinorDiameterMm);
    if (largestMinorDiameterMm >= leastPitchDiameterMm) {
      throw Given.refusal(
          "largest minor diameter of the nut",
          Given.text(largestMinorDiameterMm) + " mm",
          "under the least pitch diameter of the bolt, " + Given.text(leastPitchDiameterMm) + " mm",
          "Above it the threads do not touch: check the two limits.");
    }
    double flank = 0.57735 * (leastPitchDiameterMm - largestMinorDiameterMm) / pitchMm;
    return 2.0 * stressAreaMm2() / (Math.PI * largestMinorDiameterMm * (0.5 + flank));
  }

  /**
   * Engaged length by rule of thumb: one diameter in steel, one and a half in aluminium and other
   * soft metal. Longer than the calculated 0.8 diameters; the rule is used for links, whose thread
   * is screwed in and out. Source: common practice.
   *
   * @param steel whether the tapped part is steel
   * @return length, mm
   */
  public double leastEngagementMm(boolean steel) {
    return steel ? majorDiameterMm : 1.5 * majorDiameterMm;
  }

  private void checkDiameter(String what, double diameterMm) {
    Given.within(
        what,
        diameterMm,
        0.5 * majorDiameterMm,
        majorDiameterMm,
        "mm",
        "It lies inside the thread of " + Given.text(majorDiameterMm) + " mm.");
  }
}
