package trammel.brackets;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.brackets.SampleBars.HOLE_MM;
import static trammel.brackets.SampleBars.NOSE_MM;
import static trammel.brackets.SampleBars.REACH_MM;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.assembly.SeamRun;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.barend.AxleBracket;
import trammel.brackets.barend.CrossmemberTabs;
import trammel.brackets.barend.HousingBridge;
import trammel.brackets.barend.InboardFrameBracket;
import trammel.brackets.barend.LateralBarBrackets;
import trammel.brackets.barend.Outrigger;
import trammel.brackets.barend.RailSeat;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.clearance.Box;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;

/**
 * Every plate, seam, bolt and foot of each bracket that holds a bar, worked by hand. The rails are
 * 150 x 60 x 4 mm, straight and level, 900 mm over both, their underside 450 mm up: outer face at
 * 450, inner face at 390 mm; their flat begins 4 + 6.35 mm from each edge, 460.35 to 589.65 mm up.
 * The axle tube is 76 mm across with a wall of 6 mm, its centre 368 mm up, the housing ends 165 mm
 * from the middle. Bracket and boxing plate are 5 mm, welded with fillets as large as the thinner
 * edge below 1/4 in: 5 mm between them, 4 mm on the wall of a closed rail. Bases spread by 30
 * degrees to either side of the joint. All of this is common practice, no source.
 */
class BracketTablesTest {
  private static final double TAN_30 = 1 / Math.sqrt(3);

  /** One saddle of 120 degrees on the tube. */
  private static final double SADDLE_MM = 38 * 2 * Math.PI / 3;

  private static RailBoxing none(BracketBasis basis) {
    return RailBoxing.local(List.of(), basis);
  }

  private static RailSeat seat(BarMaking bar, BracketBasis basis) {
    return RailSeat.of(bar.bar(), bar.frameSeat(), basis.rails());
  }

  private static WorkPlan inboard(Point3 joint, BracketBasis basis) {
    BarMaking bar = SampleBars.along("bar", joint, new Point3(0, joint.yMm(), 288));
    return new InboardFrameBracket(bar, seat(bar, basis), basis).plan(none(basis));
  }

  /** A plate that stands on the tube: foot of 5 mm at both ends of the saddle. */
  private static Sketch saddle(double towardsDegrees) {
    return new Sketch()
        .cornerAt(38, towardsDegrees - 60)
        .cornerAt(43, towardsDegrees - 60)
        .cornerAt(38, towardsDegrees + 60)
        .cornerAt(43, towardsDegrees + 60)
        .lessSegment(38, 120);
  }

  /** A plate under a rail: land of 5 mm at both ends of the base, lap beyond it. */
  private static Sketch underRail(double baseMm, double lapMm, double dropMm) {
    return new Sketch()
        .corner(-baseMm / 2, -5)
        .corner(baseMm / 2, -5)
        .corner(baseMm / 2, lapMm)
        .corner(-baseMm / 2, lapMm)
        .nose(0, -dropMm, NOSE_MM, HOLE_MM);
  }

  /** 80 mm under the axle's centre; plates 25 to 30 mm either side of the bar. */
  @Test
  void axleBracket() {
    BarMaking bar = SampleBars.along("bar", new Point3(610, 300, 288), new Point3(0, 300, 288));
    WorkPlan plan = new AxleBracket(bar, SampleBars.basis(true)).plan();
    double halfMm = 38 * Math.sqrt(3) / 2;
    double halfFootMm = 43 * Math.sqrt(3) / 2;

    new PinnedPlan(plan)
        .plate("bar axle bracket side", 2, 5, saddle(-90).nose(0, -80, NOSE_MM, HOLE_MM))
        .seam("bar axle bracket to tube", 4, SADDLE_MM, 5, -halfMm, halfMm, 270, 330, 330, 349)
        .stands("bar axle bracket side, outer", -halfFootMm, halfFootMm, 325, 330, 268.95, 349)
        .stands("bar axle bracket side, inner", -halfFootMm, halfFootMm, 270, 275, 268.95, 349)
        .bolts(1, 60)
        .feet(1, 4 * SADDLE_MM)
        .foot("bar axle bracket to tube", -halfMm, halfMm, 300, 300, 330, 349)
        .nothingElse();
  }

  /** Up and ahead at 45 degrees the plate turns with its joint. */
  @Test
  void axleBracketTurnsToItsJoint() {
    BarMaking bar = SampleBars.along("bar", new Point3(610, -300, 428), new Point3(60, -300, 428));
    WorkPlan plan = new AxleBracket(bar, SampleBars.basis(true)).plan();

    new PinnedPlan(plan)
        .plate("bar axle bracket side", 2, 5, saddle(45).nose(60, 60, NOSE_MM, HOLE_MM))
        // From 15 degrees under the level to 15 degrees past the upright.
        .seam(
            "bar axle bracket to tube",
            4,
            SADDLE_MM,
            5,
            -38 * Math.sin(Math.toRadians(15)),
            38,
            -330,
            -270,
            368 - 38 * Math.sin(Math.toRadians(15)),
            406);
  }

