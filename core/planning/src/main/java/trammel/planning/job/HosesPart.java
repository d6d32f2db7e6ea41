package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;

import java.util.ArrayList;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.Position;

/** The list {@code measured.hoses}. */
final class HosesPart {
  private static final Field<String> NAME = Field.text("name", "what the shop calls it", 60);
  private static final Field<Position> ON_FRAME =
      Field.point("on_frame", "where it is held on the frame", inches(-150), inches(300))
          .measuredFrom(
              "forward from the axle mark, left from the centre plane, up from the floor");
  private static final Field<Position> ON_AXLE =
      Field.point("on_axle", "where it is held on the axle, at ride", inches(-40), inches(40))
          .measuredFrom("forward, left and up from the axle's centre");
  private static final Field<Double> LENGTH =
      Field.lengthMm("length", "its length between the fittings", inches(2), inches(80)).optional();

  static final Field<List<FieldValues>> FIELD =
      Field.sections(
              "hoses",
              "brake hoses, vent hoses and lines that go from the frame to the axle",
              List.of(NAME, ON_FRAME, ON_AXLE, LENGTH))
          .withDefault(List.of());

  private HosesPart() {}

  static List<Hose> of(List<FieldValues> all) {
    List<Hose> hoses = new ArrayList<>(all.size());
    for (FieldValues values : all) {
      hoses.add(
          new Hose(
              values.get(NAME), values.get(ON_FRAME), values.get(ON_AXLE), values.find(LENGTH)));
    }
    return hoses;
  }
}
