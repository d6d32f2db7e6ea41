package trammel.trade.welding;

/** What is melted, and how fast. */
public sealed interface Filler permits WireFeed, RodMelt {

  /** Filler melted in an hour of arc, kg/h. */
  double meltOffKgPerHour();
}