  /**
   * Joint 350 mm up hangs 110.35 mm under the lowest flat; the plates lap by half of that, 55.175
   * mm. Their outside is 12.7 mm off the rail, closed by strips. The web ends 31.35 mm above the
   * joint.
   */
  @Test
  void inboardFrameBracket() {
    WorkPlan plan = inboard(new Point3(610, 347.3, 350), SampleBars.basis(true));
    double baseMm = 2 * (NOSE_MM + 110.35 * TAN_30);
    double lapMm = 55.175;
    double rear = 610 - baseMm / 2;
    double front = 610 + baseMm / 2;
    double edgesMm = baseMm + 2 * lapMm;

    new PinnedPlan(plan)
        .plate("bar frame bracket side", 2, 5, underRail(baseMm, lapMm, 110.35))
        .plate("bar frame bracket web", 1, 5, Sketch.rectangle(50, 79))
        .plate("bar frame bracket bridge", 1, 5, Sketch.rectangle(baseMm, 50))
        .plate("bar stand-off upright, rear", 1, 5, Sketch.rectangle(lapMm - 5, 12.7))
        .plate("bar stand-off upright, front", 1, 5, Sketch.rectangle(lapMm - 5, 12.7))
        .plate("bar stand-off cap", 1, 5, Sketch.rectangle(baseMm, 12.7))
        .seam(
            "bar frame bracket web to both sides",
            4,
            79,
            5,
            607.5,
            612.5,
            322.3,
            372.3,
            381.35,
            460.35)
        .seam(
            "bar frame bracket bridge to both sides",
            2,
            baseMm,
            5,
            rear,
            front,
            322.3,
            372.3,
            465.35,
            465.35)
        .seam(
            "bar stand-off to bracket side",
            1,
            edgesMm,
            5,
            rear,
            front,
            377.3,
            377.3,
            460.35,
            515.525)
        .seam("bar frame bracket to rail", 1, edgesMm, 4, rear, front, 390, 390, 460.35, 515.525)
        .stands("bar frame bracket side, outer", rear, front, 372.3, 377.3, 330.95, 515.525)
        .stands("bar frame bracket side, inner", rear, front, 317.3, 322.3, 330.95, 515.525)
        .stands("bar frame bracket web", 607.5, 612.5, 322.3, 372.3, 381.35, 460.35)
        .stands("bar frame bracket bridge", rear, front, 322.3, 372.3, 460.35, 465.35)
        .stands("bar stand-off upright, rear", rear, rear + 5, 377.3, 390, 460.35, 510.525)
        .stands("bar stand-off upright, front", front - 5, front, 377.3, 390, 460.35, 510.525)
        .stands("bar stand-off cap", rear, front, 377.3, 390, 510.525, 515.525)
        .bolts(1, 60)
        .feet(1, edgesMm)
        .foot("bar frame bracket to rail", rear, front, 390, 390, 460.35, 515.525)
        .nothingElse();
  }

  /** On the channel the bracket is welded to the plate of 5 mm that closes it. */
  @Test
  void inboardFrameBracketOnAChannelIsWeldedToItsBoxingPlate() {
    WorkPlan plan = inboard(new Point3(610, 347.3, 350), SampleBars.basis(false));
    double baseMm = 2 * (NOSE_MM + 110.35 * TAN_30);
    new PinnedPlan(plan)
        .seam(
            "bar frame bracket to rail",
            1,
            baseMm + 2 * 55.175,
            5,
            610 - baseMm / 2,
            610 + baseMm / 2,
            390,
            390,
            460.35,
            515.525);
  }

  /** Joint 420 mm up: 40.35 mm of drop leave a lap of 2 in and 9 mm, too little for a web. */
  @Test
  void aShortInboardBracketLapsTwoInchesAndHasNoWeb() {
    WorkPlan plan = inboard(new Point3(610, 347.3, 420), SampleBars.basis(true));
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    new PinnedPlan(plan).plate("bar frame bracket side", 2, 5, underRail(baseMm, 50.8, 40.35));
    assertTrue(plan.plates().stream().noneMatch(plate -> plate.plate().name().contains("web")));
  }

  /** A web of 1 in is cut, one that is shorter is not: joint at 403.6 or at 403.7 mm. */
  @Test
  void aWebIsWorthCuttingFromOneInchOn() {
    WorkPlan with = inboard(new Point3(610, 347.3, 403.55), SampleBars.basis(true));
    WorkPlan without = inboard(new Point3(610, 347.3, 403.65), SampleBars.basis(true));
    new PinnedPlan(with).plate("bar frame bracket web", 1, 5, Sketch.rectangle(50, 25.45));
    assertEquals(with.plates().size() - 1, without.plates().size());
  }

  /** A bracket stands on a shallow rail as far as its flat goes: 60 less 2 x 10.35 mm. */
  @Test
  void theLapEndsWithTheFlat() {
    Rails shallow = new Rails(true, 900, 900, 450, 450, 700, 60, 60, 4, 0);
    WorkPlan plan = inboard(new Point3(610, 347.3, 420), SampleBars.basis(shallow));
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    new PinnedPlan(plan).plate("bar frame bracket side", 2, 5, underRail(baseMm, 39.3, 40.35));
  }

  /** 1/16 in is welded over, a little more gets strips; 1/16 in into the rail is ground off. */
  @Test
  void aGapOfASixteenthIsWeldedOver() {
    BracketBasis basis = SampleBars.basis(true);
    WorkPlan over = inboard(new Point3(610, 360 - 1.58, 420), basis);
    WorkPlan strips = inboard(new Point3(610, 360 - 1.6, 420), basis);
    assertEquals(2, over.plates().size(), "sides, bridge");
    assertEquals(5, strips.plates().size(), "sides, bridge and three strips");
    assertTrue(over.welds().stream().noneMatch(seam -> seam.name().contains("stand-off")));
    assertDoesNotThrow(() -> inboard(new Point3(610, 360 + 1.58, 420), basis));
    UnworkableLayoutException refused =
        assertThrows(
            UnworkableLayoutException.class, () -> inboard(new Point3(610, 360 + 1.6, 420), basis));
    assertTrue(
        refused.reason().in(SampleBasis.PRINT).contains("into the rail"),
        refused.reason().in(SampleBasis.PRINT));
  }

