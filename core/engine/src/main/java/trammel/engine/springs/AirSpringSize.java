package trammel.engine.springs;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * One size of air spring with its load-height table. The spring follows its own force law: the load
 * is gauge pressure times the effective area at that height, and the area and volume change with
 * the height. Between the rows of the table both are taken on a straight line; outside the table
 * nothing is guessed.
 *
 * @param name what the size is called
 * @param table at least two heights, from low to high, the volume growing with the height
 */
public record AirSpringSize(String name, List<AirSpringPoint> table) {
  /** Half the travel over which the rate is taken, ½ in. Source: EMDG198, pp. 22-23. */
  public static final double RATE_HALF_STEP_MM = 12.7;

  /**
   * Checks the table.
   *
   * @throws IllegalArgumentException if the name is blank, the table has fewer than two rows, or
   *     heights or volumes do not grow from row to row
   */
  public AirSpringSize {
    if (name.isBlank()) {
      throw Given.refusal("air spring name", "blank", "a name", "Name the size.");
    }
    table = List.copyOf(table);
    if (table.size() < 2) {
      throw Given.refusal(
          "load-height table of " + name,
          table.size() + " rows",
          "at least 2 rows",
          "Copy heights, areas and volumes from the maker's chart.");
    }
    for (int row = 1; row < table.size(); row++) {
      checkGrows("height", name, table.get(row - 1).heightMm(), table.get(row).heightMm());
      checkGrows("volume", name, table.get(row - 1).volumeMm3(), table.get(row).volumeMm3());
    }
  }

  private static void checkGrows(String what, String name, double before, double after) {
    if (after <= before) {
      throw Given.refusal(
          what + " in the table of " + name,
          Given.text(after) + " after " + Given.text(before),
          "larger in each row",
          "List the rows from the lowest height to the highest.");
    }
  }

  /**
   * Lowest height of the table.
   *
   * @return height, mm
   */
  public double leastHeightMm() {
    return table.get(0).heightMm();
  }

  /**
   * Largest height of the table.
   *
   * @return height, mm
   */
  public double mostHeightMm() {
    return table.get(table.size() - 1).heightMm();
  }

  /**
   * Area and volume at a height, on a straight line between rows.
   *
   * @param heightMm height, mm, inside the table
   * @return the point at that height
   * @throws IllegalArgumentException if the height is outside the table
   */
  public AirSpringPoint at(double heightMm) {
    Given.within(
        "height of air spring " + name,
        heightMm,
        leastHeightMm(),
        mostHeightMm(),
        "mm",
        "Choose another size or move its mount.");
    int upper = 1;
    while (table.get(upper).heightMm() < heightMm) {
      upper++;
    }
    AirSpringPoint low = table.get(upper - 1);
    AirSpringPoint high = table.get(upper);
    double share = (heightMm - low.heightMm()) / (high.heightMm() - low.heightMm());
    return new AirSpringPoint(
        heightMm,
        between(low.effectiveAreaMm2(), high.effectiveAreaMm2(), share),
        between(low.volumeMm3(), high.volumeMm3(), share));
  }

  private static double between(double low, double high, double share) {
    return low + share * (high - low);
  }

  /**
   * Load carried at a height and pressure.
   *
   * @param heightMm height, mm, inside the table
   * @param gaugeMPa gauge pressure, MPa, 0 to 10
   * @return load, N
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double loadN(double heightMm, double gaugeMPa) {
    TrappedAir.checkGauge(gaugeMPa);
    return gaugeMPa * at(heightMm).effectiveAreaMm2();
  }

  /**
   * Pressure that carries a load at a height.
   *
   * @param heightMm height, mm, inside the table
   * @param loadN load on the spring, N, 0 or more
   * @return gauge pressure, MPa
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double gaugeForLoadMPa(double heightMm, double loadN) {
    Given.notNegative("air spring load", loadN, "N", "Count a pressing load as positive.");
    return loadN / at(heightMm).effectiveAreaMm2();
  }

  /**
   * Load after fast travel from one height to another with the air shut in.
   *
   * @param startHeightMm height at the start, mm, inside the table
   * @param startGaugeMPa gauge pressure at the start, MPa, 0 to 10
   * @param endHeightMm height at the end, mm, inside the table
   * @return load at the end, N; negative if the spring would pull (pressure under the atmosphere)
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double loadAfterFastTravelN(
      double startHeightMm, double startGaugeMPa, double endHeightMm) {
    AirSpringPoint start = at(startHeightMm);
    AirSpringPoint end = at(endHeightMm);
    double gaugeMPa =
        TrappedAir.gaugeAfterMPa(
            startGaugeMPa, start.volumeMm3(), end.volumeMm3(), TrappedAir.FAST);
    return gaugeMPa * end.effectiveAreaMm2();
  }

  /**
   * Dynamic rate at a height: the difference of load between ½ in below and ½ in above it, air shut
   * in, over that inch: k = (p + pa)[Ac (V/Vc)^1.38 − Ae (V/Ve)^1.38] − pa (Ac − Ae) per inch.
   *
   * <p>Source: air-spring engineering manual EMDG198, pp. 22-23.
   *
   * @param heightMm height, mm, at least ½ in (12.7 mm) inside both ends of the table
   * @param gaugeMPa gauge pressure at that height, MPa, 0 to 10
   * @return rate, N/mm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double rateNPerMm(double heightMm, double gaugeMPa) {
    double lowest = leastHeightMm() + RATE_HALF_STEP_MM;
    double highest = mostHeightMm() - RATE_HALF_STEP_MM;
    Given.within(
        "height of air spring " + name,
        heightMm,
        lowest,
        highest,
        "mm",
        "The rate needs 12.7 mm of table on both sides: extend the table or move the mount.");
    double below = loadAfterFastTravelN(heightMm, gaugeMPa, heightMm - RATE_HALF_STEP_MM);
    double above = loadAfterFastTravelN(heightMm, gaugeMPa, heightMm + RATE_HALF_STEP_MM);
    return (below - above) / (2.0 * RATE_HALF_STEP_MM);
  }
}
