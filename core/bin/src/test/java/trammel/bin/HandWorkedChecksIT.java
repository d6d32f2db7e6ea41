package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The checks of both demonstration jobs against {@code docs/hand-worked-job.md}, from section 19
 * on, and {@code docs/hand-worked-sedan.md}. Every expected value comes from the arithmetic of
 * these pages.
 */
class HandWorkedChecksIT {
  private static final double INCH_MM = 25.4;
  private static final double POUND_KG = 0.45359237;
  private static final double POUND_N = POUND_KG * 9.80665;
  private static final double INCH_POUND_NMM = POUND_N * INCH_MM;

  @TempDir static Path shop;
  private static Map<String, Tree> jobs;

  @BeforeAll
  static void run() throws Exception {
    InstalledCopy copy = InstalledCopy.unpackedInto(shop);
    Tree more =
        copy.demoTree("pickup")
            .with(
                "measured.hitch",
                Map.of("trailer", "3500 lb", "tongue", "400 lb", "behind", "44 in"))
            .with("chosen.additions", Map.of("anti-roll-bar", Map.of()));
    Tree bay =
        copy.demoTree("pickup")
            .with("measured.rails.crossmember_ahead", "40 in")
            .with("measured.rails.crossmember_behind", "22 in");
    jobs =
        Map.of(
            "bay",
            copy.json(1, "check", InstalledCopy.write(shop.resolve("bay.json"), bay)),
            "closed",
            copy.json(
                1,
                "check",
                InstalledCopy.write(
                    shop.resolve("closed.json"),
                    bay.with("chosen.boxing", Map.of("behind", "20 in", "ahead", "38 in")))),
            "stronger",
            copy.json(
                1,
                "check",
                InstalledCopy.write(
                    shop.resolve("stronger.json"),
                    bay.with("measured.rails.steel", "high-strength"))),
            "pickup",
            copy.json(1, "check", copy.demoJob("pickup")),
            "sedan",
            copy.json(1, "check", copy.demoJob("sedan")),
            "more",
            copy.json(1, "check", InstalledCopy.write(shop.resolve("more.json"), more)));
  }

  private static Tree found(String job, String check) {
    return jobs.get(job).entry("checks", "check", check);
  }

  private static double value(String job, String check) {
    return found(job, check).number("value");
  }

  private static double detail(String job, String check, String what) {
    return found(job, check).entry("details", "what", what).number("value");
  }

  /** Conservation of energy; the stop is the catalog's invented one. */
  @ParameterizedTest
  @CsvSource({
    "pickup, 1419, 562, 1.341, 1139, 3.80, 0.573",
    "sedan, 1378, 800, 1.5225, 1491, 3.97, 0.226"
  })
  void bumpStopsMetAtSpeed(
      String job,
      double movingLbIn,
      double takenLbIn,
      double squeezedIn,
      double forceLb,
      double timesItsWeight,
      double roomIn) {
    String check = "bump-stop-room";
    double energy = detail(job, check, "energy of each side") / INCH_POUND_NMM;
    assertEquals(movingLbIn, energy, 0.002 * movingLbIn);
    double taken = detail(job, check, "what each stop takes up of it") / INCH_POUND_NMM;
    assertEquals(takenLbIn, taken, 0.003 * takenLbIn);
    assertEquals(squeezedIn, detail(job, check, "stop squeezed by") / INCH_MM, 0.002);
    double force = detail(job, check, "force on each rail at its stop") / POUND_N;
    assertEquals(forceLb, force, 0.003 * forceLb);
    String times = "load that the body puts on the wheel then, times that at rest";
    assertEquals(timesItsWeight, detail(job, check, times), 0.01);
    assertEquals(roomIn, value(job, check) / INCH_MM, 0.003);
  }

  /** Plane geometry of an axle that leans; the page leaves out that it turns in side view. */
  @Test
  void theTyreComesClosestToTheSpringsTop() {
    assertEquals(1.012, value("pickup", "clearance-tyre") / INCH_MM, 0.005);
    assertEquals(
        "left tyre to spring-left, left wheel at full bump, right at full droop",
        found("pickup", "clearance-tyre").text("where"));
  }

  /** Statics in side view and the give of two joints in series. */
  @ParameterizedTest
  @CsvSource({"pickup, 0.891, 0.432", "sedan, 0.571, 0.307"})
  void windUpOfThePinion(String job, double launchDeg, double brakingDeg) {
    String check = "pinion-wind-up";
    double launch = detail(job, check, "launch, nose up");
    assertEquals(launchDeg, Math.toDegrees(launch), 0.001);
    assertEquals(brakingDeg, Math.toDegrees(detail(job, check, "braking, nose down")), 0.001);
    assertEquals(launch, value(job, check), 1e-12);
  }

  /** Welds as lines: Blodgett, from memory; allowed: AISC 360 Table J2.5. */
  @Test
  void weldOfTheMostStressedBracket() {
    assertEquals(0.455, value("pickup", "bracket-welds"), 0.003);
    String weld = "upper-right frame bracket to rail";
    assertEquals(weld + ", launch", found("pickup", "bracket-welds").text("where"));
    assertEquals(weld, found("pickup", "weld-ranking").text("where"));
  }

  /** Allowed: installation manual J3311-1. */
  @Test
  void airLostAtSpeed() {
    String both = "front joint, both sides empty";
    assertEquals(1.579, Math.toDegrees(detail("pickup", "air-lost", both)), 0.002);
    assertEquals(3.990, Math.toDegrees(detail("pickup", "air-lost", "allowed")), 0.001);
    assertEquals(0.396, value("pickup", "air-lost"), 0.001);
    String where = found("pickup", "air-lost").text("where");
    assertTrue(where.endsWith("both sides empty, at 4196 rpm"), where);
    assertTrue(
        jobs.get("sedan").list("checks").stream()
            .noneMatch(check -> check.text("check").equals("air-lost") && check.has("value")),
        "coil springs hold no air");
  }