  /**
   * Rails that close by 6 mm a side over 600 mm: 1 mm in 100. Over a base of 84.69 mm the gap goes
   * from 1.4235 mm at the rear to 0.5765 mm in front, where the strip is ground to fit from 1 mm.
   */
  @Test
  void stripsFollowTheTaperAndAreNeverUnderAMillimetre() {
    Rails tapered = new Rails(true, 900, 888, 450, 450, 600, 150, 60, 4, 0);
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    WorkPlan plan = inboard(new Point3(600, 384 - 30 - 1.3, 420), SampleBars.basis(tapered));
    double rearMm = 1.3 + baseMm / 200;
    new PinnedPlan(plan)
        .plate("bar stand-off upright, rear", 1, 5, Sketch.rectangle(45.8, rearMm))
        .plate("bar stand-off upright, front", 1, 5, Sketch.rectangle(45.8, 1))
        .plate(
            "bar stand-off cap",
            1,
            5,
            new Sketch().corner(0, 0).corner(baseMm, 0).corner(baseMm, 1).corner(0, rearMm));
  }

  /** Three holes 25.4 mm apart: the middle one is the layout's, the upper one needs the room. */
  @Test
  void aRowOfHolesMovesTheBracketUpByOnePitch() {
    BarMaking bar =
        SampleBars.along(
            "bar", new Point3(610, 347.3, 390), new Point3(0, 347.3, 288), new HoleRow(3, 25.4));
    BracketBasis basis = SampleBars.basis(true);
    WorkPlan plan = new InboardFrameBracket(bar, seat(bar, basis), basis).plan(none(basis));
    // The base spreads from the lowest hole, 70.35 + 25.4 mm under it.
    double baseMm = 2 * (NOSE_MM + 95.75 * TAN_30);
    Sketch sketch =
        new Sketch()
            .corner(-baseMm / 2, -5)
            .corner(baseMm / 2, -5)
            .corner(baseMm / 2, 50.8)
            .corner(-baseMm / 2, 50.8)
            .nose(0, -95.75, NOSE_MM, HOLE_MM)
            .nose(0, -70.35, NOSE_MM, HOLE_MM)
            .nose(0, -44.95, NOSE_MM, HOLE_MM);
    new PinnedPlan(plan).plate("bar frame bracket side", 2, 5, sketch);
    assertTrue(
        plan.plates().stream().noneMatch(plate -> plate.plate().name().contains("web")),
        "70.35 less 31.35 less 25.4 mm is under an inch");
  }

  /**
   * Joint 60 mm outside the rail: the shelf goes on by half of 60 mm of joint and plates. Gussets
   * as long as the shelf reaches, their corner cut out by 1/2 in, their tips one plate wide.
   */
  @Test
  void outrigger() {
    BarMaking bar = SampleBars.along("bar", new Point3(610, 510, 420), new Point3(0, 510, 288));
    BracketBasis basis = SampleBars.basis(true);
    Outrigger outrigger = Outrigger.outside(bar, seat(bar, basis), basis);
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    double rear = 610 - baseMm / 2;
    double front = 610 + baseMm / 2;
    Sketch gusset =
        new Sketch()
            .corner(0, 0)
            .corner(90, 0)
            .corner(90, 5)
            .corner(5, 90)
            .corner(0, 90)
            .less(Math.PI * 12.7 * 12.7 / 4);

    new PinnedPlan(outrigger.plan(none(basis)))
        .plate("bar frame bracket side", 2, 5, underRail(baseMm, 0, 40.35))
        .plate("bar outrigger shelf", 1, 5, Sketch.rectangle(baseMm, 90))
        .plate("bar outrigger gusset", 2, 5, gusset)
        .seam(
            "bar bracket sides to outrigger shelf",
            4,
            baseMm,
            5,
            rear,
            front,
            480,
            540,
            460.35,
            460.35)
        .seam("bar outrigger shelf to rail", 2, baseMm, 4, rear, front, 450, 450, 460.35, 465.35)
        .seam("bar outrigger gusset to rail", 4, 77.3, 4, rear, front, 450, 450, 478.05, 555.35)
        .seam("bar outrigger gusset to shelf", 4, 77.3, 5, rear, front, 462.7, 540, 465.35, 465.35)
        .stands("bar outrigger shelf", rear, front, 450, 540, 460.35, 465.35)
        .stands("bar outrigger gusset, front", front - 5, front, 450, 540, 465.35, 555.35)
        .stands("bar outrigger gusset, rear", rear, rear + 5, 450, 540, 465.35, 555.35)
        .bolts(1, 60)
        .feet(2, 4 * baseMm + 2 * baseMm + 4 * 77.3)
        .foot("bar bracket sides to outrigger shelf", rear, front, 482.5, 537.5, 460.35, 460.35)
        .foot("bar outrigger to rail", rear, front, 450, 450, 460.35, 550.35)
        .nothingElse();
    assertEquals(new Footprint(true, rear, front, "bar outrigger"), outrigger.footprint());
    assertTrue(outrigger.isOutside());
  }

