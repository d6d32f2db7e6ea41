package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.welding.PositionFactors;
import trammel.trade.welding.WeldPractice;
import trammel.trade.welding.WeldProcess;
import trammel.trade.welding.WireFeed;

/** The section {@code welding}: how the shop welds, from a spool of solid wire. */
final class WeldingSection extends CatalogSection {
  private static final double LONGEST_POSITION = 5;

  private static final Field<String> PROCESS =
      Field.text("process", "short name of the process, such as gmaw-solid-mix", 40);
  private static final Field<Double> WIRE =
      Field.lengthMm("wire", "diameter of the solid wire", inches(0.02), inches(0.15));
  private static final Field<Double> FEED =
      Field.lengthMm("feed_per_minute", "wire fed in a minute", inches(20), inches(1900));
  private static final Field<Double> DEPOSITION =
      Field.percent("deposition", "share of the wire that ends in the weld", 0.3, 1);
  private static final Field<Double> BENCH =
      Field.percent("bench", "share of the clock that the arc burns at the bench", 0.02, 1);
  private static final Field<Double> VEHICLE =
      Field.percent("vehicle", "the same under a vehicle", 0.02, 1);
  private static final Field<Double> GAS_FLOW =
      Field.number(
          "gas_flow",
          "gas: ft³/h in a file in us units, L/min in a metric one; 0 for none",
          0,
          120);
  private static final Field<Double> OVER_WELD =
      Field.percent("over_weld", "how much larger each leg is laid than drawn", 0, 1);
  private static final Field<Double> HORIZONTAL = position("horizontal");
  private static final Field<Double> VERTICAL = position("vertical");
  private static final Field<Double> OVERHEAD = position("overhead");
  private static final Field<Double> RESTART =
      Field.timeHours("restart", "clock time of each restart in a weld", 0, 1);

  private static final Field<String> WIRE_ITEM =
      Field.text("wire_item", "name of the item that is bought as wire, by the lb or kg", 60)
          .withDefault(WeldPractice.STANDARD_FILLER);
  private static final Field<String> GAS_ITEM =
      Field.text("gas_item", "name of the item that is bought as gas, by the ft3, L or m3", 60)
          .withDefault(WeldPractice.STANDARD_GAS);

  WeldingSection() {
    super(
        "welding",
        "how the shop welds",
        List.of(
            PROCESS,
            Purchase.TITLE,
            WIRE,
            FEED,
            DEPOSITION,
            BENCH,
            VEHICLE,
            GAS_FLOW,
            OVER_WELD,
            HORIZONTAL,
            VERTICAL,
            OVERHEAD,
            RESTART,
            WIRE_ITEM,
            GAS_ITEM,
            Purchase.SOURCE));
  }

  private static Field<Double> position(String key) {
    return Field.number(key, "arc time " + key + " over arc time flat", 1, LONGEST_POSITION);
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    WeldProcess process =
        new WeldProcess(
            values.get(PROCESS),
            values.get(Purchase.TITLE),
            WireFeed.solidSteel(values.get(WIRE), values.get(FEED)),
            values.get(DEPOSITION),
            values.get(BENCH),
            values.get(VEHICLE),
            CatalogUnits.litresPerMin(values.get(GAS_FLOW), entry.units()));
    PositionFactors positions =
        new PositionFactors(values.get(HORIZONTAL), values.get(VERTICAL), values.get(OVERHEAD));
    double restartMin = values.get(RESTART) * 60;
    assembly.requireItem(values.get(WIRE_ITEM), values.locationOf(WIRE_ITEM));
    assembly.requireItem(values.get(GAS_ITEM), values.locationOf(GAS_ITEM));
    assembly.welding =
        Optional.of(
            new WeldPractice(
                process,
                values.get(OVER_WELD),
                positions,
                restartMin,
                values.get(WIRE_ITEM),
                values.get(GAS_ITEM)));
  }
}