  /** Lever rule; load indices: FMVSS 120 S5.1.2. */
  @ParameterizedTest
  @CsvSource({"pickup, 2450, 0.766, 1230, 0.563", "sedan, 2131, 0.735, 1071, 0.607"})
  void atFullLoad(String job, double axleLb, double ofRating, double tyreLb, double ofLoadIndex) {
    assertEquals(axleLb, detail(job, "axle-rating", "it carries") / POUND_KG, 0.6);
    assertEquals(ofRating, value(job, "axle-rating"), 0.0006);
    assertEquals(tyreLb, detail(job, "tyre-load", "it carries") / POUND_KG, 0.6);
    assertEquals(ofLoadIndex, value(job, "tyre-load"), 0.0006);
  }

  /** Lever rule. */
  @Test
  void aHitchLiftsTheFrontAxle() {
    String check = "hitch-load";
    assertEquals(0.1143, value("more", check), 1e-4);
    assertEquals(549, detail("more", check, "it puts on the rear axle") / POUND_KG, 0.5);
    assertEquals(149, detail("more", check, "it takes off the front axle") / POUND_KG, 0.5);
  }

  /** Puhn's formula, from memory; Gillespie 1992 ch. 6, from memory; shear by von Mises. */
  @Test
  void anAntiRollBarTakesRollAndIsTwistedByTheTravel() {
    Tree ride = jobs.get("more").at("layout.ride");
    double perDeg = ride.number("anti_roll_bar_Nmm_per_rad") / INCH_POUND_NMM / 57.296;
    assertEquals(3_365, perDeg, 0.001 * 3_365);
    assertEquals(6.30, ride.number("roll_deg_per_g"), 0.03);
    String check = "anti-roll-bar-strength";
    assertEquals(460, detail("more", check, "force in each link") / POUND_N, 2);
    assertEquals(2.06, value("more", check), 0.01);
  }

  /** The sedan: Gillespie 1992 ch. 5, from memory; Barton and Fieldhouse 2018, eq. 3.33. */
  @Test
  void instantCentreAndSpringsOfTheSedan() {
    Tree ride = jobs.get("sedan").at("layout.ride");
    List<Tree> centre = ride.list("instant_centre");
    assertEquals(269.24, centre.get(0).number() / INCH_MM, 0.02);
    assertEquals(14.950, centre.get(2).number() / INCH_MM, 0.001);
    assertEquals(28.75, ride.number("anti_squat_percent"), 0.01);
    double perInch = ride.number("wheel_rate_N_per_mm") / POUND_N * INCH_MM;
    assertEquals(137.6, perInch, 0.1);
    assertEquals(1.422, ride.number("ride_frequency_Hz"), 0.001);
  }

  /** Vlasov's torsion of an open channel between closed pieces; handbooks of beams. */
  @Test
  void railsAreTwistedByTheOutriggersOfTheAirSprings() {
    String check = "rail-twist";
    double spring = detail("bay", check, "twist that spring-left puts in") / INCH_POUND_NMM;
    assertEquals(13_124, spring, 0.003 * 13_124);
    double along = detail("bay", check, "twist along the rail there") / INCH_POUND_NMM;
    assertEquals(3_594, along, 0.003 * 3_594);
    assertEquals(0.511, Math.toDegrees(detail("bay", check, "rails lean by")), 0.002);
    assertEquals(1.071, value("bay", check), 0.005);
    assertEquals("look again", found("bay", check).text("verdict"));
    // 50 ksi of ASTM A572 grade 50 in place of 36 ksi of ASTM A36.
    assertEquals(1.071 * 50 / 36, value("stronger", check), 0.01);
    assertEquals(1.071 * 3_256 / 4_637, value("bay", "rail-twist-loaded"), 0.005);
    assertEquals("stop", found("bay", "rail-twist-loaded").text("verdict"));
    assertEquals(2.82, value("closed", check), 0.02);
    assertEquals("good", found("closed", "rail-twist-loaded").text("verdict"));
    // Not measured, the frame's crossmembers are asked for.
    assertTrue(found("pickup", "rail-twist").text("reason").contains("crossmember_ahead"));
  }

  /**
   * Welds as lines, Blodgett, from memory; allowable stress of AISC 360 Table J2.5. The bump stops
   * met at speed push the spring further than the 3,256 lb of the page.
   */
  @Test
  void theOutriggersWeldBearsItsMoment() {
    String check = "mount-welds-hard";
    assertTrue(found("pickup", check).text("where").startsWith("weld of air spring outrigger"));
    double force = detail("pickup", check, "under spring-left with") / POUND_N;
    assertEquals(0.583 * force / 3_256, value("pickup", check), 0.003);
    double throat = detail("pickup", check, "stress on its throat") / 0.006894757;
    assertEquals(12_253 * force / 3_256, throat, 0.005 * throat);
  }

  /** An air spring raised for a load pushes harder at full bump. */
  @Test
  void mountsCarryMoreAtFullLoad() {
    String check = "mount-strength-loaded";
    double force = detail("pickup", check, "under spring-left with") / POUND_N;
    assertEquals(4_637, force, 0.003 * 4_637);
    assertEquals(1.204, value("pickup", check), 0.005);
  }

  /** The two loops of bars in side view; conservation of energy. */
  @Test
  void theSedanAtFullLoadStandsLower() {
    assertEquals(0.634, Math.toDegrees(value("sedan", "pinion-parallel-loaded")), 0.005);
    assertEquals(-0.133, value("sedan", "bump-stop-room-loaded") / INCH_MM, 0.003);
  }
}
