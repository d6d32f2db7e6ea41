package trammel.engine.strength;

/**
 * Steels a chassis shop buys, with the least strengths their standards promise. Where sources
 * disagree the lower value stands: drawn-over-mandrel 1026 as drawn is 75/85 ksi on a tube
 * merchant's page and 70/80 in the standard's table, and round A500 grade B is 42/58 (later
 * editions lift it to the 46/58 of shaped tube).
 */
public enum PublishedSteel {
  /** Electric-welded tube, 1010, as welded. */
  A513_WELDED_1010("A513 type 1 or 2, 1010 as welded", 32, 45, "ASTM A513 table"),
  /** Electric-welded tube, 1015, as welded. */
  A513_WELDED_1015("A513 type 1 or 2, 1015 as welded", 35, 48, "ASTM A513 table"),
  /** Electric-welded tube, 1020, as welded. */
  A513_WELDED_1020("A513 type 1 or 2, 1020 as welded", 38, 52, "ASTM A513 table"),
  /** Drawn-over-mandrel tube, 1015, stress relieved. */
  A513_DRAWN_1015_RELIEVED("A513 type 5, 1015 stress relieved", 50, 60, "ASTM A513 table"),
  /** Drawn-over-mandrel tube, 1020, stress relieved. */
  A513_DRAWN_1020_RELIEVED("A513 type 5, 1020 stress relieved", 55, 65, "ASTM A513 table"),
  /** Drawn-over-mandrel tube, 1026, stress relieved. */
  A513_DRAWN_1026_RELIEVED("A513 type 5, 1026 stress relieved", 65, 75, "ASTM A513 table"),
  /** Drawn-over-mandrel tube, 1020, as drawn. */
  A513_DRAWN_1020("A513 type 5, 1020 as drawn", 60, 70, "tube merchant's table"),
  /** Drawn-over-mandrel tube, 1026, as drawn; the lower of two published pairs. */
  A513_DRAWN_1026("A513 type 5, 1026 as drawn", 70, 80, "ASTM A513 table, from memory"),
  /** Structural round tube. */
  A500_B_ROUND("A500 grade B, round", 42, 58, "ASTM A500 table"),
  /** Structural square and rectangular tube. */
  A500_B_SHAPED("A500 grade B, shaped", 46, 58, "ASTM A500 table"),
  /** Structural round tube, stronger grade. */
  A500_C_ROUND("A500 grade C, round", 46, 62, "ASTM A500 table"),
  /** Structural square and rectangular tube, stronger grade. */
  A500_C_SHAPED("A500 grade C, shaped", 50, 62, "ASTM A500 table"),
  /** Plate, bar and shapes. */
  A36("A36", 36, 58, "ASTM A36"),
  /** Chrome-molybdenum tube, normalised, wall to 0.188 in. */
  CHROME_MOLY_THIN("4130 normalised, wall to 3/16 in", 75, 95, "MIL-T-6736B, from memory"),
  /** Chrome-molybdenum tube, normalised, wall over 0.188 in. */
  CHROME_MOLY_THICK("4130 normalised, wall over 3/16 in", 70, 90, "MIL-T-6736B, from memory");

  private static final double MPA_PER_KSI = 6.894757293168361;

  private final SteelGrade grade;

  PublishedSteel(String name, double yieldKsi, double tensileKsi, String source) {
    this.grade = new SteelGrade(name, yieldKsi * MPA_PER_KSI, tensileKsi * MPA_PER_KSI, source);
  }

  /**
   * The grade with its strengths.
   *
   * @return the grade
   */
  public SteelGrade grade() {
    return grade;
  }
}
