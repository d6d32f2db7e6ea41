package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demonstration pickup against {@code docs/hand-worked-job.md}. Every expected value comes from
 * the arithmetic of that page, in inches, pounds and degrees; a value without a source beside it is
 * plain geometry.
 */
class HandWorkedJobIT {
  private static final double INCH_MM = 25.4;
  private static final double POUND_KG = 0.45359237;
  private static final double LB_PER_INCH_N_PER_MM = POUND_KG * 9.80665 / INCH_MM;
  private static final double POUND_N = POUND_KG * 9.80665;
  private static final double LB_FT_NM = POUND_KG * 9.80665 * 12 * INCH_MM / 1000;

  /** The page gives lengths to a ten-thousandth of an inch. */
  private static final double LENGTH_IN = 1e-4;

  /** 0.035 in wire at 220 in/min, 94 % of it in the weld (ESAB, Filler Metal Data Handbook, 8). */
  private static final double DEPOSIT_LB_PER_HOUR =
      Math.PI / 4 * 0.035 * 0.035 * 220 * 60 * 0.283 * 0.94;

  @TempDir static Path shop;
  private static Tree check;
  private static Tree quote;

  @BeforeAll
  static void run() throws Exception {
    InstalledCopy copy = InstalledCopy.unpackedInto(shop);
    check = copy.json(1, "check", copy.demoJob("pickup"));
    quote = copy.json(1, "quote", copy.demoJob("pickup"));
  }

  private static double inches(double lengthMm) {
    return lengthMm / INCH_MM;
  }

  private static double ride(String figure) {
    return check.number("layout.ride." + figure);
  }

  @ParameterizedTest
  @CsvSource({
    "lower-left, frame, 23.9963, 13.0769, 11.9189",
    "lower-left, axle, 0, 13.0769, 11.5",
    "lower-right, frame, 23.9963, -13.0769, 11.9189",
    "upper-left, frame, 17.9938, 13.0769, 18.5288",
    "upper-left, axle, 0, 13.0769, 19",
    "upper-right, axle, 0, -13.0769, 19",
    "lateral-bar, frame, -6, 14.4808, 16.5",
    "lateral-bar, axle, -6, -10.0818, 16.5",
  })
  void barEnds(String bar, String end, double forwardIn, double leftIn, double upIn) {
    List<Tree> point = check.entry("layout.parts", "name", bar).list(end);
    assertEquals(forwardIn, inches(point.get(0).number()), LENGTH_IN);
    assertEquals(leftIn, inches(point.get(1).number()), LENGTH_IN);
    assertEquals(upIn, inches(point.get(2).number()), LENGTH_IN);
  }

  @Test
  void lateralBarLength() {
    Tree bar = check.entry("layout.parts", "name", "lateral-bar");
    assertEquals(24.5626, inches(bar.number("length_mm")), LENGTH_IN);
  }

  /** Gillespie 1992 ch. 5, from memory. */
  @Test
  void instantCentreAntiSquatAndAntiLift() {
    List<Tree> centre = check.list("layout.ride.instant_centre");
    assertEquals(171.857, inches(centre.get(0).number()), 1e-3);
    assertEquals(14.4998, inches(centre.get(2).number()), LENGTH_IN);
    assertEquals(39.826, ride("anti_squat_percent"), 1e-3);
    assertEquals(13.939, ride("anti_lift_braking_percent"), 1e-3);
  }

  /** Height where the bar crosses the centre plane: Gillespie 1992, from memory; slope: page, 6. */
  @Test
  void rollCentreAndRollSteer() {
    assertEquals(16.4738, inches(ride("roll_centre_height_mm")), LENGTH_IN);
    assertEquals(0.004361, ride("roll_understeer_deg_per_deg"), 1e-6);
  }

  @Test
  void pinionAndJoints() {
    assertEquals(3.0, ride("pinion_angle_deg"), 1e-6);
    assertEquals(2.1135, ride("front_joint_deg"), 1e-4);
    assertEquals(2.1135, ride("rear_joint_deg"), 1e-4);
  }

  /** The page leaves out that the housing turns in bump: thousandths of forward travel. */
  @Test
  void notchAndGapInIt() {
    assertEquals(2.75, inches(check.number("layout.notch_depth_mm")), 1e-9);
    Tree gap = check.entry("checks", "check", "axle-to-rail");
    assertEquals(0.7477, inches(gap.number("value")), LENGTH_IN);
    List<Tree> travel = check.list("layout.travel");
    Tree fullBump = travel.get(travel.size() - 1);
    assertEquals(0.2919, inches(fullBump.number("forward_mm")), 0.003);
  }

