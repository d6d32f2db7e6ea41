package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.pounds;

import java.util.ArrayList;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The group {@code measured.loads}. */
final class LoadsPart {
  private static final Field<String> NAME = Field.text("name", "what is carried", 60);
  private static final Field<Double> WEIGHT =
      Field.massKg("weight", "its weight", pounds(1), pounds(20000));
  private static final Field<Double> AHEAD =
      Field.lengthMm("ahead", "where its middle lies, negative behind", inches(-200), inches(300))
          .measuredFrom("forward from the rear axle");

  static final Field<List<FieldValues>> FIELD =
      Field.sections(
              "loads",
              "what the vehicle carries at most beyond what it was weighed with: driver, passengers,"
                  + " fuel, load in the bed",
              List.of(NAME, WEIGHT, AHEAD))
          .withDefault(List.of());

  private LoadsPart() {}

  static List<CarriedLoad> of(List<FieldValues> all) {
    List<CarriedLoad> loads = new ArrayList<>(all.size());
    for (FieldValues values : all) {
      loads.add(new CarriedLoad(values.get(NAME), values.get(WEIGHT), values.get(AHEAD)));
    }
    return loads;
  }
}
