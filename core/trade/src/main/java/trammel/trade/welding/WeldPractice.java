package trammel.trade.welding;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * How the shop welds a job: the process, how heavy a hand, how positions and restarts cost time.
 *
 * @param process the process
 * @param overWeldFraction how much larger each fillet leg is laid than drawn, 0 to 1
 * @param positionFactors extra arc time out of position
 * @param restartMin clock time of each arc start after the first in a weld, minutes: move, clean,
 *     let the heat go; the operating factor already covers a weld run through
 * @param fillerItem key of the item in the catalog that is bought as filler
 * @param gasItem key of the item in the catalog that is bought as gas
 */
public record WeldPractice(
    WeldProcess process,
    double overWeldFraction,
    PositionFactors positionFactors,
    double restartMin,
    String fillerItem,
    String gasItem) {

  /** Key of the filler in the standard catalog. */
  public static final String STANDARD_FILLER = "wire-035";

  /** Key of the gas in the standard catalog. */
  public static final String STANDARD_GAS = "welding-gas";

  public WeldPractice {
    Given.present("weld process of the shop", process, "Choose one from the catalog.");
    Given.present("position factors of the shop", positionFactors, "Take the common ones.");
    Given.within(
        "over-weld fraction", overWeldFraction, 0, 1, "", "0.10 lays each fillet leg 10 % larger.");
    Given.within("time for an arc restart in minutes", restartMin, 0, 60, "", "Common is 0.5.");
    Given.text("filler of the shop's welding", fillerItem, "Give the key of an item.");
    Given.text("gas of the shop's welding", gasItem, "Give the key of an item.");
  }

  /** A practice with the filler and the gas of the standard catalog. */
  public WeldPractice(
      WeldProcess process,
      double overWeldFraction,
      PositionFactors positionFactors,
      double restartMin) {
    this(process, overWeldFraction, positionFactors, restartMin, STANDARD_FILLER, STANDARD_GAS);
  }

  /**
   * Metal, filler, gas and hours of one line of the weld list.
   *
   * @param seam the line
   * @return its estimate
   */
  public SeamEstimate estimate(WeldSeam seam) {
    double depositKg = seam.depositMm3(overWeldFraction) * WeldMetal.KG_PER_MM3;
    double flatArcHours = depositKg / process.depositKgPerHour();
    double arcHours = flatArcHours * positionFactors.of(seam.position());
    double restarts = (seam.starts() - 1.0) * seam.count();
    double clockHours =
        arcHours / process.operatingFactor(seam.place()) + restarts * restartMin / 60;
    return new SeamEstimate(
        seam,
        depositKg,
        depositKg / process.depositionEfficiency(),
        process.gasLitresPerMin() * 60 * arcHours,
        arcHours,
        clockHours);
  }

  /**
   * The whole weld list.
   *
   * @param seams its lines
   * @return each line with its estimate
   */
  public WeldEstimate estimate(List<WeldSeam> seams) {
    List<SeamEstimate> estimates = new ArrayList<>(seams.size());
    for (WeldSeam seam : seams) {
      estimates.add(estimate(seam));
    }
    return new WeldEstimate(this, estimates);
  }
}
