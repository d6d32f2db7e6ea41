package trammel.planning.estimate;

import java.util.List;
import trammel.planning.catalog.Catalog;
import trammel.planning.rack.Rack;
import trammel.planning.work.WorkPlan;

/**
 * Everything that a plan needs bought, each in the form in which it is bought.
 *
 * @param parts bought parts, one line an item
 * @param bolts bolts by stocked length
 * @param sections what is sawn, and from which sticks
 * @param plates what is cut from plate, and from which sheets
 */
public record Materials(
    List<PartLine> parts, List<BoltLine> bolts, List<SectionCut> sections, List<PlateCut> plates) {
  public Materials {
    parts = List.copyOf(parts);
    bolts = List.copyOf(bolts);
    sections = List.copyOf(sections);
    plates = List.copyOf(plates);
  }

  /**
   * The materials of a plan, of one job or of several together.
   *
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public static Materials of(WorkPlan plan, Catalog catalog) {
    return of(plan, catalog, Rack.EMPTY);
  }

  /**
   * The materials of a plan, cut from what is on the rack as far as it goes.
   *
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public static Materials of(WorkPlan plan, Catalog catalog, Rack rack) {
    return new Materials(
        new PartSchedule(catalog).lines(plan.parts()),
        new BoltSchedule(catalog).lines(plan.bolts()),
        new SawSchedule(catalog, rack).cuts(plan.tubes()),
        new PlateSchedule(catalog, rack).cuts(plan.plates()));
  }

  /** Finished mass of all tubes, sections and plates that stay on the vehicle (kg). */
  public double steelMassKg() {
    double massKg = 0;
    for (SectionCut section : sections) {
      massKg += section.massKg();
    }
    for (PlateCut plate : plates) {
      massKg += plate.addedKg();
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
