package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.planning.estimate.Explanation.Step;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.money.Money;
import trammel.trade.welding.WeldEstimate;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldProcess;

/**
 * Follows wire, gas, torch time and sets of bolts back to the weld list and to their own prices.
 */
final class SupplyTrail {
  private static final double CUBIC_FOOT_LITRES = 28.316846592;

  private final Estimate estimate;
  private final WeldEstimate welds;
  private final WeldProcess process;
  private final QuantityPrinter print;

  SupplyTrail(Estimate estimate) {
    this.estimate = estimate;
    welds = estimate.welds();
    process = welds.practice().process();
    print = new QuantityPrinter(estimate.draft().linkageSite().units());
  }

  /** How the quantity or the price of a line came about; empty for any other line. */
  List<Step> of(String key) {
    if (key.equals(WorkHours.TORCH_TIME)) {
      return torch();
    }
    if (key.equals(welds.practice().fillerItem())) {
      return wire();
    }
    if (key.equals(welds.practice().gasItem())) {
      return gas();
    }
    for (BoltLine bolt : estimate.materials().bolts()) {
      if (key.equals(CostSheet.key(bolt))) {
        return bolt(bolt);
      }
    }
    return List.of();
  }

  private List<Step> metal() {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            Counts.of(welds.lines().size(), "line") + " of the weld list, together",
            print.length(welds.lengthMm())));
    steps.add(
        new Step(
            "weld metal, every fillet leg laid "
                + QuantityPrinter.percent(BigDecimal.valueOf(welds.practice().overWeldFraction()))
                + " larger than drawn",
            kilograms(welds.depositKg())));
    return steps;
  }

  private List<Step> torch() {
    List<Step> steps = metal();
    double flatHours = welds.depositKg() / process.depositKgPerHour();
    steps.add(
        new Step(
            "over what " + process.title() + " lays in an hour",
            kilograms(process.depositKgPerHour())));
    steps.add(new Step("arc time, all of it flat", hours(flatHours)));
    steps.add(new Step("arc time as the welds lie", hours(welds.arcHours())));
    for (WeldPlace place : WeldPlace.values()) {
      steps.add(
          new Step(
              "torch time "
                  + place.title()
                  + ", where the arc burns "
                  + QuantityPrinter.percent(BigDecimal.valueOf(process.operatingFactor(place)))
                  + " of the clock, restarts included",
              hours(welds.clockHours(place))));
    }
    steps.add(new Step("together", hours(welds.clockHours())));
    return steps;
  }

  private List<Step> wire() {
    List<Step> steps = metal();
    steps.add(
        new Step(
            "over the share of the wire that ends in the weld",
            QuantityPrinter.percent(BigDecimal.valueOf(process.depositionEfficiency()))));
    steps.add(new Step("wire needed", kilograms(welds.fillerKg())));
    return steps;
  }

  private List<Step> gas() {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("arc time of all welds", hours(welds.arcHours())));
    steps.add(new Step("times the flow in an hour", litres(process.gasLitresPerMin() * 60)));
    steps.add(new Step("gas needed", litres(welds.gasLitres())));
    return steps;
  }

  private List<Step> bolt(BoltLine bolt) {
    BigDecimal nut = bolt.size().nutPrice();
    BigDecimal washers = bolt.size().washerPrice().multiply(BigDecimal.valueOf(2));
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "grip that it clamps; the next stocked length holds nut, washers and two threads",
            print.length(bolt.gripMm())));
    steps.add(price("bolt", bolt.setPrice().subtract(nut).subtract(washers)));
    steps.add(price("lock nut", nut));
    steps.add(price("two washers", washers));
    return steps;
  }

  private Step price(String text, BigDecimal amount) {
    return new Step(text, new Money(amount, estimate.price().terms().currency()).text());
  }

  private String kilograms(double massKg) {
    return print.system() == UnitSystem.US
        ? DecimalText.fixed(massKg / 0.45359237, 3) + " lb"
        : DecimalText.fixed(massKg, 3) + " kg";
  }

  private String litres(double litres) {
    return print.system() == UnitSystem.US
        ? DecimalText.fixed(litres / CUBIC_FOOT_LITRES, 3) + " ft3"
        : DecimalText.fixed(litres, 1) + " L";
  }

  private static String hours(double hours) {
    return DecimalText.fixed(hours, 3) + " h";
  }
}
