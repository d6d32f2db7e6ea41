package trammel.trade.welding;

import java.util.Collections;
import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * One line of the weld list: welds of one joint in one place, made from the paths that they run
 * along in space.
 *
 * @param name what is welded to what: "lower bracket to rail, outside"
 * @param joint shape of the weld
 * @param runs each weld with its path
 * @param position how it lies
 * @param place bench or vehicle
 * @param starts starts of the arc in each weld, 1 for a weld run through
 * @param why which part or load asks for it
 */
public record WeldSeam(
    String name,
    WeldJoint joint,
    List<WeldRun> runs,
    WeldPosition position,
    WeldPlace place,
    int starts,
    Phrase why) {
  public WeldSeam {
    Given.text("name of a weld", name, "Say what is welded to what.");
    Given.present(
        "joint of the weld '" + name + "'", joint, "Give a fillet, groove, plug or slot.");
    Given.present("position of the weld '" + name + "'", position, "Flat when it can be turned.");
    Given.present("place of the weld '" + name + "'", place, "Bench or vehicle.");
    Given.text("reason for the weld '" + name + "'", why, "Say which part asks for it.");
    runs = List.copyOf(runs);
    Given.count(
        "number of welds '" + name + "'", runs.size(), 1, 10_000, "Leave the line out for none.");
    Given.count("arc starts of the weld '" + name + "'", starts, 1, 1000, "1 when run through.");
    for (WeldRun run : runs) {
      checkedLength(name, joint, run.lengthMm());
    }
  }

  /** Welds run along their paths without a stop. */
  public static WeldSeam along(
      String name,
      BeadJoint joint,
      List<? extends WeldRun> runs,
      WeldPosition position,
      WeldPlace place,
      Phrase why) {
    return new WeldSeam(name, joint, List.copyOf(runs), position, place, 1, why);
  }

  /** Straight welds by themselves, on no vehicle: for a bench figure. */
  public static WeldSeam alone(
      String name,
      BeadJoint joint,
      double lengthMm,
      int count,
      WeldPosition position,
      WeldPlace place,
      Phrase why) {
    Given.positive(
        "length of the weld '" + name + "' in mm", lengthMm, 100_000, "", "Give that of one weld.");
    Given.count("number of welds '" + name + "'", count, 1, 10_000, "Leave the line out for none.");
    List<WeldRun> runs = Collections.nCopies(count, WeldRun.ofLength(lengthMm));
    return along(name, joint, runs, position, place, why);
  }

  /** Plugs or slots, each a run of no length. */
  public static WeldSeam spots(
      String name,
      SpotJoint joint,
      List<? extends WeldRun> runs,
      WeldPosition position,
      WeldPlace place,
      Phrase why) {
    return new WeldSeam(name, joint, List.copyOf(runs), position, place, 1, why);
  }

  /** The same seam laid in the steps of a skip sequence, one start for each step. */
  public WeldSeam inSteps(SkipSequence sequence) {
    return new WeldSeam(name, joint, runs, position, place, sequence.steps().size(), why);
  }

  /** How many welds the line has. */
  public int count() {
    return runs.size();
  }

  /** Length of each weld, mm, the mean where they differ; 0 for plugs and slots. */
  public double lengthMm() {
    return totalLengthMm() / count();
  }

  /** Length of all welds of the line, mm. */
  public double totalLengthMm() {
    double lengthMm = 0;
    for (WeldRun run : runs) {
      lengthMm += run.lengthMm();
    }
    return lengthMm;
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
    return ((SpotJoint) joint).volumeMm3() * count();
  }

  private static void checkedLength(String name, WeldJoint joint, double lengthMm) {
    String what = "Length of the weld '" + name + "' in mm";
    if (joint instanceof SpotJoint) {
      Given.within(what, lengthMm, 0, 0, "", "A plug or slot has its size in the joint; give 0.");
    } else {
      Given.positive(what, lengthMm, 100_000, "", "Give the length of one weld.");
    }
  }
}