  /** On the right, 35 mm outside: reach 65 mm. Corner and gussets stay in proportion. */
  @Test
  void outriggerOnTheRight() {
    BarMaking bar = SampleBars.along("bar", new Point3(610, -480, 420), new Point3(0, -480, 288));
    BracketBasis basis = SampleBars.basis(true);
    Outrigger outrigger = Outrigger.outside(bar, seat(bar, basis), basis);
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    new PinnedPlan(outrigger.plan(none(basis)))
        .plate("bar outrigger shelf", 1, 5, Sketch.rectangle(baseMm, 60))
        .seam(
            "bar outrigger gusset to shelf",
            4,
            60 - 12.7,
            5,
            610 - baseMm / 2,
            610 + baseMm / 2,
            -510,
            -462.7,
            465.35,
            465.35);
    assertEquals(
        new Footprint(false, 610 - baseMm / 2, 610 + baseMm / 2, "bar outrigger"),
        outrigger.footprint());
  }

  /** A bar that meets the inner face at 30 degrees in plan turns its bracket on the shelf. */
  @Test
  void turnedOutriggerIsAsLongAsItsShadowOnTheRail() {
    double cos = Math.sqrt(3) / 2;
    BarMaking bar =
        SampleBars.turned(
            "bar", new Point3(500, 300, 420), new Point3(500 - 400 * cos, 300 - 400 * 0.5, 420));
    BracketBasis basis = SampleBars.basis(true);
    Outrigger outrigger = Outrigger.turned(bar, seat(bar, basis), basis);
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    double lengthMm = baseMm * cos + 60 * 0.5;
    double reachMm = 90 + (baseMm * 0.5 + 60 * cos) / 2;
    new PinnedPlan(outrigger.plan(none(basis)))
        .plate("bar outrigger shelf", 1, 5, Sketch.rectangle(lengthMm, reachMm))
        .seam(
            "bar outrigger shelf to rail",
            2,
            lengthMm,
            4,
            500 - lengthMm / 2,
            500 + lengthMm / 2,
            390,
            390,
            460.35,
            465.35);
  }

  /**
   * Frame joint 37 mm inside the inner face and 32 mm under the rail. The foot is the flange of 60
   * mm less 6.35, the leg half the rail's depth, its top 1 in wide, the corner cut out by 1/2 in.
   * Three quarters of that round are cut out of metal, the fourth lies in the rail.
   */
  @Test
  void lateralBarOnTheFrame() {
    BarMaking bar =
        SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
    BracketBasis basis = SampleBars.basis(true);
    Sketch side =
        new Sketch()
            .corner(0, 75)
            .corner(25.4, 75)
            .corner(-53.65, 0)
            .corner(-53.65, -5)
            .nose(37, -32, NOSE_MM, HOLE_MM)
            .less(53.65 * 75 / 2)
            .less(0.75 * Math.PI * 12.7 * 12.7);
    double eachMm = 53.65 - 12.7 + 75 - 12.7;

    new PinnedPlan(new LateralBarBrackets(bar, basis).frame(none(basis)))
        .plate("bar frame bracket side", 2, 5, side)
        .seam("bar frame bracket to rail", 4, eachMm, 4, -180, -120, 390, 443.65, 450, 525)
        .stands("bar frame bracket side, front", -125, -120, 333.95, 443.65, 398.95, 525)
        .stands("bar frame bracket side, rear", -180, -175, 333.95, 443.65, 398.95, 525)
        .bolts(1, 60)
        .feet(1, 4 * eachMm)
        .foot("bar frame bracket to rail", -150, -150, 390, 443.65, 450, 525)
        .nothingElse();
    assertEquals(
        new Footprint(true, -180, -120, "bar frame bracket"),
        new LateralBarBrackets(bar, basis).footprint());
  }

  /**
   * Axle joint 150 mm behind and 50 mm over the axle. Face plates 25 to 30 mm either side of it, so
   * the arms reach 120 mm from the tube's centre; three quarters of the tube deep, 57 mm, their top
   * 31.35 mm under the joint.
   */
  @Test
  void lateralBarOnTheAxle() {
    BarMaking bar =
        SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
    double baseMm = 2 * (NOSE_MM + REACH_MM * TAN_30);
    double topMm = 50 - REACH_MM;
    double lowMm = topMm - 57;
    double towardsDegrees = Math.toDegrees(Math.atan2(topMm - 28.5, 120));
    double right = -300 - baseMm / 2;
    double left = -300 + baseMm / 2;
    double highRad = Math.toRadians(60 + towardsDegrees);
    double lowRad = Math.toRadians(60 - towardsDegrees);

    new PinnedPlan(new LateralBarBrackets(bar, SampleBars.basis(true)).axle())
        .plate("bar axle bracket face", 2, 5, underRail(baseMm, 57, REACH_MM))
        .plate(
            "bar axle bracket arm",
            2,
            5,
            saddle(towardsDegrees).corner(120, lowMm).corner(120, topMm))
        .plate("bar axle bracket bridge", 1, 5, Sketch.rectangle(baseMm, 50))
        .seam(
            "bar axle bracket arm to axle tube",
            4,
            SADDLE_MM,
            5,
            -38,
            -38 * Math.min(Math.cos(highRad), Math.cos(lowRad)),
            right,
            left,
            368 - 38 * Math.sin(lowRad),
            368 + 38 * Math.sin(highRad))
        .seam(
            "bar axle bracket arm to face plate",
            4,
            57,
            5,
            -120,
            -120,
            right,
            left,
            368 + lowMm,
            368 + topMm)
        .seam(
            "bar axle bracket bridge to face plates",
            4,
            baseMm,
            5,
            -175,
            -125,
            right,
            left,
            418 - REACH_MM - 5,
            418 - REACH_MM)
        .bolts(1, 60)
        .stands(
            "bar axle bracket face, front",
            -125,
            -120,
            right,
            left,
            418 - REACH_MM - 57,
            418 + NOSE_MM)
        .stands(
            "bar axle bracket face, rear",
            -180,
            -175,
            right,
            left,
            418 - REACH_MM - 57,
            418 + NOSE_MM)
        .stands(
            "bar axle bracket bridge", -175, -125, right, left, 418 - REACH_MM - 5, 418 - REACH_MM)
        // Of the saddles their height counts, seen along the vehicle.
        .feet(1, 4 * 2 * 38 * Math.sqrt(3) / 2)
        .foot(
            "bar axle bracket arms to axle tube",
            -19,
            -19,
            right + 2.5,
            left - 2.5,
            368 - 38 * Math.sqrt(3) / 2,
            368 + 38 * Math.sqrt(3) / 2)
        .nothingElse();
  }

