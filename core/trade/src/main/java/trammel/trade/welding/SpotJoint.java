package trammel.trade.welding;

/** A weld that fills a hole in one plate down to the next; its metal is a volume each. */
public sealed interface SpotJoint extends WeldJoint permits PlugWeld, SlotWeld {

  /** Weld metal of one spot, mm³. */
  double volumeMm3();
}
