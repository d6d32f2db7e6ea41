package trammel.app.documents;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.MeasuringPicture;
import trammel.app.text.Cautions;
import trammel.planning.job.JobFields;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** The blank sheet that goes to the vehicle with the tape, the angle finder and the scales. */
public final class MeasuringDocument {
  private static final String MEASURED = "measured";

  private final UnitSystem units;
  private final Map<String, String> numbers = new LinkedHashMap<>();
  private int counted;
  private final Grid grid =
      new Grid(
          "blrlll",
          new int[] {6, 50, 8, 12, 12, 12},
          "no.",
          "what to measure, and from where",
          "in",
          "first",
          "again",
          "again");

  private MeasuringDocument(UnitSystem units) {
    this.units = units;
  }

  /** The document; its fields are those of the job file. */
  public static PaperDocument of(String shop, UnitSystem units) {
    MeasuringDocument document = new MeasuringDocument(units);
    for (Field<?> field : JobFields.all()) {
      if (field.key().equals(MEASURED)) {
        for (Field<?> part : field.children()) {
          document.add(part, MEASURED);
        }
      }
    }
    DocumentModel model = new DocumentModel();
    model.put("heading", "Measuring sheet");
    model.put("title", "Measuring sheet");
    model.put("foot", "Measuring sheet");
    model.put("shop", shop);
    model.put(
        "picture",
        MeasuringPicture.of(document.numbers),
        "Where each measurement is taken, from the left and from above");
    model.put("lines", document.grid);
    model.put("cautions", DocumentModel.texts(Cautions.lines()));
    return new PaperDocument("measuring", model, units);
  }

  private void add(Field<?> field, String within) {
    String path = within + "." + field.key();
    if (field.children().isEmpty()) {
      line(field, path);
      return;
    }
    grid.group(field.help());
    int before = counted;
    for (Field<?> child : field.children()) {
      add(child, path);
    }
    // The picture shows a point once, with the numbers of all that is measured of it.
    String last = Integer.toString(counted);
    if (counted > before) {
      numbers.put(path, before + 1 == counted ? last : before + 1 + "-" + last);
    }
  }

  private void line(Field<?> field, String path) {
    counted++;
    String number = Integer.toString(counted);
    numbers.put(path, number);
    StringBuilder what = new StringBuilder(field.help());
    field.datum().ifPresent(datum -> what.append("; ").append(datum));
    if (!field.choices().isEmpty()) {
      what.append(": ").append(String.join(", ", List.copyOf(field.choices())));
    }
    field
        .defaultText(units)
        .ifPresent(usual -> what.append(" (").append(usual).append(" if left empty)"));
    if (field.isOptional() && field.defaultText(units).isEmpty()) {
      what.append(" (if there is one)");
    }
    grid.row(number, what.toString(), field.unit(units), "", "", "");
  }
}
