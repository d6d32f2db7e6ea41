package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * One line of the weld list: equal welds of one joint in one place.
 *
 * @param name what is welded to what: "lower bracket to rail, outside"
 * @param joint shape of the weld
 * @param lengthMm length of each weld, mm; 0 for plugs and slots
 * @param count how many of them
 * @param position how it lies
 * @param place bench or vehicle
 * @param starts starts of the arc in each weld, 1 for a weld run through
 * @param why which part or load asks for it
 */
public record WeldSeam(
    String name,
    WeldJoint joint,
    double lengthMm,
    int count,
    WeldPosition position,
    WeldPlace place,
    int starts,
    String why) {

  public WeldSeam {
    Given.text(name, "Name of a weld", "Say what is welded to what.");
    Given.present(
        joint, "Joint of the weld '" + name + "'", "Give a fillet, groove, plug or slot.");
    Given.present(position, "Position of the weld '" + name + "'", "Flat when it can be turned.");
    Given.present(place, "Place of the weld '" + name + "'", "Bench or vehicle.");
    Given.text(why, "Reason for the weld '" + name + "'", "Say which part asks for it.");
    Given.count(count, 1, 10_000, "Number of welds '" + name + "'", "Leave the line out for none.");
    Given.count(starts, 1, 1000, "Arc starts of the weld '" + name + "'", "1 when run through.");
    checkedLength(name, joint, lengthMm);
  }

  /** A weld run along a line without a stop. */
  public static WeldSeam along(
      String name,
      BeadJoint joint,
      double lengthMm,
      int count,
      WeldPosition position,
      WeldPlace place,
      String why) {
    return new WeldSeam(name, joint, lengthMm, count, position, place, 1, why);
  }

  /** Plugs or slots. */
  public static WeldSeam spots(
      String name, SpotJoint joint, int count, WeldPosition position, WeldPlace place, String why) {
    return new WeldSeam(name, joint, 0, count, position, place, 1, why);
  }

  /** The same seam laid in the steps of a skip sequence, one start for each step. */
  public WeldSeam inSteps(SkipSequence sequence) {
    return new WeldSeam(
        name, joint, lengthMm, count, position, place, sequence.steps().size(), why);
  }

  /** Length of all welds of the line, mm. */
  public double totalLengthMm() {
    return lengthMm * count;
  }

  /**
   * Weld metal of the whole line, mm³.
   *
   * @param overWeldFraction how much larger each fillet leg is laid than drawn: 0.10 for 10 %
   */
  public double depositMm3(double overWeldFraction) {
    if (joint instanceof BeadJoint bead) {
      return bead.areaLaidMm2(overWeldFraction) * totalLengthMm();
    }
    return ((SpotJoint) joint).volumeMm3() * count;
  }

  private static void checkedLength(String name, WeldJoint joint, double lengthMm) {
    String what = "Length of the weld '" + name + "' in mm";
    if (joint instanceof SpotJoint) {
      Given.between(lengthMm, 0, 0, what, "A plug or slot has its size in the joint; give 0.");
    } else {
      Given.positive(lengthMm, 100_000, what, "Give the length of one weld.");
    }
  }
}
