package trammel.trade.welding;

/**
 * Processes of the small shop with everyday settings, to start from until a catalog says how the
 * shop itself runs them. Deposition efficiencies and operating factors are the rounded middle of
 * published tables (ESAB, Filler Metal Data Handbook, section 8; TWI, typical duty cycles); the
 * lower factors on a vehicle are common practice.
 */
public enum CommonWeldProcess {
  GMAW_SOLID_MIX("gmaw-solid-mix", "MIG, solid wire, 75/25 gas") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), WIRE_035, 0.94, 0.35, 0.20, GAS_30_CFH);
    }
  },
  GMAW_SOLID_CO2("gmaw-solid-co2", "MIG, solid wire, CO2") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), WIRE_035, 0.92, 0.35, 0.20, GAS_30_CFH);
    }
  },
  FCAW_GAS("fcaw-gas", "Flux-cored wire, gas-shielded") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), WIRE_035, 0.85, 0.35, 0.20, GAS_35_CFH);
    }
  },
  FCAW_SELF("fcaw-self", "Flux-cored wire, self-shielded") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), WIRE_035, 0.78, 0.35, 0.20, 0);
    }
  },
  SMAW("smaw", "Stick") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), new RodMelt(3.2, 1.6), 0.60, 0.25, 0.15, 0);
    }
  },
  GTAW("gtaw", "TIG") {
    @Override
    public WeldProcess process() {
      return new WeldProcess(key(), title(), new RodMelt(2.4, 0.5), 0.95, 0.20, 0.15, 8);
    }
  };

  /** 0.035 in wire at 220 in/min, by the published 3648 in of wire in a pound (ESAB). */
  private static final WireFeed WIRE_035 =
      new WireFeed(0.035 * 25.4, 220 * 25.4, 3648 * 25.4 / 0.45359237);

  private static final double LITRES_PER_CUBIC_FOOT = 28.316846592;
  private static final double GAS_30_CFH = 30 * LITRES_PER_CUBIC_FOOT / 60;
  private static final double GAS_35_CFH = 35 * LITRES_PER_CUBIC_FOOT / 60;

  private final String key;
  private final String title;

  CommonWeldProcess(String key, String title) {
    this.key = key;
    this.title = title;
  }

  /** Short name in files. */
  public String key() {
    return key;
  }

  /** Name on a weld list. */
  public String title() {
    return title;
  }

  /** The process with its everyday settings. */
  public abstract WeldProcess process();
}
