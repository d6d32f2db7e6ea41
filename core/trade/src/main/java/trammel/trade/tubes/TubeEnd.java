package trammel.trade.tubes;

import trammel.trade.steel.RoundTube;

/** How one end of a bar's tube meets its joint. */
public sealed interface TubeEnd permits ThreadedEnd, TappedEnd, BushedEnd, PlainEnd {
  /** From the joint's centre to the end of the tube as sawn, along the tube. */
  double takeUpMm(RoundTube tube);

  /** How much shorter the bar can be set at this end. */
  double canShortenMm();

  /** How much longer the bar can be set at this end. */
  double canLengthenMm();

  /** Length inside the tube that this end fills. */
  double insideMm();

  /**
   * Checks the end against the tube it goes on.
   *
   * @throws IllegalArgumentException when it does not fit
   */
  void requireFits(RoundTube tube);
}