  @ParameterizedTest
  @CsvSource({"lower-left, 20.3386", "upper-right, 14.3386", "lateral-bar, 20.9011"})
  void tubeLengths(String bar, double sawnIn) {
    Tree section = quote.entry("tubes", "section", "dom-1.50x0.120");
    double cutMm = section.entry("pieces", "name", bar).number("cut_length_mm");
    assertEquals(sawnIn, inches(cutMm), LENGTH_IN);
  }

  /** Torque: T = K D F, Shigley, from memory; proof of grade 8: SAE J429. */
  @Test
  void boltsOfTheAxleEnds() {
    Tree bolt =
        quote.list("bolts").stream()
            .filter(each -> each.text("where").startsWith("lower-left axle end"))
            .findFirst()
            .orElseThrow();
    assertEquals(5, bolt.amount("quantity").intValueExact());
    assertEquals(2.5, inches(bolt.number("grip_mm")), LENGTH_IN);
    assertEquals(3.5, inches(bolt.number("length_mm")), LENGTH_IN);
    assertEquals(119.96, bolt.number("torque_Nm") / LB_FT_NM, 0.05);
  }

  @Test
  void axleBracketSide() {
    Tree plate = quote.entry("plates", "name", "lower-left axle bracket side");
    assertEquals(2, plate.amount("quantity").intValueExact());
    assertEquals(4.6587, plate.number("area_mm2") / (INCH_MM * INCH_MM), 1e-4);
    assertEquals(0.3303, plate.number("mass_kg") / POUND_KG, 1e-4);
  }

  /** Leg along an edge: AISC 360 J2.2b. */
  @Test
  void axleBracketWeld() {
    Tree seam = quote.entry("welds.seams", "name", "lower-left axle bracket to tube");
    assertEquals(3.0 / 16, inches(seam.number("size_mm")), LENGTH_IN);
    assertEquals(3.1416, inches(seam.number("length_mm")), LENGTH_IN);
    assertEquals(4, seam.amount("count").intValueExact());
    assertEquals(0.0756, depositLb(seam), 1e-4);
    assertEquals(0.0640, depositLb(seam) / DEPOSIT_LB_PER_HOUR / 0.35, 1e-4);
  }

  /** Fillet with legs laid 10 % large, 0.283 lb/in³ (ESAB, Filler Metal Data Handbook, 8). */
  private static double depositLb(Tree seam) {
    double legIn = inches(seam.number("size_mm")) * 1.1;
    double lengthIn = inches(seam.number("length_mm")) * seam.number("count");
    return legIn * legIn / 2 * lengthIn * 0.283;
  }

  @Test
  void depositOfTheWholeWeldList() {
    double depositLb = 0;
    for (Tree seam : quote.list("welds.seams")) {
      assertEquals("fillet", seam.text("kind"), "the page knows fillets only");
      depositLb += depositLb(seam);
    }
    assertEquals(depositLb, quote.number("welds.deposit_kg") / POUND_KG, 1e-4 * depositLb);
    assertEquals(depositLb / 0.94, quote.number("welds.wire_kg") / POUND_KG, 1e-4 * depositLb);
  }

  /** Operating factors, positions and restarts of seams laid in skips: page, section 12. */
  @Test
  void torchTimeOfTheWholeWeldList() {
    double hours = 0;
    for (Tree seam : quote.list("welds.seams")) {
      double arcHours = depositLb(seam) / DEPOSIT_LB_PER_HOUR * slower(seam.text("position"));
      hours += arcHours / (seam.text("place").contains("bench") ? 0.35 : 0.20);
      if (seam.text("why").contains("skips")) {
        double skips = Math.ceil(inches(seam.number("length_mm")) / 2.5 - 1e-9);
        hours += (skips - 1) * seam.number("count") * 0.5 / 60;
      }
    }
    assertEquals(hours, quote.number("welds.torch_hours"), 1e-3);
  }

  private static double slower(String position) {
    return switch (position) {
      case "flat" -> 1;
      case "horizontal" -> 1.05;
      case "vertical" -> 1.3;
      case "overhead" -> 1.4;
      default -> throw new AssertionError(position);
    };
  }

