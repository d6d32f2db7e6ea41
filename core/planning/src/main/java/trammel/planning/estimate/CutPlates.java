package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Item;
import trammel.planning.catalog.PlateCutting;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * The work of cutting the plates of a plan, as the shop has it done, and the drilling that is left:
 * a hole that is cut with its plate is not drilled again.
 */
final class CutPlates {
  private static final String CUT = "cut-plate";
  private static final String SET_UP = "set-up-table";
  private static final String BY_HAND = "cut-plate-by-hand";
  private static final String DRILL = "drill-plate";
  private static final double FOOT_MM = 304.8;

  private final Catalog catalog;
  private final PlateCutting cutting;

  private CutPlates(Catalog catalog) {
    this.catalog = catalog;
    this.cutting = catalog.plateCutting();
  }

  /**
   * A plan with the cutting of its plates.
   *
   * @throws trammel.brackets.material.MissingEntryException if a plate is thicker than the catalog
   *     says how to cut
   */
  static WorkPlan addedTo(WorkPlan plan, Catalog catalog) {
    return plan.plates().isEmpty() ? plan : new CutPlates(catalog).added(plan);
  }

  private WorkPlan added(WorkPlan plan) {
    Map<String, Cut> byMaterial = new LinkedHashMap<>();
    for (PlateNeed need : plan.plates()) {
      byMaterial.computeIfAbsent(need.plateKey(), key -> new Cut()).add(need);
    }
    WorkPlan.Builder cut = new WorkPlan.Builder();
    switch (cutting.way()) {
      case TABLE -> addTable(byMaterial, cut);
      case HAND -> addHand(byMaterial, cut);
      case SENT_OUT -> addSentOut(byMaterial, cut);
    }
    int withPlates = byMaterial.values().stream().mapToInt(one -> one.cutHoles).sum();
    return withoutDrilling(plan, withPlates).plus(cut.build());
  }

  /** What is cut out of plate of one thickness. */
  private final class Cut {
    private double lengthMm;
    private int pierces;
    private int plates;
    private int cutHoles;

    void add(PlateNeed need) {
      double drilledMm = 0;
      int drilled = 0;
      int cutWithIt = 0;
      for (Hole hole : need.plate().outline().holes()) {
        if (cutting.isDrilled(hole, need.plate().thicknessMm())) {
          drilledMm += hole.loop().lengthMm();
          drilled++;
        } else if (hole instanceof RoundHole) {
          cutWithIt++;
        }
      }
      lengthMm += need.quantity() * (need.plate().outline().cutLengthMm() - drilledMm);
      pierces += need.quantity() * (need.plate().outline().pierces() - drilled);
      plates += need.quantity();
      // Nobody counts the drilling of a tool for the fit-up.
      cutHoles += need.stays() ? need.quantity() * cutWithIt : 0;
    }

    private String words() {
      return Counts.of(plates, "plate")
          + ", "
          + feet(lengthMm)
          + " of cut, "
          + Counts.of(pierces, "pierce");
    }
  }

  private void addTable(Map<String, Cut> byMaterial, WorkPlan.Builder plan) {
    double hours = 0;
    StringBuilder words = new StringBuilder();
    for (Map.Entry<String, Cut> one : byMaterial.entrySet()) {
      PlateMaterial material = catalog.plate(one.getKey());
      Cut cut = one.getValue();
      hours += cutting.setup(material.form().thicknessMm()).minutes(cut.lengthMm, cut.pierces) / 60;
      words
          .append(words.length() == 0 ? "" : "; ")
          .append(material.title())
          .append(": ")
          .append(cut.words());
    }
    plan.add(
        new OperationNeed(
            SET_UP,
            byMaterial.size(),
            Counts.of(byMaterial.size(), "thickness", "thicknesses"),
            Phrase.of(
                "sheet on the table, torch set, plates and skeleton off, one thickness after another")));
    plan.add(
        new OperationNeed(
            CUT,
            hours,
            Math.round(hours * 60) + " min of torch",
            Phrase.of("{}; {}", cutting.process(), words.toString())));
  }

  private void addHand(Map<String, Cut> byMaterial, WorkPlan.Builder plan) {
    double lengthMm = byMaterial.values().stream().mapToDouble(cut -> cut.lengthMm).sum();
    plan.add(
        new OperationNeed(
            BY_HAND,
            lengthMm / FOOT_MM,
            feet(lengthMm) + " of cut",
            Phrase.of("{}, by hand to the marked outline", cutting.process())));
  }

  private void addSentOut(Map<String, Cut> byMaterial, WorkPlan.Builder plan) {
    byMaterial.forEach(
        (key, cut) -> {
          PlateMaterial material = catalog.plate(key);
          PlateCutting.SentOut price = cutting.outside(material.form().thicknessMm());
          Item length = catalog.item(price.cutItem());
          plan.add(
              PartNeed.withoutPlace(
                  length.key(),
                  cut.lengthMm / unitMm(length),
                  Phrase.of("{}: {}", material.title(), cut.words())));
          plan.add(
              PartNeed.withoutPlace(
                  price.pierceItem(),
                  cut.pierces,
                  Phrase.of("{}: {}", material.title(), cut.words())));
        });
  }

  private static double unitMm(Item length) {
    return switch (length.unit()) {
      case "ft" -> FOOT_MM;
      case "in" -> 25.4;
      case "m" -> 1000;
      default ->
          throw new IllegalArgumentException(
              "the unit of item '"
                  + length.key()
                  + "' is '"
                  + length.unit()
                  + "'; to be the price of a cut it must be ft, in or m. Price it so in the"
                  + " catalog, or name another item in plate_cutting.");
    };
  }

  private static WorkPlan withoutDrilling(WorkPlan plan, int cutHoles) {
    double drilled = 0;
    List<OperationNeed> left = new ArrayList<>();
    Phrase why = Phrase.NONE;
    for (OperationNeed need : plan.operations()) {
      if (need.operationKey().equals(DRILL)) {
        drilled += need.quantity();
        why = why.isBlank() ? need.why() : why.and(need.why());
      } else {
        left.add(need);
      }
    }
    int still = (int) Math.round(drilled) - cutHoles;
    if (cutHoles == 0 || drilled == 0) {
      return plan;
    }
    if (still > 0) {
      left.add(
          new OperationNeed(
              DRILL,
              still,
              Counts.of(still, "hole"),
              Phrase.of(
                  "{}; {} more are cut with their plates", why, Counts.of(cutHoles, "hole"))));
    }
    return plan.withOperations(left);
  }

  private static String feet(double lengthMm) {
    return Math.round(lengthMm / FOOT_MM) + " ft";
  }
}