  /** The near face plate clears the tube by one plate: 38 + 5 mm from its centre. */
  @Test
  void lateralBarKeepsItsFacePlateOffTheTube() {
    BracketBasis basis = SampleBars.basis(true);
    BarMaking near =
        SampleBars.across("bar", new Point3(-73, 353, 418), new Point3(-73, -300, 418));
    BarMaking close =
        SampleBars.across("bar", new Point3(-72.9, 353, 418), new Point3(-72.9, -300, 418));
    assertDoesNotThrow(() -> new LateralBarBrackets(near, basis).axle());
    assertThrows(
        UnworkableLayoutException.class, () -> new LateralBarBrackets(close, basis).axle());
  }

  /**
   * Two bars at 30 degrees in plan, their joints 200 mm over the axle's centre and 60 mm from the
   * middle, over a housing of 110 mm: deck 31.35 mm under the joints, webs down to 6.35 mm over the
   * housing, legs 165 to 225 mm out.
   */
  @Test
  void housingBridge() {
    double cos = Math.sqrt(3) / 2;
    BarMaking left =
        SampleBars.turned(
            "left", new Point3(400 * cos, 60 + 400 * 0.5, 540), new Point3(0, 60, 568));
    BarMaking right =
        SampleBars.turned(
            "right", new Point3(400 * cos, -60 - 400 * 0.5, 540), new Point3(0, -60, 568));
    WorkPlan plan = new HousingBridge(List.of(left, right), 110, SampleBars.basis(true)).plan();
    double baseMm = 2 * (NOSE_MM + REACH_MM * TAN_30);
    double widthMm = baseMm * cos + 60 * 0.5;
    double halfMm = widthMm / 2;
    double deckUpMm = 368 + 200 - REACH_MM;
    double undersideMm = deckUpMm - 5;
    double webMm = undersideMm - 368 - 110 - 6.35;
    double acrossBracketMm = (baseMm * 0.5 + 60 * cos) / 2;

    new PinnedPlan(plan)
        .plate("left axle bracket side", 2, 5, underRail(baseMm, 0, REACH_MM))
        .plate("right axle bracket side", 2, 5, underRail(baseMm, 0, REACH_MM))
        .plate("housing bridge deck", 1, 5, Sketch.rectangle(450, widthMm))
        .plate("housing bridge web", 2, 5, Sketch.rectangle(330, webMm))
        .plate(
            "housing bridge leg",
            4,
            5,
            saddle(0).corner(undersideMm - 368, -halfMm).corner(undersideMm - 368, halfMm))
        .seam(
            "left axle bracket to deck",
            4,
            baseMm,
            5,
            -halfMm,
            halfMm,
            60 - acrossBracketMm,
            60 + acrossBracketMm,
            deckUpMm,
            deckUpMm)
        .seam(
            "right axle bracket to deck",
            4,
            baseMm,
            5,
            -halfMm,
            halfMm,
            -60 - acrossBracketMm,
            -60 + acrossBracketMm,
            deckUpMm,
            deckUpMm)
        .seam(
            "housing bridge webs to deck",
            4,
            330,
            5,
            -halfMm,
            halfMm,
            -165,
            165,
            undersideMm,
            undersideMm)
        .seam(
            "housing bridge webs to legs",
            4,
            webMm,
            5,
            5 - halfMm,
            halfMm - 5,
            -165,
            165,
            undersideMm - webMm,
            undersideMm)
        .seam(
            "housing bridge leg to axle tube",
            8,
            SADDLE_MM,
            5,
            -38 * cos,
            38 * cos,
            -225,
            225,
            368 + 19,
            368 + 38)
        .seam(
            "housing bridge leg to deck",
            8,
            widthMm,
            5,
            -halfMm,
            halfMm,
            -225,
            225,
            undersideMm,
            undersideMm)
        .stands("housing bridge deck", -halfMm, halfMm, -225, 225, undersideMm, deckUpMm)
        .stands(
            "housing bridge web, front",
            halfMm - 5,
            halfMm,
            -165,
            165,
            undersideMm - webMm,
            undersideMm)
        .stands(
            "housing bridge web, rear",
            -halfMm,
            5 - halfMm,
            -165,
            165,
            undersideMm - webMm,
            undersideMm)
        .stands("housing bridge leg, left inner", -halfMm, halfMm, 165, 170, 387, undersideMm)
        .stands("housing bridge leg, left outer", -halfMm, halfMm, 220, 225, 387, undersideMm)
        .stands("housing bridge leg, right inner", -halfMm, halfMm, -170, -165, 387, undersideMm)
        .stands("housing bridge leg, right outer", -halfMm, halfMm, -225, -220, 387, undersideMm)
        .bolts(2, 60)
        .feet(3, 2 * 4 * baseMm + 8 * 2 * 38 * cos)
        .foot("housing bridge legs to axle tube", -38 * cos, 38 * cos, -220, 220, 387, 387)
        .foot(
            "left axle bracket to deck",
            -baseMm / 2 * cos - 27.5 / 2,
            baseMm / 2 * cos + 27.5 / 2,
            60 - baseMm / 4 - 27.5 * cos,
            60 + baseMm / 4 + 27.5 * cos,
            deckUpMm,
            deckUpMm)
        .nothingElse();
  }

