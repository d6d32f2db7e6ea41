package trammel.planning.job;

import java.time.LocalDate;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/** The part {@code job} of a job file. */
final class HeaderPart {
  private static final Field<String> NUMBER =
      Field.text("number", "the shop's number for the job", 40);
  private static final Field<LocalDate> DATE = Field.date("date", "day of the job");
  private static final Field<String> CUSTOMER = Field.text("customer", "who it is for", 120);
  private static final Field<String> VEHICLE =
      Field.text("vehicle", "year, kind and anything that tells the vehicle apart", 120);
  static final Field<String> UNITS =
      Field.choice("units", "what bare numbers in this file mean", List.of("us", "metric"))
          .withDefault("us");
  private static final Field<String> NOTE =
      Field.note("note", "anything else the shop must know; the customer is not shown it", 2000)
          .optional();
  private static final Field<String> CUSTOMER_NOTE =
      Field.note("customer_note", "anything else the customer is told; printed on the quote", 2000)
          .optional();

  static final Field<FieldValues> FIELD =
      Field.section(
          "job",
          "what the job is called",
          List.of(NUMBER, DATE, CUSTOMER, VEHICLE, UNITS, NOTE, CUSTOMER_NOTE));

  private HeaderPart() {}

  static JobHeader of(FieldValues values) {
    return new JobHeader(
        values.get(NUMBER),
        values.get(DATE),
        values.get(CUSTOMER),
        values.get(VEHICLE),
        UnitSystem.ofWord(values.get(UNITS)),
        values.find(NOTE),
        values.find(CUSTOMER_NOTE));
  }
}
