package trammel.planning.catalog;

import static trammel.planning.catalog.CatalogUnits.inches;
import static trammel.planning.catalog.CatalogUnits.poundsForce;
import static trammel.planning.catalog.CatalogUnits.poundsPerInch;

import java.util.List;
import trammel.brackets.material.EndFitting;
import trammel.engine.layout.Joint;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The section {@code ends}: joints with which a bar can end. */
final class EndSection extends CatalogSection {
  private static final double MOST_MISALIGNMENT_RAD = Math.toRadians(60);

  private static final Field<Boolean> THREADED =
      Field.flag("threaded", "true for a shank that screws into the tube, false for a barrel");
  private static final Field<Double> STIFFNESS =
      Field.rateNPerMm(
          "stiffness", "stiffness across the bolt", poundsPerInch(1000), poundsPerInch(5_000_000));
  private static final Field<Double> MISALIGNMENT =
      Field.angleRad(
          "misalignment", "how far it swivels each way before it binds", 0, MOST_MISALIGNMENT_RAD);
  private static final Field<Double> BOLT =
      Field.lengthMm("bolt", "diameter of the bolt through it", inches(0.1875), inches(1.5));
  private static final Field<Double> WIDTH =
      Field.lengthMm(
          "width", "width between the bracket plates, with its spacers", inches(0.25), inches(6));
  private static final Field<Double> BARREL =
      Field.lengthMm("barrel", "outside diameter of its barrel or head", inches(0.5), inches(6));
  private static final Field<Double> RATING =
      Field.forceN("rating", "radial load that it stands", poundsForce(100), poundsForce(200_000));
  private static final Field<Double> WORKING =
      Field.forceN(
              "working_load",
              "load that it may carry in service; left out, a quarter of the rating, as for rod ends",
              poundsForce(25),
              poundsForce(200_000))
          .optional();
  private static final Field<Double> SHANK =
      Field.lengthMm("shank", "centre to end of thread, if threaded", inches(0.75), inches(12))
          .optional();
  private static final Field<Double> THREAD =
      Field.lengthMm("thread", "diameter of its thread, if threaded", inches(0.25), inches(2))
          .optional();
  private static final Field<String> TUBE_END =
      Field.text("tube_end", "the item that takes its thread, if threaded", 60).optional();
  private static final Field<String> JAM_NUT =
      Field.text("jam_nut", "the item that locks it, if threaded", 60).optional();
  private static final List<Field<?>> OF_A_SHANK = List.of(SHANK, THREAD, TUBE_END, JAM_NUT);

  EndSection() {
    super(
        "ends",
        "joints for bars, by name",
        List.of(
            Purchase.TITLE,
            THREADED,
            STIFFNESS,
            MISALIGNMENT,
            BOLT,
            WIDTH,
            BARREL,
            RATING,
            WORKING,
            SHANK,
            THREAD,
            TUBE_END,
            JAM_NUT,
            Purchase.PRICE,
            Purchase.MASS,
            Purchase.SUPPLIER,
            Purchase.LEAD_DAYS,
            Purchase.SOURCE));
  }

  @Override
  boolean isPriced() {
    return true;
  }

  @Override
  void add(CatalogEntry entry, FieldValues values, CatalogAssembly assembly) {
    boolean threaded = values.get(THREADED);
    checkShank(threaded, values);
    String title = values.get(Purchase.TITLE);
    double barrelRadiusMm = values.get(BARREL) / 2;
    Joint joint =
        new Joint(
            entry.key(),
            values.get(STIFFNESS),
            values.get(MISALIGNMENT),
            values.get(BOLT),
            values.get(WIDTH),
            barrelRadiusMm,
            values.get(RATING),
            values.find(WORKING).orElse(Joint.ROD_END_SHARE * values.get(RATING)));
    assembly.ends.put(
        entry.key(),
        new EndFitting(
            entry.key(),
            title,
            joint,
            threaded,
            threaded ? values.get(SHANK) : barrelRadiusMm,
            values.find(THREAD).orElse(0.0),
            values.find(TUBE_END).orElse(""),
            values.find(JAM_NUT).orElse("")));
    Purchase.addPart(entry.key(), title, values, entry, assembly);
    assembly.requireBolt(
        joint.boltDiameterMm(), "a bolt of its own diameter", values.locationOf(BOLT));
    if (threaded) {
      assembly.requireItem(values.get(TUBE_END), values.locationOf(TUBE_END));
      assembly.requireItem(values.get(JAM_NUT), values.locationOf(JAM_NUT));
    }
  }

  private static void checkShank(boolean threaded, FieldValues values) {
    for (Field<?> field : OF_A_SHANK) {
      if (values.isWritten(field) != threaded) {
        throw new IllegalArgumentException(
            threaded
                ? "a threaded joint has shank, thread, tube_end and jam_nut. Add "
                    + field.key()
                    + "."
                : "a barrel has no " + field.key() + ". Take it out, or write threaded: true.");
      }
    }
  }
}
