package trammel.planning.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.reading.fields.FieldReader;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.Tolerances;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/** Reads job files. Everything wrong with one file is reported at once. */
public final class JobReader {
  private JobReader() {}

  /**
   * Reads a job file, JSON or YAML.
   *
   * @throws trammel.reading.tree.BadInputException with everything that is wrong with it
   */
  public static Job read(Path file) {
    return read(JobDocument.load(file));
  }

  /**
   * Reads a job from a text that has the name of a file.
   *
   * @throws trammel.reading.tree.BadInputException with everything that is wrong with it
   */
  public static Job read(String fileName, String text) {
    return read(JobDocument.of(fileName, text));
  }

  /**
   * Reads a job from its document, which may have been changed by {@link JobDocument#withValue}.
   *
   * @throws trammel.reading.tree.BadInputException with everything that is wrong with it
   */
  public static Job read(JobDocument document) {
    ObjectNode root = document.root();
    UnitSystem units = units(root);
    Problems problems = new Problems();
    FieldReader reader = new FieldReader(units, tolerances(root, units), problems);
    FieldValues values = reader.read(root, JobFields.all());
    checkAcrossFields(values, problems, new QuantityPrinter(units));
    problems.throwIfErrors();
    return new Job(
        HeaderPart.of(values.get(HeaderPart.FIELD)),
        MeasuredPart.of(values.get(MeasuredPart.FIELD)),
        ChosenPart.of(values.get(ChosenPart.FIELD)),
        TermsPart.of(values.get(TermsPart.FIELD)),
        document,
        values.defaultsTaken(units),
        problems.warnings());
  }

  /** The units come first: they decide how everything else is read. Faults are reported later. */
  private static UnitSystem units(ObjectNode root) {
    Optional<ObjectNode> header = root.findObject(HeaderPart.FIELD.key());
    if (header.isEmpty()) {
      return UnitSystem.US;
    }
    FieldReader ahead = new FieldReader(UnitSystem.US, Tolerances.USUAL, new Problems());
    Optional<String> word =
        ahead.read(header.get(), List.of(HeaderPart.UNITS)).find(HeaderPart.UNITS);
    return word.isPresent() ? UnitSystem.ofWord(word.get()) : UnitSystem.US;
  }

  /** The tolerances come before the measurements that carry them. Faults are reported later. */
  private static Tolerances tolerances(ObjectNode root, UnitSystem units) {
    Optional<ObjectNode> measured = root.findObject(MeasuredPart.FIELD.key());
    if (measured.isEmpty()) {
      return Tolerances.USUAL;
    }
    FieldReader ahead = new FieldReader(units, Tolerances.USUAL, new Problems());
    Optional<FieldValues> given =
        ahead.read(measured.get(), List.of(MeasuredPart.TOLERANCE)).find(MeasuredPart.TOLERANCE);
    return given.isPresent() ? MeasuredPart.tolerances(given.get()) : Tolerances.USUAL;
  }

  private static void checkAcrossFields(
      FieldValues values, Problems problems, QuantityPrinter printer) {
    Optional<FieldValues> measured = values.find(MeasuredPart.FIELD);
    if (measured.isPresent()) {
      MeasuredPart.check(measured.get(), problems, printer);
    }
    Optional<FieldValues> chosen = values.find(ChosenPart.FIELD);
    if (chosen.isPresent()) {
      ChosenPart.check(chosen.get(), problems);
    }
    if (measured.isPresent() && chosen.isPresent()) {
      ChosenPart.checkAgainst(measured.get(), chosen.get(), problems);
    }
    Optional<FieldValues> terms = values.find(TermsPart.FIELD);
    if (terms.isPresent()) {
      TermsPart.check(terms.get(), problems);
    }
  }
}
