package trammel.app.text;

import java.util.List;
import trammel.reading.quantity.UnitSystem;

/** The cautions that stand under every result. Sources: see docs/cautions.md. */
public final class Cautions {
  /** What a check result is, and what it is not. */
  public static final String SCREENING =
      "These figures are screening estimates for planning and comparison. They do not approve a"
          + " design, a weld or a vehicle.";

  private static final String[] LINES = {
    SCREENING,
    "Support: rated stands on level ground under frame and axle, wheels chocked, never a jack"
        + " alone; brace the chassis before it is cut. Springs hold energy.",
    "Fire and fumes: drain and move fuel tank and lines, never weld near a tank; clear or shield 35"
        + " ft, keep a fire watch for at least an hour; take zinc, chrome and paint off first.",
    "Electrics: ignition off, both battery cables off, modules near the work unplugged, clamp next"
        + " to the weld.",
    "Welding by a qualified welder to the applicable procedure; heat-treated rails only as the"
        + " builder's guide allows. Local vehicle-modification rules and inspection apply.",
  };

  private Cautions() {}

  /** The cautions of a paper, their distance in its units: 35 ft are 10.7 m, so 11 m. */
  public static List<String> lines(UnitSystem units) {
    return units == UnitSystem.US
        ? lines()
        : lines().stream().map(line -> line.replace("35 ft", "11 m")).toList();
  }

  /** The cautions, one by one. */
  public static List<String> lines() {
    return List.of(LINES);
  }

  /** The cautions in a few words, for a result that is a summary itself. */
  static String brief() {
    return "CAUTIONS\n"
        + Paragraph.wrap(
            SCREENING
                + " Stands and chocks, fire and fumes, battery and modules, a qualified welder, the"
                + " rules of your place: in full under check, plan and quote --full, and on every"
                + " paper.",
            "  ! ",
            "    ");
  }

  /** The cautions as they are printed. */
  public static String text() {
    StringBuilder text = new StringBuilder("CAUTIONS\n");
    for (String line : LINES) {
      text.append(Paragraph.wrap(line, "  ! ", "    "));
    }
    return text.toString();
  }
}
