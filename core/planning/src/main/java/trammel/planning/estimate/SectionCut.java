package trammel.planning.estimate;

import java.util.List;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.bars.BarCuttingPlan;

/**
 * What is sawn from one section, and how.
 *
 * @param material the section
 * @param needs the pieces
 * @param plan which stick each piece comes from
 */
public record SectionCut(BarMaterial material, List<TubeNeed> needs, BarCuttingPlan plan) {
  public SectionCut {
    needs = List.copyOf(needs);
  }

  /** Finished length of all pieces (mm). */
  public double lengthMm() {
    double lengthMm = 0;
    for (TubeNeed need : needs) {
      lengthMm += need.cutLengthMm() * need.quantity();
    }
    return lengthMm;
  }

  /** Finished mass of all pieces (kg). */
  public double massKg() {
    return material.form().massKg(lengthMm());
  }
}