  /** 110 of housing, 6.35 of air, an inch of web, 5 of deck, 31.35 to the joint: 178.1 mm. */
  @Test
  void housingBridgeNeedsRoomOverTheHousing() {
    BracketBasis basis = SampleBars.basis(true);
    BarMaking high =
        SampleBars.turned("bar", new Point3(400, 60, 540), new Point3(0, 60, 368 + 178.11));
    BarMaking low =
        SampleBars.turned("bar", new Point3(400, 60, 540), new Point3(0, 60, 368 + 178.09));
    assertDoesNotThrow(() -> new HousingBridge(List.of(high), 110, basis).plan());
    assertThrows(
        UnworkableLayoutException.class, () -> new HousingBridge(List.of(low), 110, basis).plan());
  }

  /**
   * Square tube 50 x 3 mm has 38 mm of flat. Tabs as wide as that and 31.35 mm from its face to the
   * joint; fillets as the tube's wall of 3 mm takes them.
   */
  @Test
  void tabsOnACrossmember() {
    BracketBasis basis = SampleBars.basis(true);
    BarMaking bar = SampleBars.along("bar", new Point3(900, 100, 500), new Point3(900, 100, 368));
    double middleMm = CrossmemberTabs.closeAheadMm(bar.bar().frame(), bar.frameSeat(), 50);
    assertEquals(900 + 31.35 + 25, middleMm, 1e-9);
    Sketch tab =
        new Sketch()
            .corner(-19, 0)
            .corner(19, 0)
            .corner(-19, 5)
            .corner(19, 5)
            .nose(0, 31.35, NOSE_MM, HOLE_MM);
    for (int ahead : new int[] {1, -1}) {
      Crossmember crossmember =
          new Crossmember(
              "crossmember", basis.rails(), SampleBars.mountStock(), 900 + ahead * 56.35, 500);
      double faceMm = 900 + ahead * 31.35;
      new PinnedPlan(new CrossmemberTabs(bar, crossmember, basis).plan())
          .plate("bar frame tab", 2, 5, tab)
          .seam("bar frame tab to crossmember", 4, 38, 3, faceMm, faceMm, 70, 130, 481, 519)
          .bolts(1, 60)
          .feet(1, 4 * 38)
          .foot("bar frame tab to crossmember", faceMm, faceMm, 72.5, 127.5, 481, 519)
          .nothingElse();
    }
  }

  /** On the right everything is the left in a mirror. */
  @Test
  void theRightSideMirrorsTheLeft() {
    for (boolean boxed : new boolean[] {true, false}) {
      BracketBasis basis = SampleBars.basis(boxed);
      new PlanRoom(inboard(new Point3(610, 347.3, 350), basis))
          .assertMirrored(inboard(new Point3(610, -347.3, 350), basis), 1, 0);
      new PlanRoom(outrigger(510, 420, basis)).assertMirrored(outrigger(-510, 420, basis), 1, 0);
      BarMaking left =
          SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
      BarMaking right =
          SampleBars.across("bar", new Point3(-150, -353, 418), new Point3(-150, 300, 418));
      new PlanRoom(new LateralBarBrackets(left, basis).frame(none(basis)))
          .assertMirrored(new LateralBarBrackets(right, basis).frame(none(basis)), 1, 0);
      new PlanRoom(new LateralBarBrackets(left, basis).axle())
          .assertMirrored(new LateralBarBrackets(right, basis).axle(), 1, 0);
    }
  }

  private static WorkPlan outrigger(double leftMm, double upMm, BracketBasis basis) {
    BarMaking bar =
        SampleBars.along("bar", new Point3(610, leftMm, upMm), new Point3(0, leftMm, 288));
    return Outrigger.outside(bar, seat(bar, basis), basis).plan(none(basis));
  }

  /** The rail's flat is as far from its top as from its underside, so a bracket on it stands. */
  @Test
  void aBracketThatStandsIsOneThatHangsUpsideDown() {
    BracketBasis basis = SampleBars.basis(true);
    new PlanRoom(inboard(new Point3(610, 347.3, 350), basis))
        .assertMirrored(inboard(new Point3(610, 347.3, 700), basis), 2, 525);
    new PlanRoom(outrigger(510, 420, basis)).assertMirrored(outrigger(510, 630, basis), 2, 525);
  }

  /** Ahead of the axle the bracket of a lateral bar is the one behind it in a mirror. */
  @Test
  void aLateralBarAheadOfTheAxleMirrorsOneBehindIt() {
    BracketBasis basis = SampleBars.basis(true);
    BarMaking behind =
        SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
    BarMaking ahead =
        SampleBars.across("bar", new Point3(150, 353, 418), new Point3(150, -300, 418));
    WorkPlan plan = new LateralBarBrackets(ahead, basis).axle();
    new PlanRoom(new LateralBarBrackets(behind, basis).axle()).assertMirrored(plan, 0, 0);
    new PlanRoom(plan).assertSeamsRunOnTheirPlates();
  }

