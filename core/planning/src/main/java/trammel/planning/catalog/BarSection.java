package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.BarMaterial;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.RectangularTube;
import trammel.trade.steel.RoundTube;
import trammel.trade.steel.SteelSection;

/** The section {@code bars}: tube sold by the stick. */
final class BarSection extends CatalogSection {
  private static final String ROUND = "round";

  private static final Field<String> SHAPE =
      Field.choice("shape", "its section", List.of(ROUND, "rectangular"));
  private static final Field<Double> OUTSIDE = side("outside", "outside diameter, if round");
  private static final Field<Double> HEIGHT = side("height", "longer side, if rectangular");
  private static final Field<Double> WIDTH = side("width", "other side, if rectangular");
  private static final Field<Double> WALL = Field.lengthMm("wall", "wall", inches(0.02), inches(2));
  static final Field<String> STEEL = Field.text("steel", "its grade, a name in steels", 60);

  private static final Field<Double> LENGTH =
      Field.lengthMm("length", "length of the stick", inches(6), inches(600));
  private static final Field<List<FieldValues>> STICKS =
      Field.sections(
          "sticks",
          "the lengths it is sold in",
          List.<Field<?>>of(LENGTH, Purchase.PRICE, Purchase.BREAKS, Purchase.IN_STOCK));

  BarSection() {
    super(
        "bars",
        "tube by the stick, by name",
        List.of(
            Purchase.TITLE,
            SHAPE,
            OUTSIDE,
            HEIGHT,
            WIDTH,
            WALL,
            STEEL,
            STICKS,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS));
  }

  private static Field<Double> side(String key, String help) {
    return Field.lengthMm(key, help, inches(0.25), inches(19)).optional();
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    Optional<CatalogAssembly.Steel> steel =
        assembly.steel(values.get(STEEL), values.locationOf(STEEL));
    if (steel.isEmpty()) {
      return;
    }
    List<BarMaterial.Stick> sticks = new ArrayList<>();
    for (FieldValues stick : values.get(STICKS)) {
      sticks.add(
          new BarMaterial.Stick(
              stick.get(LENGTH),
              stick.get(Purchase.PRICE),
              stick.get(Purchase.IN_STOCK),
              Purchase.breaks(stick)));
    }
    assembly.bars.put(
        entry.key(),
        new BarMaterial(
            entry.key(),
            values.get(Purchase.TITLE),
            form(values),
            steel.get().yieldMPa(),
            sticks,
            Purchase.supplier(entry, values),
            Purchase.leadDays(entry, values)));
  }

  private static SteelSection form(FieldValues values) {
    boolean round = values.get(SHAPE).equals(ROUND);
    boolean asRound = values.isWritten(OUTSIDE);
    boolean asRectangular = values.isWritten(HEIGHT) && values.isWritten(WIDTH);
    if (round && asRound && !values.isWritten(HEIGHT) && !values.isWritten(WIDTH)) {
      return new RoundTube(values.get(OUTSIDE), values.get(WALL));
    }
    if (!round && asRectangular && !asRound) {
      return new RectangularTube(values.get(HEIGHT), values.get(WIDTH), values.get(WALL));
    }
    throw new IllegalArgumentException(
        round
            ? "a round tube has outside and wall. Give these and neither height nor width."
            : "a rectangular tube has height, width and wall. Give these and no outside.");
  }
}
