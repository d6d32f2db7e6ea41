package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.work.WorkPlan;
import trammel.cutting.background.Background;
import trammel.cutting.background.Progress;
import trammel.planning.catalog.Catalog;
import trammel.planning.rack.Rack;

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
  /** Lists of more tubes are sawn on another core while the plates are nested. */
  private static final int MANY_TUBES = 160;

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
    return of(plan, catalog, rack, Progress.UNSEEN);
  }

  /**
   * The materials of a plan, cut from what is on the rack as far as it goes.
   *
   * @param progress is told how far a long list is
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public static Materials of(WorkPlan plan, Catalog catalog, Rack rack, Progress progress) {
    return of(plan, catalog, rack, List.of(), progress);
  }

  /**
   * The materials of a plan, cut from what is on the rack as far as it goes.
   *
   * @param own what is bought besides and is in no catalog
   * @param progress is told how far a long list is
   * @throws IllegalArgumentException if the plan asks for something that the catalog does not have
   */
  public static Materials of(
      WorkPlan plan, Catalog catalog, Rack rack, List<PartLine> own, Progress progress) {
    SawSchedule saw = new SawSchedule(catalog, rack);
    if (plan.tubes().size() <= MANY_TUBES) {
      List<StickChoice.Choice> choices = saw.choices(plan.tubes(), progress);
      return of(
          plan,
          catalog,
          own,
          choices,
          new PlateSchedule(catalog, rack).cuts(plan.plates(), progress));
    }
    Background<List<StickChoice.Choice>> sawn =
        Background.start(() -> saw.choices(plan.tubes(), progress));
    List<PlateCut> plates = new PlateSchedule(catalog, rack).cuts(plan.plates(), progress);
    return of(plan, catalog, own, sawn.get(), plates);
  }

  private static Materials of(
      WorkPlan plan,
      Catalog catalog,
      List<PartLine> own,
      List<StickChoice.Choice> choices,
      List<PlateCut> plates) {
    List<PartLine> parts = new ArrayList<>(new PartSchedule(catalog).lines(plan.parts()));
    parts.addAll(own);
    List<BoltLine> bolts = new BoltSchedule(catalog).lines(plan.bolts());
    return new Materials(
        parts,
        bolts,
        new StickChoice(catalog)
            .of(choices, sections -> new Materials(parts, bolts, sections, plates)),
        plates);
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
