package trammel.trade.welding;

/** The shape of a weld: a bead along a line, or a spot filled through a hole. */
public sealed interface WeldJoint permits BeadJoint, SpotJoint {

  /** Short name for a weld list: "fillet", "V groove". */
  String title();

  /** Size of the weld that a torch hand measures, mm: leg, plate thickness or hole size. */
  double sizeMm();
}