  /** PERT mean of the catalog's three values, rust 1.15; two rails. */
  @ParameterizedTest
  @CsvSource({"strip-out, 4.983", "notch-rail, 14.95"})
  void hours(String operation, double meanHours) {
    Tree line = quote.entry("hours.operations", "operation", operation);
    assertEquals(meanHours, line.number("mean_h"), 1e-3);
  }

  /**
   * Rate: EMDG198, pp. 22-23. Wheel rate: Barton and Fieldhouse 2018, eq. 3.33. Frequency:
   * Gillespie 1992 ch. 5, from memory. The page rounds the spring's height to 1/100 in.
   */
  @Test
  void wheelRateAndRideFrequency() {
    Tree spring = check.entry("layout.parts", "name", "spring-left");
    assertEquals(-4.375, inches(spring.list("frame").get(0).number()), LENGTH_IN);
    assertEquals(6.535, inches(spring.number("length_mm")), 0.03);
    Tree left = check.entry("layout.ride.springs", "name", "spring-left");
    Tree right = check.entry("layout.ride.springs", "name", "spring-right");
    assertEquals(674.9, left.number("load_N") / POUND_N, 0.5);
    assertEquals(661.1, right.number("load_N") / POUND_N, 0.5);
    assertEquals(56.0, left.number("pressure_MPa") * INCH_MM * INCH_MM / POUND_N, 0.2);
    assertEquals(54.9, right.number("pressure_MPa") * INCH_MM * INCH_MM / POUND_N, 0.2);
    assertEquals(212.7, ride("wheel_rate_N_per_mm") / LB_PER_INCH_N_PER_MM, 0.5);
    assertEquals(1.743, ride("ride_frequency_Hz"), 0.002);
  }

  /** Parallel-axis theorem; the strip with its area times the cosine of its slope cubed. */
  @Test
  void whatTheNotchLeavesOfTheRail() {
    assertEquals(0.951, check.entry("checks", "check", "rail-modulus").number("value"), 1e-3);
  }

  /** Gillespie 1992 ch. 6, from memory; Barton and Fieldhouse 2018, p. 225. */
  @Test
  void armsOfTheAirSprings() {
    Tree found = check.entry("checks", "check", "mount-strength");
    assertEquals(1.715, found.number("value"), 3e-3);
    assertTrue(found.text("where").startsWith("air spring arm, left"), found.text("where"));
  }

  @Test
  void rollOfTheBody() {
    assertEquals(8.77, ride("roll_deg_per_g"), 0.05);
    assertEquals(57.6, ride("rear_load_transfer_percent"), 0.2);
  }

  @ParameterizedTest
  @CsvSource({
    "'DOM 1020 round tube 1 1/2 x .120 in, 144 in stick', 138.13",
    "'bushed end, 3/4-16 shank, 9/16 in bolt', 247.00",
    "strip out the old rear suspension, 522.90"
  })
  void priceLines(String title, BigDecimal price) {
    assertEquals(price, quote.entry("price.lines", "title", title).amount("price").setScale(2));
  }

  /** Tax of steel and parts: Streamlined Sales and Use Tax Agreement, section 324. */
  @Test
  void fromTheClassesToTheBalance() {
    BigDecimal taxable = total("steel").add(total("parts"));
    BigDecimal subtotal =
        taxable
            .add(total("shop supplies"))
            .add(total("outside work"))
            .add(total("freight and charges"))
            .add(total("labour"))
            .add(total("contingency"));
    BigDecimal tax = cents(taxable.multiply(new BigDecimal("0.0725")));
    BigDecimal total = subtotal.add(tax);
    BigDecimal deposit = cents(total.multiply(new BigDecimal("0.5")));
    assertEquals(subtotal, quote.amount("price.subtotal"));
    assertEquals(taxable, quote.amount("price.taxable"));
    assertEquals(tax, quote.amount("price.tax"));
    assertEquals(total, quote.amount("price.total"));
    assertEquals(deposit, quote.amount("price.deposit"));
    assertEquals(total.subtract(deposit), quote.amount("price.balance"));
  }

  private static BigDecimal total(String costClass) {
    BigDecimal total = BigDecimal.ZERO;
    for (Tree line : quote.list("price.lines")) {
      if (line.text("class").equals(costClass)) {
        total = total.add(line.amount("price"));
      }
    }
    return total;
  }

  private static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP);
  }
}
