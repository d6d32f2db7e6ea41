package trammel.brackets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.brackets.SampleBars.HOLE_MM;
import static trammel.brackets.SampleBars.NOSE_MM;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.assembly.SeamRun;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.MemberStress;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockMounting;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.LoadedMember;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.quantity.Phrase;
import trammel.trade.welding.WeldSeam;

/**
 * Every plate, tube, seam and bolt of a crossmember and of a pair of shock mounts, worked by hand
 * on the rails and the axle of the bar brackets: inner faces 390 mm from the middle, underside 450,
 * top 600 mm up. Crossmembers are square tube 50 x 3 mm: outside corners of 6 mm, so 152 + 12 pi mm
 * round and 38 mm flat. Fillets are the smallest that AWS D1.1 allows on the thinner part: 1/8 in
 * up to 1/4 in, but no more than the part is thick.
 */
class MountTablesTest {
  private static final double ROUND_MM = 152 + 12 * Math.PI;
  private static final double EIGHTH_MM = 3.175;

  private static WorkPlan crossmember(Rails rails, double upMm) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new Crossmember("tube", rails, SampleBars.mountStock(), 800, upMm)
        .addTo(plan, Phrase.of("carries something"));
    return RailClosings.closed(plan.build(), rails, Optional.empty());
  }

  private static double quantity(WorkPlan plan, String key) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(key))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  @Test
  void crossmemberBetweenClosedRails() {
    WorkPlan plan = crossmember(SampleBasis.rails(true), 500);
    new PinnedPlan(plan)
        .tube("tube", 1, 780)
        .seam("tube to rail", 2, ROUND_MM, 3, 775, 825, -390, 390, 475, 525)
        .lies("tube", 775, 825, -390, 390, 475, 525)
        .nothingElse();
    assertEquals(1, quantity(plan, "saw-tube"));
    assertEquals(1, quantity(plan, "fit-shock-crossmember"));
    assertEquals(0, quantity(plan, "fit-local-boxing"));
  }

  /** Each plate reaches 2 in past the tube; 1/16 in of gap to each flange, 142 mm apart inside. */
  @Test
  void crossmemberBetweenChannelsClosesThem() {
    WorkPlan plan = crossmember(SampleBasis.rails(false), 500);
    double runMm = 50 + 2 * 50.8;
    double highMm = 142 - 2 * 1.5875;
    Sketch boxing =
        new Sketch()
            .corner(0, -1.5875)
            .corner(runMm, -1.5875)
            .corner(runMm, -1.5875 - highMm)
            .corner(0, -1.5875 - highMm);
    new PinnedPlan(plan)
        .tube("tube", 1, 780)
        .plate("tube boxing plate", 2, 5, boxing)
        .seam(
            "tube boxing plate to flanges",
            4,
            runMm,
            EIGHTH_MM,
            800 - runMm / 2,
            800 + runMm / 2,
            -390,
            390,
            454 + 1.5875,
            596 - 1.5875)
        .seam("tube to rail", 2, ROUND_MM, 3, 775, 825, -390, 390, 475, 525)
        .nothingElse();
    assertEquals(2, quantity(plan, "fit-local-boxing"));
    assertEquals(2, quantity(plan, "dress-plate"));
  }

  /** Middle 100 mm over the rails: the tube's underside 75 mm over them, legs lap them by 4 in. */
  @Test
  void crossmemberOverTheRailsStandsOnLegs() {
    WorkPlan plan = crossmember(SampleBasis.rails(true), 700);
    new PinnedPlan(plan)
        .tube("tube", 1, 780)
        .tube("tube leg", 2, 101.6 + 75)
        .seam("tube leg to rail", 2, 2 * 101.6 + 50, 3, 775, 825, -390, 390, 600 - 101.6, 600)
        .seam("tube to leg", 2, ROUND_MM, 3, 775, 825, -390, 390, 675, 675)
        .lies("tube", 775, 825, -390, 390, 675, 725)
        .lies("tube leg, left", 775, 825, 340, 390, 600 - 101.6, 675)
        .lies("tube leg, right", 775, 825, -390, -340, 600 - 101.6, 675)
        .nothingElse();
    assertEquals(3, quantity(plan, "saw-tube"));
  }

  @Test
  void crossmemberUnderTheRailsHangsOnLegs() {
    new PinnedPlan(crossmember(SampleBasis.rails(true), 400))
        .tube("tube", 1, 780)
        .tube("tube leg", 2, 101.6 + 25)
        .seam("tube leg to rail", 2, 2 * 101.6 + 50, 3, 775, 825, -390, 390, 450, 450 + 101.6)
        .seam("tube to leg", 2, ROUND_MM, 3, 775, 825, -390, 390, 425, 425)
        .lies("tube leg, left", 775, 825, 340, 390, 425, 450 + 101.6)
        .nothingElse();
  }

  /** Legs lap a rail of 70 mm over its whole depth. */
  @Test
  void legsLapAShallowRailWhole() {
    Rails shallow = new Rails(true, 900, 900, 450, 450, 700, 70, 60, 4, 0);
    new PinnedPlan(crossmember(shallow, 600))
        .tube("tube leg", 2, 70 + 55)
        .seam("tube leg to rail", 2, 2 * 70 + 50, 3, 775, 825, -390, 390, 450, 520);
  }

  /** Middle 15 mm under the rails' top: 40 mm of each side and the underside meet them. */
  @Test
  void crossmemberAcrossTheTopIsWeldedWhereItMeetsTheRails() {
    new PinnedPlan(crossmember(SampleBasis.rails(true), 585))
        .seam("tube to rail", 2, 2 * 40 + 50, 3, 775, 825, -390, 390, 560, 600);
  }

  @Test
  void crossmemberAcrossTheUndersideIsWeldedWhereItMeetsTheRails() {
    new PinnedPlan(crossmember(SampleBasis.rails(true), 465))
        .seam("tube to rail", 2, 2 * 40 + 50, 3, 775, 825, -390, 390, 450, 490);
  }

  /** Half of its ends would hold it by little weld: it stands on legs, and they on the rails. */
  @Test
  void crossmemberThatGrazesTheRailsStandsOnLegs() {
    WorkPlan plan = crossmember(SampleBasis.rails(true), 600);
    new PinnedPlan(plan)
        .tube("tube", 1, 780)
        .tube("tube leg", 2, 101.6 - 25)
        .seam("tube to leg", 2, ROUND_MM, 3, 775, 825, -390, 390, 575, 575)
        .lies("tube leg, left", 775, 825, 340, 390, 600 - 101.6, 575);
    // Both edges of the leg and, over it, of the tube's end, as long as the lap, and the foot.
    assertEquals(2 * (2 * 101.6 + 50), weldedMm(plan, "tube leg to rail"), 1e-9);
    String why = plan.tubes().get(1).why().in(SampleBasis.PRINT);
    assertTrue(why.contains("only " + SampleBasis.PRINT.length(25)), why);
    new PinnedPlan(crossmember(SampleBasis.rails(true), 450))
        .tube("tube leg", 2, 101.6 - 25)
        .lies("tube leg, left", 775, 825, 340, 390, 475, 450 + 101.6);
  }

  private static double weldedMm(WorkPlan plan, String seam) {
    return plan.welds().stream()
        .filter(weld -> weld.name().equals(seam))
        .mapToDouble(WeldSeam::totalLengthMm)
        .sum();
  }

  /** Rails 20 mm a side wider apart over 700 mm: cut to the wider edge, ends off square. */
  @Test
  void crossmemberIsCutToTheWiderEdge() {
    Rails tapered = new Rails(true, 900, 940, 450, 450, 700, 150, 60, 4, 0);
    Crossmember crossmember = new Crossmember("tube", tapered, SampleBars.mountStock(), 350, 500);
    // 390 mm at the axle, 400 at 350 ahead, 1 in 35 more; the wider edge is 25 mm ahead.
    assertEquals(2 * (400 + 25 / 35.0), crossmember.cutLengthMm(), 1e-9);
    assertEquals(Math.atan(1 / 35.0), crossmember.endAngleRad(), 1e-9);
  }

  /** On rails that open by 1 in 35 the ends and their welds follow the rails. */
  @Test
  void crossmemberFollowsTheTaper() {
    Rails tapered = new Rails(true, 900, 940, 450, 450, 700, 150, 60, 4, 0);
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new Crossmember("tube", tapered, SampleBars.mountStock(), 350, 500)
        .addTo(plan, Phrase.of("carries something"));
    double flat = Math.cos(Math.atan(1 / 35.0));
    new PinnedPlan(plan.build())
        .seam(
            "tube to rail",
            2,
            ROUND_MM,
            3,
            350 - 25 * flat,
            350 + 25 * flat,
            -400 - 25 * flat / 35,
            400 + 25 * flat / 35,
            475,
            525);
    String ends = plan.build().tubes().get(0).ends().in(SampleBasis.PRINT);
    assertTrue(ends.contains(SampleBasis.PRINT.angle(Math.atan(1 / 35.0))), ends);
    String square =
        crossmember(SampleBasis.rails(true), 500).tubes().get(0).ends().in(SampleBasis.PRINT);
    assertEquals("both ends square", square);
  }

  @Test
  void reasonsOfACrossmemberSayWhereItLies() {
    String between =
        crossmember(SampleBasis.rails(true), 500).tubes().get(0).why().in(SampleBasis.PRINT);
    assertTrue(between.contains(SampleBasis.PRINT.length(800) + " ahead of the axle"), between);
    String over =
        crossmember(SampleBasis.rails(true), 700).tubes().get(1).why().in(SampleBasis.PRINT);
    assertTrue(over.contains(SampleBasis.PRINT.length(100) + " above the rails' top"), over);
    String under =
        crossmember(SampleBasis.rails(true), 400).tubes().get(1).why().in(SampleBasis.PRINT);
    assertTrue(under.contains(SampleBasis.PRINT.length(50) + " below the rails' underside"), under);
    WorkPlan.Builder behind = new WorkPlan.Builder();
    new Crossmember("tube", SampleBasis.rails(true), SampleBars.mountStock(), -300, 500)
        .addTo(behind, Phrase.of("carries something"));
    String why = behind.build().tubes().get(0).why().in(SampleBasis.PRINT);
    assertTrue(why.contains(SampleBasis.PRINT.length(300) + " behind the axle"), why);
  }

  /** Welded to the rail where it is closed, to plate and rail where a plate closes it. */
  @Test
  void crossmemberNamesWhatItIsWeldedTo() {
    assertEquals(List.of("left rail"), onto(crossmember(SampleBasis.rails(true), 500)));
    assertEquals(
        List.of("tube boxing plate, left", "left rail"),
        onto(crossmember(SampleBasis.rails(false), 500)));
  }

  private static List<String> onto(WorkPlan plan) {
    return plan.welds().stream()
        .filter(seam -> seam.name().equals("tube to rail"))
        .map(seam -> ((SeamRun) seam.runs().get(0)).onto())
        .findFirst()
        .orElseThrow();
  }

  /**
   * Shocks that lean inward by 10 degrees lean their plates. The plate 22.5 mm farther out meets
   * the level tube lower, so its hole is 22.5 tan 10 higher over it; the inner one's is as much
   * lower.
   */
  @Test
  void leaningShocksLeanTheirPlates() {
    double leanRad = Math.toRadians(10);
    Shock shock = new Shock("shock", "shock", 300, 450, 30, false, SampleBars.BOLT_MM, 40);
    Point3 lower = new Point3(-120, 330, 308);
    Point3 upper = new Point3(-120, 330 - 342 * Math.sin(leanRad), 308 + 342 * Math.cos(leanRad));
    ShockUnit left = new ShockUnit("shock-left", upper, lower, 30, 300, 450);
    ShockUnit right =
        new ShockUnit("shock-right", upper.mirrored(), lower.mirrored(), 30, 300, 450);
    WorkPlan.Builder builder = new WorkPlan.Builder();
    new ShockMounting(
            "shock",
            SampleBars.basis(true).chassis(),
            left,
            right,
            shock,
            30,
            SampleBars.mountStock())
        .addTo(builder);
    PinnedPlan plan = new PinnedPlan(builder.build());
    for (int outer : new int[] {1, -1}) {
      double upMm = -60 / Math.cos(leanRad) + outer * 22.5 * Math.tan(leanRad);
      double towards = 180 + Math.toDegrees(Math.atan2(-upMm, 120));
      plan.plate(
          "shock lower bracket " + (outer > 0 ? "outer" : "inner"),
          2,
          5,
          new Sketch()
              .cornerAt(38, towards - 60)
              .cornerAt(43, towards - 60)
              .cornerAt(38, towards + 60)
              .cornerAt(43, towards + 60)
              .lessSegment(38, 120)
              .nose(-120, upMm, NOSE_MM, HOLE_MM));
    }
  }

  /**
   * Upright shocks 120 mm behind the axle, lower eyes 60 mm under its centre, 342 mm eye to eye, 60
   * mm thick, eyes 40 mm wide. The crossmember's face is 30 mm and 1/2 in of air behind the eyes.
   */
  @Test
  void uprightShocks() {
    Shock shock = new Shock("shock", "shock", 300, 450, 30, false, SampleBars.BOLT_MM, 40);
    ShockUnit left =
        new ShockUnit(
            "shock-left", new Point3(-120, 330, 650), new Point3(-120, 330, 308), 30, 300, 450);
    ShockUnit right =
        new ShockUnit("shock-right", left.frame().mirrored(), left.axle().mirrored(), 30, 300, 450);
    WorkPlan.Builder builder = new WorkPlan.Builder();
    new ShockMounting(
            "shock",
            SampleBars.basis(true).chassis(),
            left,
            right,
            shock,
            30,
            SampleBars.mountStock())
        .addTo(builder);
    WorkPlan plan = builder.build();
    double towards = 180 + Math.toDegrees(Math.atan2(60, 120));
    Sketch lower =
        new Sketch()
            .cornerAt(38, towards - 60)
            .cornerAt(43, towards - 60)
            .cornerAt(38, towards + 60)
            .cornerAt(43, towards + 60)
            .lessSegment(38, 120)
            .nose(-120, -60, NOSE_MM, HOLE_MM);
    Sketch tab =
        new Sketch()
            .corner(-19, 0)
            .corner(19, 0)
            .corner(-19, 5)
            .corner(19, 5)
            .nose(0, 42.7, NOSE_MM, HOLE_MM);
    Sketch strut = new Sketch().nose(0, 0, NOSE_MM, HOLE_MM).nose(342, 0, NOSE_MM, HOLE_MM);
    double startRad = Math.toRadians(towards - 60);
    double endRad = Math.toRadians(towards + 60);
    double tubeMm = -120 - 42.7 - 25;

    new PinnedPlan(plan)
        .plate("shock lower bracket outer", 2, 5, lower)
        .plate("shock lower bracket inner", 2, 5, lower)
        .plate("shock upper tab", 4, 5, tab)
        .plate("shock mock-up strut", 2, 5, strut)
        .tube("shock crossmember", 1, 780)
        .tube("shock crossmember leg", 2, 101.6 + 25)
        .seam(
            "shock lower bracket to axle tube",
            8,
            38 * 2 * Math.PI / 3,
            5,
            -38,
            38 * Math.cos(endRad),
            -355,
            355,
            368 + 38 * Math.sin(endRad),
            368 + 38 * Math.sin(startRad))
        .seam(
            "shock upper tab to crossmember",
            4,
            2 * (38 + 5),
            3,
            -162.7,
            -162.7,
            -355,
            355,
            631,
            669)
        .seam(
            "shock crossmember leg to rail",
            2,
            2 * 101.6 + 50,
            3,
            tubeMm - 25,
            tubeMm + 25,
            -390,
            390,
            600 - 101.6,
            600)
        .seam(
            "shock crossmember to leg",
            2,
            ROUND_MM,
            3,
            tubeMm - 25,
            tubeMm + 25,
            -390,
            390,
            625,
            625)
        .stands("shock upper tab, left, outer", -162.7, -120 + NOSE_MM, 350, 355, 630.95, 669.05)
        .stands("shock upper tab, left, inner", -162.7, -120 + NOSE_MM, 305, 310, 630.95, 669.05)
        .stands("shock upper tab, right, outer", -162.7, -120 + NOSE_MM, -355, -350, 630.95, 669.05)
        .stands(
            "shock mock-up strut, left",
            -120 - NOSE_MM,
            -120 + NOSE_MM,
            327.5,
            332.5,
            308 - NOSE_MM,
            650 + NOSE_MM)
        .bolts(4, 50)
        .nothingElse();
    for (String side : new String[] {"left", "right"}) {
      int sign = side.equals("left") ? 1 : -1;
      double[] outer = new PlanRoom(plan).plate("shock lower bracket outer, " + side);
      double[] inner = new PlanRoom(plan).plate("shock lower bracket inner, " + side);
      assertEquals(352.5, sign * (outer[2] + outer[3]) / 2, 1e-6);
      assertEquals(307.5, sign * (inner[2] + inner[3]) / 2, 1e-6);
    }
    assertEquals(4, quantity(plan, "fit-shock-mount"));
    assertEquals(8, quantity(plan, "drill-plate"));
    assertEquals(8, quantity(plan, "dress-plate"));
  }

  /**
   * Two equal loads of 1,500 lb, each 8 in from the end of a beam of 36 in with pinned ends bend it
   * by 12,000 lb in: P a, as handbooks of beams have it. Here 780 mm from rail to rail, 190 mm from
   * the middle, so 200 mm from the rail: 200 Nmm for a newton on each side.
   */
  @Test
  void aCrossmemberIsBentByWhatHangsOnIt() {
    Crossmember tube =
        new Crossmember("tube", SampleBasis.rails(true), SampleBars.mountStock(), 800, 500);
    WorkPlan.Builder plan = new WorkPlan.Builder();
    tube.addLoads(plan, "left", "right", 190, 0, 0);
    LoadedMember member = plan.build().members().get(0);
    double both = member.stressPerN().get("left") + member.stressPerN().get("right");
    // Square tube 50 x 3, its wall at 0.93 of 3 mm, corners counted square: up to 8 % too stiff.
    double inside = 50 - 2 * 0.93 * 3;
    double modulus = (Math.pow(50, 4) - Math.pow(inside, 4)) / 12 / 25;
    assertEquals(200 / modulus, both, 0.08 * both);
    assertTrue(both > 200 / modulus, "rounded corners are weaker");
    // The tube, and the weld of each of its ends.
    assertEquals(3, plan.build().members().size());
  }

  /**
   * Rails 780 mm apart, their top at 600: a tube at 700 stands on plates that lap them by 4 in,
   * reach 25 + 9.525 mm past its middle and are 25.4 mm wider than it on each side.
   */
  @Test
  void platesUnderACrossmemberLieFlatOnTheRails() {
    MountStock stock = SampleBars.mountStock().on(Legs.PLATE);
    Crossmember tube = new Crossmember("tube", SampleBasis.rails(true), stock, 800, 700);
    WorkPlan.Builder builder = new WorkPlan.Builder();
    tube.addTo(builder, Phrase.of("carries something"));
    WorkPlan plan = builder.build();

    assertEquals(780 - 2 * stock.plateMm(), tube.cutLengthMm(), 1e-9);
    assertEquals(1, plan.tubes().size(), "no leg is sawn");
    PlateNeed leg = plan.plates().get(0);
    assertEquals(2, leg.quantity());
    assertEquals(50 + 2 * 25.4, leg.plate().outline().bounds().widthMm(), 1e-9);
    assertEquals(101.6 + 100 + 25 + 9.525, leg.plate().outline().bounds().heightMm(), 1e-9);
    List<Box> room = tube.room();
    assertEquals(stock.plateMm(), 2 * room.get(1).halfWidthMm(), 1e-9);
  }

  /**
   * Two columns held at both ends that share a push H over a free height L are bent by H L/4 at
   * their ends, as handbooks of frames have it: 0.2 N over 100 mm, 5 Nmm on a plate 100.8 mm wide.
   */
  @Test
  void whatPushesAcrossBendsPlatesFlatwise() {
    MountStock stock = SampleBars.mountStock().on(Legs.PLATE);
    Crossmember tube = new Crossmember("tube", SampleBasis.rails(true), stock, 800, 700);

    double more = legStress(tube, 0.2) - legStress(tube, 0);

    assertEquals(5 * 6 / (100.8 * Math.pow(stock.plateMm(), 2)), more, 1e-9);
  }

  private static double legStress(Crossmember tube, double acrossShare) {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    tube.addLoads(plan, "left", "right", 190, 0, acrossShare);
    return plan.build().members().get(1).stressPerN().get("left");
  }

  /** What stands 60 mm off the tube's middle twists it: Bredt, T / (2 A t), with von Mises. */
  @Test
  void aCrossmemberIsTwistedByWhatStandsBesideIt() {
    double wall = 0.93 * 3;
    double shear = 60 / (2 * Math.pow(50 - wall, 2) * wall);
    assertEquals(
        Math.sqrt(3) * shear,
        MemberStress.tube(SampleBars.mountStock().section(), 0, 0, 60, 0),
        1e-9);
  }

  /** A tab 3 in deep and 1/4 in thick, 400 lb at 2.5 in: 2,667 psi, 6 M / (b t²) turned. */
  @Test
  void aTabIsBentAtItsRoot() {
    assertEquals(2667, MemberStress.plate(400 * 2.5, 0.25, 3), 1);
  }

  /**
   * Two plates 10 x 100 under one of 100 x 10: areas 2,000 and 1,000, middle (2,000 x 50 + 1,000 x
   * 105) / 3,000 = 68.33; I = 1,666,667 + 2,000 x 18.33² + 8,333 + 1,000 x 36.67² = 3,691,667; for
   * 1e6 Nmm 1e6 x 68.33 / 3,691,667 = 18.51 MPa.
   */
  @Test
  void aSeatStiffensTheArmsUnderIt() {
    assertEquals(18.51, MemberStress.pairUnderPlate(1e6, 10, 100, 100), 0.005);
  }
}
