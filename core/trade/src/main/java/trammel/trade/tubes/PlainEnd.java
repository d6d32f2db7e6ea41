package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;

/** A square-sawn end that stops a given distance short of the point it is measured from. */
public record PlainEnd(double setbackMm) implements TubeEnd {
  public PlainEnd {
    Dimension.notNegativeMm("distance of a plain end from its point", setbackMm);
  }

  @Override
  public double takeUpMm(RoundTube tube) {
    return setbackMm;
  }

  @Override
  public double canShortenMm() {
    return 0.0;
  }

  @Override
  public double canLengthenMm() {
    return 0.0;
  }

  @Override
  public double insideMm() {
    return 0.0;
  }

  @Override
  public void requireFits(RoundTube tube) {
    // A sawn end fits every tube.
  }
}