  /** What is welded to a channel is welded to the plate behind it and to the rail. */
  @Test
  void bracketsNameWhatTheyAreWeldedTo() {
    BracketBasis basis = SampleBars.basis(false);
    BarMaking across =
        SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
    LateralBarBrackets lateral = new LateralBarBrackets(across, basis);
    RailBoxing boxing = RailBoxing.local(List.of(lateral.footprint()), basis);
    String plate = "left rail local boxing at bar frame bracket";
    assertEquals(
        List.of("left rail", plate), onto(lateral.frame(boxing), "bar frame bracket to rail"));
    assertEquals(
        List.of("left rail"), onto(lateral.frame(none(basis)), "bar frame bracket to rail"));
    assertEquals(
        List.of("left rail"), onto(outrigger(510, 420, basis), "bar outrigger gusset to rail"));
    assertEquals(
        List.of("right rail"), onto(outrigger(-510, 420, basis), "bar outrigger shelf to rail"));
  }

  private static List<String> onto(WorkPlan plan, String seam) {
    return plan.welds().stream()
        .filter(one -> one.name().equals(seam))
        .map(one -> ((SeamRun) one.runs().get(0)).onto())
        .findFirst()
        .orElseThrow();
  }

  /** Reasons say where the joint is, how far it hangs, and why the base is as long as it is. */
  @Test
  void reasonsSayWhatWasMeasured() {
    BracketBasis basis = SampleBars.basis(true);
    WorkPlan hanging = inboard(new Point3(610, 347.3, 350), basis);
    String side = why(hanging, "bar frame bracket side");
    assertTrue(side.contains("frame joint of bar"), side);
    assertTrue(side.contains(SampleBasis.PRINT.length(610) + " ahead of the axle"), side);
    assertTrue(side.contains(SampleBasis.PRINT.length(110.35) + " below the bracket's base"), side);
    assertTrue(side.contains("from a load spread of 30 deg"), side);
    String web = why(hanging, "bar frame bracket web");
    assertTrue(web.contains(SampleBasis.PRINT.length(110.35) + " from base to joint"), web);
    assertTrue(web.contains(SampleBasis.PRINT.length(31.35) + " short of the joint"), web);
    String standing = why(inboard(new Point3(610, 347.3, 700), basis), "bar frame bracket side");
    assertTrue(standing.contains("above the bracket's base"), standing);
    String outside = why(outrigger(510, 420, basis), "bar outrigger shelf");
    assertTrue(
        outside.contains(SampleBasis.PRINT.length(90) + " from the rail's outer face"), outside);
    assertTrue(hanging.bolts().get(0).where().contains("bar frame end"));
    assertEquals(
        List.of(
            "bar frame bracket side, outer",
            "bar frame end joint",
            "bar frame bracket side, inner"),
        hanging.bolts().get(0).places().get(0).through());
  }

  private static String why(WorkPlan plan, String plate) {
    return plan.plates().stream()
        .filter(need -> need.plate().name().equals(plate))
        .map(need -> need.why().in(SampleBasis.PRINT))
        .findFirst()
        .orElseThrow();
  }

  /** Shelf, gussets and bracket in one box: from the joint's nose to the gussets' tips. */
  @Test
  void anOutriggerTakesRoomFromItsNoseToItsGussets() {
    BracketBasis basis = SampleBars.basis(true);
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    for (int side : new int[] {1, -1}) {
      for (boolean hangs : new boolean[] {true, false}) {
        double upMm = hangs ? 420 : 630;
        BarMaking bar =
            SampleBars.along(
                "bar", new Point3(610, side * 510, upMm), new Point3(0, side * 510, 288));
        Outrigger outrigger = Outrigger.outside(bar, seat(bar, basis), basis);
        Box expected =
            Box.between(
                610 - baseMm / 2,
                610 + baseMm / 2,
                side > 0 ? 450 : -540,
                side > 0 ? 540 : -450,
                hangs ? 420 - NOSE_MM : 589.65 - 90,
                hangs ? 460.35 + 90 : 630 + NOSE_MM);
        Box found = (Box) outrigger.body().shape();
        assertTrue(expected.centre().distanceMm(found.centre()) < 1e-6, found.toString());
        assertEquals(expected.halfLengthMm(), found.halfLengthMm(), 1e-6);
        assertEquals(expected.halfWidthMm(), found.halfWidthMm(), 1e-6);
        assertEquals(expected.halfHeightMm(), found.halfHeightMm(), 1e-6);
      }
    }
  }

  /** Joint and plates are 60 mm wide, so the joint is 30 mm off the rail's face at least. */
  @Test
  void anOutriggerNeedsRoomForHalfItsBracket() {
    BracketBasis basis = SampleBars.basis(true);
    assertDoesNotThrow(() -> outrigger(480, 420, basis));
    UnworkableLayoutException refused =
        assertThrows(UnworkableLayoutException.class, () -> outrigger(479, 420, basis));
    assertTrue(
        refused.reason().in(SampleBasis.PRINT).contains("rail's outer face"),
        refused.reason().in(SampleBasis.PRINT));
    assertTrue(
        refused
            .reason()
            .in(SampleBasis.PRINT)
            .contains("outboard by " + SampleBasis.PRINT.length(1)),
        refused.reason().in(SampleBasis.PRINT));
  }

