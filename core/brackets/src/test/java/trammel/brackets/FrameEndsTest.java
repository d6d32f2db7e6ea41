package trammel.brackets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.Mounting;
import trammel.brackets.barend.AxleBracket;
import trammel.brackets.barend.BarOperations;
import trammel.brackets.barend.FrameEnds;
import trammel.brackets.barend.InboardFrameBracket;
import trammel.brackets.barend.Outrigger;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailBoxing;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.FittedEnd;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.quantity.Phrase;

/** Frame ends of several bars, the work that they ask for, and rows of holes, counted by hand. */
class FrameEndsTest {
  private static final double TAN_30 = 1 / Math.sqrt(3);
  private static final double BASE_MM = 2 * (SampleBars.NOSE_MM + 40.35 * TAN_30);

  private static BarMaking bar(String name, double forwardMm, double leftMm) {
    return SampleBars.along(name, new Point3(forwardMm, leftMm, 420), new Point3(0, leftMm, 288));
  }

  private static final List<BarMaking> INBOARD =
      List.of(bar("one", 600, 347.3), bar("two", 200, 347.3), bar("three", 600, -347.3));

  private static FrameEnds inboard(BracketBasis basis) {
    return FrameEnds.apart(
        INBOARD, basis, (bar, seat) -> new InboardFrameBracket(bar, seat, basis));
  }

  @Test
  void eachBarHasItsBracketInTheOrderOfTheBars() {
    FrameEnds ends = inboard(SampleBars.basis(false));
    assertEquals(
        List.of(
            new Footprint(true, 600 - BASE_MM / 2, 600 + BASE_MM / 2, "one frame bracket"),
            new Footprint(true, 200 - BASE_MM / 2, 200 + BASE_MM / 2, "two frame bracket"),
            new Footprint(false, 600 - BASE_MM / 2, 600 + BASE_MM / 2, "three frame bracket")),
        ends.footprints());
    assertEquals(List.of(), ends.outside());
  }

  private static WorkPlan closed(RailBoxing boxing) {
    return RailClosings.closed(boxing.plan(), SampleBasis.rails(false), Optional.empty());
  }

  /** Between the rails one long plate a side, with 2 in beyond; outside them one a bracket. */
  @Test
  void channelsAreClosedBehindThem() {
    BracketBasis basis = SampleBars.basis(false);
    FrameEnds ends = inboard(basis);
    RailBoxing along = ends.boxing(Mounting.INBOARD, List.of(), basis);
    assertEquals(2, closed(along).plates().size());
    assertEquals(
        400 + BASE_MM + 101.6,
        closed(along).plates().get(0).plate().outline().bounds().widthMm(),
        1e-6);
    Footprint other = new Footprint(false, -200, -150, "another");
    assertEquals(3, closed(ends.boxing(Mounting.INBOARD, List.of(other), basis)).plates().size());
    assertEquals(3, closed(ends.boxing(Mounting.OUTBOARD, List.of(), basis)).plates().size());
    assertEquals(4, closed(ends.boxing(Mounting.OUTBOARD, List.of(other), basis)).plates().size());
    // Each bracket: a line of two sides, a bridge, three strips.
    assertEquals(15, ends.plan(along).plates().size());
    assertEquals(3, ends.plan(along).feet().size());
  }

  @Test
  void outriggersOutsideTheRailsTakeRoomThere() {
    BracketBasis basis = SampleBars.basis(true);
    List<BarMaking> bars = List.of(bar("left", 600, 510), bar("right", 600, -510));
    FrameEnds ends =
        FrameEnds.apart(bars, basis, (bar, seat) -> Outrigger.outside(bar, seat, basis));
    assertEquals(
        List.of("outrigger of left", "outrigger of right"),
        ends.outside().stream().map(body -> body.name()).toList());
  }

  private static OperationNeed only(WorkPlan plan) {
    assertEquals(1, plan.operations().size());
    return plan.operations().get(0);
  }

  @Test
  void workIsCountedByTheBar() {
    OperationNeed made = only(BarOperations.each("make-bar", INBOARD, "bar", "each: "));
    assertEquals(
        new OperationNeed("make-bar", 3, "3 bars", Phrase.of("each: one, two, three")), made);
    OperationNeed one =
        only(BarOperations.each("make-bar", INBOARD.subList(0, 1), "bar", "each: "));
    assertEquals("1 bar", one.driver().toString());
    assertEquals(WorkPlan.NONE, BarOperations.each("make-bar", List.of(), "bar", "each: "));
    OperationNeed fitted =
        only(
            BarOperations.fitting(
                "fit", INBOARD.subList(0, 1), List.of(End.values()), "arm", "ends of "));
    assertEquals(
        List.of(new FittedEnd("one", End.FRAME), new FittedEnd("one", End.AXLE)), fitted.fits());
  }

