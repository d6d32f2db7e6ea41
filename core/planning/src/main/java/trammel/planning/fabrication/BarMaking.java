package trammel.planning.fabrication;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Bar;
import trammel.planning.bars.BarMakeUp;
import trammel.planning.catalog.EndFitting;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.work.PartNeed;
import trammel.planning.work.TubeNeed;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.Point2;
import trammel.trade.tubes.BushedEnd;
import trammel.trade.tubes.Cope;
import trammel.trade.tubes.RoundTube;
import trammel.trade.tubes.ThreadedEnd;
import trammel.trade.tubes.TubeCut;
import trammel.trade.tubes.TubeEnd;

/**
 * Builds one bar: its tube sawn to length, its two joints, tube ends, jam nuts and welds.
 *
 * @param bar the bar as laid out
 * @param makeUp what it is made of
 */
public record BarMaking(Bar bar, BarMakeUp makeUp) {
  private static final int WRAP_STEPS = 180;

  /**
   * What to saw off for the bar.
   *
   * @throws UnworkableLayoutException if its joints leave no tube between them
   */
  public TubeCut cut() {
    try {
      return TubeCut.straight(
          bar.name(),
          tube(),
          bar.lengthMm(),
          ShankEnd.of(makeUp.frameEnd()),
          ShankEnd.of(makeUp.axleEnd()));
    } catch (IllegalArgumentException refused) {
      throw new UnworkableLayoutException(
          bar.name() + " cannot be made with these joints. " + refused.getMessage());
    }
  }

  private RoundTube tube() {
    return new RoundTube(bar.tube().outsideDiameterMm(), bar.tube().wallMm());
  }

  /** Tube, joints and welds of the bar. */
  public WorkPlan plan(QuantityPrinter print) {
    TubeCut cut = cut();
    WorkPlan.Builder plan = new WorkPlan.Builder();
    plan.add(
        new TubeNeed(
            bar.name(),
            makeUp.tube().key(),
            cut.lengthMm(),
            1,
            endWords("frame end", makeUp.frameEnd(), print)
                + "; "
                + endWords("axle end", makeUp.axleEnd(), print),
            copes(cut),
            print.length(bar.lengthMm())
                + " from joint to joint, less "
                + print.length(cut.start().takeUpMm(tube()))
                + " at the frame end and "
                + print.length(cut.end().takeUpMm(tube()))
                + " at the axle end"
                + adjustment(cut, print)));
    addEnd(plan, "frame end", makeUp.frameEnd(), cut.start(), print);
    addEnd(plan, "axle end", makeUp.axleEnd(), cut.end(), print);
    return plan.build();
  }

  private List<Cope> copes(TubeCut cut) {
    List<Cope> copes = new ArrayList<>(2);
    for (TubeEnd end : List.of(cut.start(), cut.end())) {
      if (end instanceof BushedEnd bushed) {
        copes.add(bushed.cope(tube()));
      }
    }
    return copes;
  }

  private static String endWords(String where, EndFitting end, QuantityPrinter print) {
    return end.threaded()
        ? where + " square for a weld-in tube end"
        : where + " coped square to a barrel of " + print.length(2 * end.joint().barrelRadiusMm());
  }

  private static String adjustment(TubeCut cut, QuantityPrinter print) {
    double shorterMm = cut.start().canShortenMm() + cut.end().canShortenMm();
    return shorterMm > 0 ? "; sets " + print.length(shorterMm) + " either way" : "";
  }

  private void addEnd(
      WorkPlan.Builder plan, String where, EndFitting end, TubeEnd tubeEnd, QuantityPrinter print) {
    String at = where + " of " + bar.name();
    plan.add(new PartNeed(end.key(), 1, at));
    double seamMm = seamMm(tubeEnd);
    double thicknessMm = bar.tube().wallMm();
    if (tubeEnd instanceof ThreadedEnd) {
      plan.add(new PartNeed(end.tubeEndKey(), 1, "takes the shank at the " + at));
      plan.add(new PartNeed(end.jamNutKey(), 1, "locks the shank at the " + at));
    }
    plan.add(
        Seam.onBench(
            bar.name() + " " + where + " to tube",
            thicknessMm,
            thicknessMm,
            seamMm,
            1,
            tubeEnd instanceof ThreadedEnd
                ? "once round the weld-in tube end, "
                    + print.length(bar.tube().outsideDiameterMm())
                    + " across"
                : "once round the coped tube on its barrel"));
  }

  private double seamMm(TubeEnd tubeEnd) {
    if (tubeEnd instanceof BushedEnd bushed) {
      return developedMm(bushed.cope(tube()));
    }
    return Math.PI * bar.tube().outsideDiameterMm();
  }

  /** True length of the cope's edge, measured on its unrolled template. */
  private static double developedMm(Cope cope) {
    List<Point2> edge = cope.wrap(WRAP_STEPS);
    double lengthMm = 0;
    for (int i = 1; i < edge.size(); i++) {
      lengthMm += edge.get(i - 1).distanceMm(edge.get(i));
    }
    return lengthMm;
  }
}
