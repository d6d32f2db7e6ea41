package trammel.trade.steel;

/** A form in which steel is bought: a bar or tube by length, a plate or sheet by area. */
public sealed interface SteelStock permits SteelSection, PlateStock {

  /** Name as it stands on a shop list in US units: {@code 1-3/4 x .120 wall round tube}. */
  String usName();

  /** Name as it stands on a shop list in metric units: {@code 44.45 x 3.05 mm round tube}. */
  String metricName();
}
