package trammel.planning.estimate;

import java.util.List;
import trammel.planning.draft.Draft;
import trammel.planning.labour.HoursEstimate;
import trammel.planning.money.CostBuildUp;
import trammel.planning.welding.WeldEstimate;
import trammel.planning.work.WorkPlan;

/**
 * A job from its layout to its price.
 *
 * @param draft the job and its layout
 * @param plan the work that it asks for
 * @param parts bought parts, one line an item
 * @param bolts bolts by stocked length
 * @param sections what is sawn, and from which sticks
 * @param plates what is cut from plate, and from which sheets
 * @param welds weld metal, wire, gas and time
 * @param hours hours low, likely and high by operation
 * @param price the cost build-up and the price
 */
public record Estimate(
    Draft draft,
    WorkPlan plan,
    List<PartLine> parts,
    List<BoltLine> bolts,
    List<SectionCut> sections,
    List<PlateCut> plates,
    WeldEstimate welds,
    HoursEstimate hours,
    CostBuildUp price) {
  public Estimate {
    parts = List.copyOf(parts);
    bolts = List.copyOf(bolts);
    sections = List.copyOf(sections);
    plates = List.copyOf(plates);
  }

  /** Finished mass of all tubes, sections and plates (kg). */
  public double steelMassKg() {
    double massKg = 0;
    for (SectionCut section : sections) {
      massKg += section.massKg();
    }
    for (PlateCut plate : plates) {
      massKg += plate.massKg();
    }
    return massKg;
  }

  /** Mass of bought parts that stay on the vehicle (kg). */
  public double partsMassKg() {
    double massKg = 0;
    for (PartLine part : parts) {
      massKg += part.item().massKg() * part.quantity();
    }
    return massKg;
  }
}