  @Test
  void frameEndsAreFittedInsideOrOutsideTheRails() {
    OperationNeed inside =
        only(BarOperations.fitFrameEnds(INBOARD, Mounting.INBOARD, SampleBasis.rails(false)));
    assertEquals("fit-frame-bracket", inside.operationKey());
    assertEquals("3 brackets", inside.driver().toString());
    assertEquals("inboard frame ends: one, two, three", inside.why().in(SampleBasis.PRINT));
    assertEquals(new FittedEnd("two", End.FRAME), inside.fits().get(1));
    OperationNeed outside =
        only(BarOperations.fitFrameEnds(INBOARD, Mounting.OUTBOARD, SampleBasis.rails(true)));
    assertEquals("fit-outrigger", outside.operationKey());
    assertTrue(
        outside.why().in(SampleBasis.PRINT).contains("boxed already, so no boxing plate"),
        outside.why().in(SampleBasis.PRINT));
  }

  /** A tube is sawn at both ends; two sides of an axle bracket are drilled and dressed. */
  @Test
  void cutsHolesAndPlatesAreCounted() {
    BracketBasis basis = SampleBars.basis(true);
    WorkPlan plan =
        new WorkPlan.Builder()
            .add(INBOARD.get(0).plan())
            .add(INBOARD.get(2).plan())
            .add(new AxleBracket(INBOARD.get(0), basis).plan())
            .add(inboard(basis).brackets().get(1).plan(RailBoxing.local(List.of(), basis)))
            .build();
    List<OperationNeed> counted = BarOperations.counted(plan).operations();
    assertEquals(
        List.of("4 cuts", "4 holes", "8 plates"),
        counted.stream().map(need -> need.driver().toString()).toList());
    assertEquals(List.of(4.0, 4.0, 8.0), counted.stream().map(OperationNeed::quantity).toList());
  }

  /** Bolts of 12.303125 mm have holes of 12.7; two of those, 25.4 mm, are 8 steps of 1/8 in. */
  @Test
  void pickUpHolesAreTwoDiametersApart() {
    Joint joint = INBOARD.get(0).bar().frameJoint();
    assertEquals(HoleRow.SINGLE, HoleRow.of(1, Optional.of(30.0), joint));
    assertEquals(new HoleRow(3, 25.4), HoleRow.of(3, Optional.empty(), joint));
    assertEquals(new HoleRow(2, 25.4), HoleRow.of(2, Optional.of(25.4), joint));
    String refused =
        assertThrows(UnworkableLayoutException.class, () -> HoleRow.of(2, Optional.of(25.3), joint))
            .reason()
            .in(SampleBasis.PRINT);
    assertTrue(refused.contains(SampleBasis.PRINT.length(25.3)), refused);
    Joint wider = new Joint("wider", 12_000, 0.2, SampleBars.BOLT_MM + 0.1, 50, 25, 40_000);
    assertEquals(28.575, HoleRow.of(3, Optional.empty(), wider).pitchMm(), 1e-9);
  }

  /** Of an even number the layout's is the one under the middle as seen from the rail. */
  @ParameterizedTest
  @CsvSource({"1, 0, 0, 1", "2, 30, 0, 2", "3, 30, 30, 2", "4, 60, 30, 3", "5, 60, 60, 3"})
  void theLayoutsHoleIsTheMiddleOne(int holes, double nearMm, double farMm, int layoutHole) {
    HoleRow row = new HoleRow(holes, holes == 1 ? 0 : 30);
    assertEquals(nearMm, row.nearMm(), 1e-9);
    assertEquals(farMm, row.farMm(), 1e-9);
    assertEquals(layoutHole, row.layoutHole());
  }

  @Test
  void aRowHasOneToFiveHolesApart() {
    assertThrows(IllegalArgumentException.class, () -> new HoleRow(0, 30));
    assertThrows(IllegalArgumentException.class, () -> new HoleRow(6, 30));
    assertThrows(IllegalArgumentException.class, () -> new HoleRow(2, 0));
    assertThrows(IllegalArgumentException.class, () -> new HoleRow(1, -1));
    assertFalse(new HoleRow(5, 30).equals(HoleRow.SINGLE));
  }
}
