package trammel.trade.steel;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A plate bent along parallel lines: legs measured over the outside corners, one bend between each
 * two.
 *
 * @param outsideLegsMm legs in order, mm, each to the corner of the outside faces
 * @param bends the bend after each leg but the last
 */
public record BentPlate(List<Double> outsideLegsMm, List<PlateBend> bends) {

  public BentPlate {
    outsideLegsMm = List.copyOf(outsideLegsMm);
    bends = List.copyOf(bends);
    if (outsideLegsMm.size() != bends.size() + 1) {
      throw new IllegalArgumentException(
          "A bent plate was given "
              + outsideLegsMm.size()
              + " legs and "
              + bends.size()
              + " bends; it needs one leg more than bends. Name each leg between two bends once.");
    }
    for (double legMm : outsideLegsMm) {
      Given.positive("leg of a bent plate", legMm, 10_000, "mm", "Measure to the outside corner.");
    }
    for (int i = 0; i < outsideLegsMm.size(); i++) {
      if (flatMm(outsideLegsMm, bends, i) < 0) {
        throw new IllegalArgumentException(
            "Leg "
                + (i + 1)
                + " of a bent plate was given as "
                + outsideLegsMm.get(i)
                + " mm; its bends take more than that. Lengthen the leg or take a smaller radius.");
      }
    }
  }

  /** Flat length to cut before bending: sum of the outside legs less the bend deductions, mm. */
  public double flatLengthMm() {
    double lengthMm = 0;
    for (double legMm : outsideLegsMm) {
      lengthMm += legMm;
    }
    for (PlateBend bend : bends) {
      lengthMm -= bend.deductionMm();
    }
    return lengthMm;
  }

  /** Straight part of a leg, between its set-backs, mm; legs count from 0. */
  public double straightMm(int leg) {
    Given.count("leg of a bent plate", leg, 0, outsideLegsMm.size() - 1, "Legs count from 0.");
    return flatMm(outsideLegsMm, bends, leg);
  }

  private static double flatMm(List<Double> legsMm, List<PlateBend> bends, int leg) {
    double beforeMm = leg == 0 ? 0 : bends.get(leg - 1).outsideSetbackMm();
    double afterMm = leg == bends.size() ? 0 : bends.get(leg).outsideSetbackMm();
    return legsMm.get(leg) - beforeMm - afterMm;
  }
}
