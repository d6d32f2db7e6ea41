package trammel.planning.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.tree.Problems;

/** The lists {@code extras} and {@code left_out} of a job's terms. */
final class ExtrasPart {
  private static final Field<String> TITLE =
      Field.text("title", "what it is, for quote and cost sheet", 90);
  private static final Field<String> KIND =
      Field.choice("kind", "what kind of line it is", ExtraKind.words());
  private static final Field<Double> HOURS =
      Field.timeHours(
              "hours", "for hours, how many; for a customer's part, what fitting it takes", 0, 1000)
          .optional();
  private static final Field<String> OPERATION =
      Field.text("operation", "for an operation, its name in the catalog", 60).optional();
  private static final Field<BigDecimal> QUANTITY =
      Field.money("quantity", "how many").withDefault(BigDecimal.ONE);
  private static final Field<BigDecimal> PRICE =
      Field.money(
              "price",
              "for a part or outside work what one costs the shop, for a credit what is taken off")
          .optional();
  private static final Field<String> SUPPLIER =
      Field.text("supplier", "for a part or outside work, who delivers it; it is on that order", 60)
          .optional();
  private static final Field<Integer> LEAD_DAYS =
      Field.count("lead_days", "for a part or outside work, working days until it is there", 0, 365)
          .optional();
  private static final Field<String> WHY = Field.text("why", "what asks for it", 200);

  /** Lines of the job's own. */
  static final Field<List<FieldValues>> FIELD =
      Field.sections(
              "extras",
              "lines of the job's own, beside what its plan asks for",
              List.of(TITLE, KIND, HOURS, OPERATION, QUANTITY, PRICE, SUPPLIER, LEAD_DAYS, WHY))
          .optional();

  private static final Field<String> WORK =
      Field.text("work", "name of an operation, or of an item without a place on the vehicle", 60);
  private static final Field<String> REASON =
      Field.text("reason", "why this job does without", 200);

  /** Work and parts of the plan that this job does without. */
  static final Field<List<FieldValues>> LEFT_OUT =
      Field.sections(
              "left_out",
              "work and parts of the plan that this job does without",
              List.of(WORK, REASON))
          .optional();

  private ExtrasPart() {}

  static List<Extra> of(FieldValues terms) {
    List<Extra> extras = new ArrayList<>();
    for (FieldValues values : terms.find(FIELD).orElse(List.of())) {
      extras.add(
          new Extra(
              values.get(TITLE),
              ExtraKind.ofWord(values.get(KIND)),
              values.find(HOURS),
              values.find(OPERATION),
              values.get(QUANTITY),
              values.find(PRICE),
              values.find(SUPPLIER),
              values.find(LEAD_DAYS).orElse(0),
              values.get(WHY),
              values.location()));
    }
    return extras;
  }

  static List<LeftOut> leftOut(FieldValues terms) {
    List<LeftOut> leftOut = new ArrayList<>();
    for (FieldValues values : terms.find(LEFT_OUT).orElse(List.of())) {
      leftOut.add(new LeftOut(values.get(WORK), values.get(REASON), values.locationOf(WORK)));
    }
    return leftOut;
  }

  static void check(FieldValues terms, Problems problems) {
    Set<String> titles = new HashSet<>();
    for (FieldValues values : terms.find(FIELD).orElse(List.of())) {
      values.find(KIND).ifPresent(kind -> check(values, ExtraKind.ofWord(kind), problems));
      Optional<String> title = values.find(TITLE);
      if (title.isPresent() && !titles.add(title.get().toLowerCase(Locale.ROOT))) {
        problems.error(
            values.locationOf(TITLE),
            "'" + title.get() + "' a second time",
            "a title of its own for every extra",
            "Give one of the two another title, or raise the quantity of one.");
      }
    }
  }

  private static void check(FieldValues values, ExtraKind kind, Problems problems) {
    switch (kind) {
      case HOURS -> {
        need(values, HOURS, "hours: 2 h", problems);
        refuse(values, List.of(OPERATION, PRICE, SUPPLIER, LEAD_DAYS), kind, problems);
      }
      case OPERATION -> {
        need(values, OPERATION, "operation: move-exhaust", problems);
        refuse(values, List.of(HOURS, PRICE, SUPPLIER, LEAD_DAYS), kind, problems);
      }
      case PART, OUTSIDE_WORK, CREDIT -> {
        need(values, PRICE, "price: 120", problems);
        refuse(values, List.of(HOURS, OPERATION), kind, problems);
        if (kind == ExtraKind.CREDIT) {
          refuse(values, List.of(SUPPLIER, LEAD_DAYS), kind, problems);
        }
      }
      case CUSTOMERS_PART ->
          refuse(values, List.of(OPERATION, PRICE, SUPPLIER, LEAD_DAYS), kind, problems);
    }
    values
        .find(QUANTITY)
        .filter(quantity -> quantity.signum() == 0)
        .ifPresent(
            none ->
                problems.error(
                    values.locationOf(QUANTITY),
                    "0",
                    "more than 0",
                    "Take the line out where there is none."));
  }

  private static void need(FieldValues values, Field<?> field, String example, Problems problems) {
    if (!values.isWritten(field)) {
      problems.error(
          values.locationOf(field),
          "nothing",
          field.key() + " for an extra of this kind",
          "Add it, such as " + example + ".");
    }
  }

  private static void refuse(
      FieldValues values, List<Field<?>> fields, ExtraKind kind, Problems problems) {
    for (Field<?> field : fields) {
      if (values.isWritten(field)) {
        problems.error(
            values.locationOf(field),
            field.key(),
            "no " + field.key() + " for an extra of the kind " + kind.word(),
            "Take it out, or write a line of another kind for it.");
      }
    }
  }
}
