package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/**
 * Two questions of one bar by two of its points: raising the frame end pleases the first and upsets
 * the second; raising the axle end as well pleases the first alone.
 */
class ChangeSearchTest {
  private static final String BAR = "upper-left";
  private static final Adjustment FRAME_END =
      new Adjustment.MoveEnds(Set.of(BAR), End.FRAME, Direction.UP);
  private static final Adjustment AXLE_END =
      new Adjustment.MoveEnds(Set.of(BAR), End.AXLE, Direction.UP);

  /** How far ends of the bar were raised, together, mm. */
  private record Raised(String id, Set<End> ends, List<Adjustment> adjustments) implements Check {
    @Override
    public String title() {
      return id + " of the bar";
    }

    @Override
    public Measure measure() {
      return Measure.LENGTH;
    }

    @Override
    public Reading read(LayoutAnalysis analysis) {
      double raisedMm = 0;
      for (End end : ends) {
        raisedMm += upMm(analysis.layout(), end) - upMm(SampleLayout.good(), end);
      }
      return new Reading.Value(raisedMm, "");
    }

    @Override
    public List<Adjustment> adjustments(LayoutAnalysis analysis) {
      return adjustments;
    }

    private static double upMm(Layout layout, End end) {
      return layout.bars().stream()
          .filter(bar -> bar.name().equals(BAR))
          .findFirst()
          .orElseThrow()
          .point(end)
          .zMm();
    }
  }

  /**
   * The change that is found.
   *
   * @param isStop whether the first question says stop, not only look again
   * @param stopMm how high the frame end may stand before the second says stop; it is good up to 1
   *     mm
   */
  private static Optional<Change> found(boolean isStop, double stopMm, Adjustment... adjustments) {
    Check first = new Raised("first", Set.of(End.FRAME, End.AXLE), List.of(adjustments));
    Check second = new Raised("second", Set.of(End.FRAME), List.of());
    Judge judge =
        new Judge(
            List.of(first, second),
            Map.of(
                "first", Limit.atLeast(10, isStop ? 5 : -5, "invented"),
                "second", Limit.atMost(1, stopMm, "invented")),
            SampleLayout.settings());
    for (CheckResult result : judge.judge(SampleLayout.good())) {
      if (result instanceof CheckResult.Judged judged && judged.id().equals("first")) {
        assertEquals(isStop ? Verdict.STOP : Verdict.LOOK_AGAIN, judged.verdict());
        return judged.change();
      }
    }
    throw new AssertionError("the first question was not judged");
  }

  @Test
  void aRemarkIsNotBoughtOffWithAStop() {
    assertEquals(Optional.empty(), found(false, 5, FRAME_END));
  }

  @Test
  void aRemarkMayBeMovedAndIsNamed() {
    Change change = found(false, 50, FRAME_END).orElseThrow();
    assertEquals(List.of("second of the bar"), change.upsets());
    assertFalse(change.bringsStop());
  }

  @Test
  void aStopMayBeMovedWhereNothingMilderHelps() {
    Change change = found(true, 5, FRAME_END).orElseThrow();
    assertEquals(List.of("second of the bar"), change.upsets());
    assertTrue(change.bringsStop());
  }

  @Test
  void whatUpsetsNothingComesFirstWhereverItStands() {
    for (boolean isStop : new boolean[] {false, true}) {
      Change change = found(isStop, 5, FRAME_END, AXLE_END).orElseThrow();
      assertEquals(AXLE_END, change.adjustment());
      assertEquals(List.of(), change.upsets());
    }
  }

  @Test
  void aMilderChangeComesBeforeOneThatBringsAStop() {
    Adjustment both = new Adjustment.MoveBars(Set.of(BAR), Direction.UP);
    Change change = found(true, 8, FRAME_END, both).orElseThrow();
    assertEquals(both, change.adjustment());
    assertFalse(change.bringsStop());
  }
}
