package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * Two square edges with a gap between them, filled through.
 *
 * @param thicknessMm thickness, mm, up to 100
 * @param rootGapMm gap, mm, up to 20
 * @param cap reinforcement; zero height when ground flush
 */
public record SquareGroove(double thicknessMm, double rootGapMm, WeldCap cap) implements BeadJoint {

  public SquareGroove {
    Groove.checkedEdge(thicknessMm, rootGapMm);
    Given.present("cap of a square groove weld", cap, "Give a cap of zero height when flush.");
    if (!(thicknessMm * rootGapMm + cap.areaMm2() > 0)) {
      throw new IllegalArgumentException(
          "A square groove was given no gap and no cap, so it holds no weld metal. "
              + "Give the fit-up gap or the cap that is laid over the joint.");
    }
  }

  @Override
  public double areaMm2() {
    return thicknessMm * rootGapMm + cap.areaMm2();
  }

  @Override
  public String title() {
    return "square groove";
  }

  @Override
  public double sizeMm() {
    return thicknessMm;
  }
}
