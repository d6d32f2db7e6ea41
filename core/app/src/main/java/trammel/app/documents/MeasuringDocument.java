package trammel.app.documents;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import trammel.app.drawings.MeasuringPicture;
import trammel.app.text.Cautions;
import trammel.planning.job.JobFields;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** The blank sheet that goes to the vehicle with the tape, the angle finder and the scales. */
public final class MeasuringDocument {
  private static final String MEASURED = "measured";
  private static final String CHOSEN = "chosen";
  private static final Pattern INCHES = Pattern.compile("\\b(\\d+(?:\\.\\d+)?) in\\b(?=[,;.)]|$)");
  private static final Set<String> WANTED =
      Set.of("rail_underside_at_axle", "bump", "droop", "top_speed");

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

  /** What there may be several of: a column for each of three. */
  private final Grid several =
      new Grid(
          "blrlll",
          new int[] {6, 50, 8, 12, 12, 12},
          "no.",
          "what it is, and from where",
          "in",
          "one",
          "two",
          "three");

  private final Grid wanted =
      new Grid("lr" + "l", new int[] {50, 10, 40}, "what is wanted", "in", "");

  private MeasuringDocument(UnitSystem units) {
    this.units = units;
  }

  /** The document; its fields are those of the job file. */
  public static PaperDocument of(String shop, UnitSystem units) {
    MeasuringDocument document = new MeasuringDocument(units);
    for (Field<?> field : JobFields.all()) {
      if (field.key().equals(MEASURED)) {
        document.addAll(field, false, document.grid);
        document.addAll(field, true, document.several);
      } else if (field.key().equals(CHOSEN)) {
        field.children().forEach(document::addWanted);
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
    model.put("several", document.several);
    model.put("wanted", document.wanted);
    model.put("cautions", DocumentModel.texts(Cautions.lines(units)));
    return new PaperDocument("measuring", model, units);
  }

  /** Adds what there is one of, or what there may be several of. */
  private void addAll(Field<?> measured, boolean lists, Grid into) {
    for (Field<?> part : measured.children()) {
      if (lists == (part.kind() == FieldKind.SECTION_LIST)) {
        add(part, MEASURED, into, "");
      }
    }
  }

  /** A heading is put over its first line, never over another heading. */
  private void add(Field<?> field, String within, Grid into, String heading) {
    String path = within + "." + field.key();
    if (field.children().isEmpty()) {
      line(field, path, into);
      return;
    }
    String over = heading.isEmpty() ? field.help() : heading + ": " + field.help();
    int before = counted;
    boolean headed = false;
    for (Field<?> child : field.children()) {
      if (!headed && child.children().isEmpty()) {
        into.group(over);
        headed = true;
      }
      add(child, path, into, headed ? "" : over);
      headed |= !child.children().isEmpty();
    }
    // The picture shows a point once, with the numbers of all that is measured of it.
    String last = Integer.toString(counted);
    if (counted > before) {
      numbers.put(path, before + 1 == counted ? last : before + 1 + "-" + last);
    }
  }

  /** What decides the layout and is asked with the tape in hand: linkage, springs, ride height. */
  private void addWanted(Field<?> field) {
    if (field.key().equals("linkage_options")) {
      wanted.row(
          "side of the frame rails on which the bars run: between them, outside them", "", "");
    } else if (field.key().equals("ride")) {
      field.children().forEach(this::addWanted);
    } else if (field.key().equals("linkage")) {
      wanted.row("linkage that carries the axle", "", "");
    } else if (field.key().equals("spring")) {
      wanted.row("springs: coil or air, on the shocks or beside them", "", "");
    } else if (WANTED.contains(field.key())) {
      wanted.row(field.help(), field.unit(units), "");
    }
  }

  /** A length that a help names in inches, on a sheet that is read in millimetres. */
  private String inUnits(String help) {
    return units == UnitSystem.US
        ? help
        : INCHES
            .matcher(help)
            .replaceAll(
                inches ->
                    new QuantityPrinter(units).length(25.4 * Double.parseDouble(inches.group(1))));
  }

  private void line(Field<?> field, String path, Grid into) {
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
    into.row(number, inUnits(what.toString()), field.unit(units), "", "", "");
  }
}
