package trammel.planning.job;

import static trammel.planning.job.ShopUnits.inches;
import static trammel.planning.job.ShopUnits.pounds;

import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;

/** The group {@code measured.hitch}. */
final class HitchPart {
  private static final Field<Double> BEHIND =
      Field.lengthMm(
          "behind", "how far the ball lies behind the rear axle", inches(4), inches(150));
  private static final Field<Double> TONGUE =
      Field.massKg(
          "tongue", "what the trailer's tongue weighs on the ball", pounds(1), pounds(5000));
  private static final Field<Double> TRAILER =
      Field.massKg("trailer", "what the loaded trailer weighs", pounds(50), pounds(40000));

  static final Field<FieldValues> FIELD =
      Field.section(
              "hitch",
              "a trailer hitch that is to be used; its tongue counts among the loads",
              List.of(BEHIND, TONGUE, TRAILER))
          .optional();

  private HitchPart() {}

  static Hitch of(FieldValues values) {
    return new Hitch(values.get(BEHIND), values.get(TONGUE), values.get(TRAILER));
  }
}
