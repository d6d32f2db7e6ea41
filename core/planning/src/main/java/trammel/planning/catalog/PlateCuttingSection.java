package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.planning.catalog.PlateCutting.SentOut;
import trammel.planning.catalog.PlateCutting.Speed;
import trammel.planning.catalog.PlateCutting.Way;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.PlasmaSetup;

/** The section {@code plate_cutting}: how the shop has its plates cut. */
final class PlateCuttingSection extends CatalogSection {
  private static final Field<String> BY =
      Field.choice(
          "by",
          "who cuts the plates",
          List.of(Way.TABLE.word(), Way.HAND.word(), Way.SENT_OUT.word()));
  private static final Field<String> PROCESS =
      Field.text("process", "what cuts, such as plasma, 45 A", 60);
  private static final Field<Double> LEAST_HOLE =
      Field.number(
          "least_hole",
          "smallest round hole cut with the plate, in thicknesses; smaller ones are drilled",
          0,
          10);

  private static final Field<Double> UP_TO =
      Field.lengthMm("up_to", "thickest plate that this holds for", inches(0.02), inches(4));
  private static final Field<Double> FEED =
      Field.lengthMm("feed_per_minute", "run of the torch in a minute", inches(1), inches(1900));
  private static final Field<Double> PIERCE =
      Field.timeHours("pierce", "standing time of each pierce", 0, 30.0 / 3600);
  private static final Field<Double> LEAD_IN =
      Field.lengthMm("lead_in", "run from the pierce to the outline", 0, inches(3));
  private static final Field<List<FieldValues>> SPEEDS =
      Field.sections(
              "speeds", "how the table cuts, by thickness", List.of(UP_TO, FEED, PIERCE, LEAD_IN))
          .optional();

  private static final Field<String> CUT_ITEM =
      Field.text("cut_item", "name of the item priced by the length of cut: ft, in or m", 60);
  private static final Field<String> PIERCE_ITEM =
      Field.text("pierce_item", "name of the item priced by the pierce: each", 60);
  private static final Field<List<FieldValues>> SENT_OUT =
      Field.sections(
              "sent_out",
              "what is asked for cutting outside, by thickness",
              List.of(UP_TO, CUT_ITEM, PIERCE_ITEM))
          .optional();

  PlateCuttingSection() {
    super(
        "plate_cutting",
        "how the shop has its plates cut: on its own table, by hand or sent out",
        List.of(BY, PROCESS, LEAST_HOLE, SPEEDS, SENT_OUT, Purchase.SOURCE));
  }

  @Override
  boolean isSingle() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    List<Speed> speeds = new ArrayList<>();
    for (FieldValues one : values.find(SPEEDS).orElse(List.of())) {
      speeds.add(
          new Speed(
              one.get(UP_TO),
              new PlasmaSetup(one.get(FEED), one.get(PIERCE) * 3600, one.get(LEAD_IN))));
    }
    List<SentOut> sentOut = new ArrayList<>();
    for (FieldValues one : values.find(SENT_OUT).orElse(List.of())) {
      assembly.requireItem(one.get(CUT_ITEM), one.locationOf(CUT_ITEM));
      assembly.requireItem(one.get(PIERCE_ITEM), one.locationOf(PIERCE_ITEM));
      sentOut.add(new SentOut(one.get(UP_TO), one.get(CUT_ITEM), one.get(PIERCE_ITEM)));
    }
    Way way =
        switch (values.get(BY)) {
          case "table" -> Way.TABLE;
          case "hand" -> Way.HAND;
          default -> Way.SENT_OUT;
        };
    assembly.plateCutting =
        Optional.of(
            new PlateCutting(way, values.get(PROCESS), values.get(LEAST_HOLE), speeds, sentOut));
  }
}
