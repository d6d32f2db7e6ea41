package trammel.trade.plates;

/** An opening in a plate. */
public sealed interface Hole permits RoundHole, SlotHole, Window {
  /** The cut path. */
  Loop loop();

  Hole placed(Placement placement);
}