  /** On 70 mm of rail the flat is 49.3 mm: less a plate that is the gusset's leg on the rail. */
  @Test
  void gussetsEndWithTheFlatOfTheRail() {
    Rails shallow = new Rails(true, 900, 900, 450, 450, 700, 70, 60, 4, 0);
    Sketch gusset =
        new Sketch()
            .corner(0, 0)
            .corner(90, 0)
            .corner(90, 5)
            .corner(5, 44.3)
            .corner(0, 44.3)
            .less(Math.PI * 12.7 * 12.7 / 4);
    new PinnedPlan(outrigger(510, 420, SampleBars.basis(shallow)))
        .plate("bar outrigger gusset", 2, 5, gusset);
  }

  /** Legs of 60 and 34.3 mm on 60 mm of rail: the corner is cut out by a third of the shorter. */
  @Test
  void smallGussetsHaveASmallCorner() {
    Rails shallow = new Rails(true, 900, 900, 450, 450, 700, 60, 60, 4, 0);
    double cornerMm = 34.3 / 3;
    Sketch gusset =
        new Sketch()
            .corner(0, 0)
            .corner(60, 0)
            .corner(60, 5)
            .corner(5, 34.3)
            .corner(0, 34.3)
            .less(Math.PI * cornerMm * cornerMm / 4);
    new PinnedPlan(outrigger(480, 420, SampleBars.basis(shallow)))
        .plate("bar outrigger gusset", 2, 5, gusset);
  }

  /** On a rail that closes by 1 in 100 the shelf is wider in front and gussets fit the shorter. */
  @Test
  void anOutriggerFollowsTheTaper() {
    Rails tapered = new Rails(true, 900, 888, 450, 450, 600, 150, 60, 4, 0);
    BracketBasis basis = SampleBars.basis(tapered);
    BarMaking bar = SampleBars.along("bar", new Point3(600, 504, 420), new Point3(0, 504, 288));
    WorkPlan plan = Outrigger.outside(bar, seat(bar, basis), basis).plan(none(basis));
    double baseMm = 2 * (NOSE_MM + 40.35 * TAN_30);
    double offMm = (baseMm - 5) / 2;
    double shorterMm = 90 - offMm / 100;
    new PinnedPlan(plan)
        .plate(
            "bar outrigger shelf",
            1,
            5,
            new Sketch()
                .corner(0, 0)
                .corner(baseMm, 0)
                .corner(baseMm, 90 + baseMm / 200)
                .corner(0, 90 - baseMm / 200))
        .plate(
            "bar outrigger gusset",
            2,
            5,
            new Sketch()
                .corner(0, 0)
                .corner(shorterMm, 0)
                .corner(shorterMm, 5)
                .corner(5, 90)
                .corner(0, 90)
                .less(Math.PI * 12.7 * 12.7 / 4));
  }

  /** Inside a channel the outrigger is welded to the plate of 5 mm that closes it. */
  @Test
  void aTurnedOutriggerIsWeldedToTheBoxingPlate() {
    double cos = Math.sqrt(3) / 2;
    BarMaking bar =
        SampleBars.turned("bar", new Point3(500, 300, 420), new Point3(500 - 400 * cos, 100, 420));
    BracketBasis basis = SampleBars.basis(false);
    Outrigger outrigger = Outrigger.turned(bar, seat(bar, basis), basis);
    RailBoxing boxing = RailBoxing.local(List.of(outrigger.footprint()), basis);
    WorkPlan plan = outrigger.plan(boxing);
    double lengthMm = 2 * (NOSE_MM + 40.35 * TAN_30) * cos + 30;
    new PinnedPlan(plan)
        .seam(
            "bar outrigger shelf to rail",
            2,
            lengthMm,
            5,
            500 - lengthMm / 2,
            500 + lengthMm / 2,
            390,
            390,
            460.35,
            465.35);
    assertEquals(
        List.of("left rail local boxing at bar outrigger"),
        onto(plan, "bar outrigger gusset to rail"));
    assertTrue(!outrigger.isOutside());
    assertTrue(why(plan, "bar outrigger shelf").contains("rail's inner face"));
  }

  /** Joints 250 mm from the middle and 20 mm behind the axle widen the deck over its legs. */
  @Test
  void aBridgeReachesOverItsOutermostJoint() {
    BarMaking left =
        SampleBars.turned("left", new Point3(400, 250, 540), new Point3(-20, 250, 568));
    BarMaking right =
        SampleBars.turned("right", new Point3(400, -250, 540), new Point3(-20, -250, 568));
    WorkPlan plan = new HousingBridge(List.of(left, right), 110, SampleBars.basis(true)).plan();
    double baseMm = 2 * (NOSE_MM + REACH_MM * TAN_30);
    new PinnedPlan(plan)
        .plate("housing bridge deck", 1, 5, Sketch.rectangle(560, baseMm + 40))
        .stands(
            "left axle bracket side, outer",
            -20 - baseMm / 2,
            -20 + baseMm / 2,
            275,
            280,
            568 - REACH_MM,
            568 + NOSE_MM)
        .stands(
            "right axle bracket side, outer",
            -20 - baseMm / 2,
            -20 + baseMm / 2,
            -280,
            -275,
            568 - REACH_MM,
            568 + NOSE_MM);
  }

  /** A reason says how far from the rail's face and underside the joint lies. */
  @Test
  void reasonsOfALateralBarSayHowItsJointLies() {
    BracketBasis basis = SampleBars.basis(true);
    BarMaking bar =
        SampleBars.across("bar", new Point3(-150, 353, 418), new Point3(-150, -300, 418));
    String why =
        why(new LateralBarBrackets(bar, basis).frame(none(basis)), "bar frame bracket side");
    assertTrue(why.contains(SampleBasis.PRINT.length(32) + " below its underside"), why);
    assertTrue(why.contains(SampleBasis.PRINT.length(37) + " inboard"), why);
  }
}
