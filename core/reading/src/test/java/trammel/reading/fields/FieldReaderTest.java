package trammel.reading.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.PartialPosition;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.Span;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class FieldReaderTest {
  private static final Field<Double> LENGTH =
      Field.lengthMm("bar_length", "length of the bar", 25.4, 508);
  private static final Field<String> SIDE =
      Field.choice("side", "which side", List.of("inboard", "outboard")).withDefault("inboard");
  private static final Field<Boolean> BENT = Field.flag("bent", "bar is bent").optional();
  private static final List<Field<?>> FIELDS = List.of(LENGTH, SIDE, BENT);

  private static FieldValues read(String yaml, List<Field<?>> fields) {
    return FieldReader.readAll(DocumentReader.read("options.yaml", yaml), fields, UnitSystem.US);
  }

  private static BadInputException refused(String yaml, List<Field<?>> fields) {
    return assertThrows(BadInputException.class, () -> read(yaml, fields));
  }

  @Test
  void valuesAreTypedAndInTheUnitOfTheField() {
    FieldValues values = read("{bar_length: 10 in, bent: yes}", FIELDS);
    assertEquals(254, values.get(LENGTH));
    assertEquals("inboard", values.get(SIDE));
    assertEquals(Optional.of(true), values.find(BENT));
    assertTrue(values.isGiven(LENGTH));
    assertFalse(values.isGiven(SIDE));
    assertEquals(List.of("side: inboard"), values.defaultsTaken(UnitSystem.US));
  }

  /** A line that a customer's name started would read like one of the quote's own. */
  @Test
  void onlyANoteHasSeveralLines() {
    String yaml = "word: \"first\\nTOTAL $1\"";
    BadInputException refused = refused(yaml, List.of(Field.text("word", "a word", 60)));
    assertEquals("word", refused.problems().get(0).field());
    assertTrue(refused.getMessage().contains("It has a line break"), refused.getMessage());
    Field<String> note = Field.note("word", "a note", 60);
    assertEquals("first\nTOTAL $1", read(yaml, List.of(note)).get(note));
    Field<String> word = Field.text("word", "a word", 60);
    assertEquals("first", read("word: |\n  first\n", List.of(word)).get(word));
  }

  @Test
  void optionalFieldThatIsLeftOutIsEmptyAndIsNotGot() {
    FieldValues values = read("bar_length: 10", FIELDS);
    assertTrue(values.find(BENT).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> values.get(BENT));
  }

  @Test
  void fieldIsNotGotAsAnotherKind() {
    FieldValues values = read("bar_length: 10", FIELDS);
    Field<Integer> other = Field.count("bar_length", "number of bars", 1, 4);
    assertThrows(IllegalArgumentException.class, () -> values.get(other));
  }

  @Test
  void missingUnknownWrongAndOutOfRangeAreReportedTogether() {
    BadInputException refused = refused("{sied: inboard, bent: 3, colour: red}", FIELDS);
    assertEquals(
        List.of("sied", "colour", "bar_length", "bent"),
        refused.problems().stream().map(Problem::field).toList());
    assertTrue(refused.getMessage().contains("Did you mean side?"));
  }

  @Test
  void misspeltKeyIsReportedOnceAndNotAlsoAsMissing() {
    BadInputException refused = refused("bar_lenght: 10 in", FIELDS);
    assertEquals(1, refused.problems().size());
    assertTrue(refused.getMessage().contains("Did you mean bar_length?"), refused.getMessage());
  }

  @Test
  void rangeIsPrintedInTheUnitsOfTheJobAndTheValueInTheWordsOfTheUser() {
    ObjectNode node = DocumentReader.read("options.yaml", "bar_length: 12 cm 3");
    BadInputException us =
        assertThrows(
            BadInputException.class, () -> FieldReader.readAll(node, FIELDS, UnitSystem.US));
    assertTrue(us.getMessage().contains("given '12 cm 3'"), us.getMessage());
    assertTrue(us.getMessage().contains("a length from 1 in to 20 in"), us.getMessage());
    BadInputException metric =
        assertThrows(
            BadInputException.class, () -> FieldReader.readAll(node, FIELDS, UnitSystem.METRIC));
    assertTrue(metric.getMessage().contains("from 25.4 mm to 508 mm"), metric.getMessage());
  }

  @Seeds(1000)
  void printedBoundsOfAnyRangeAreAccepted(Draw draw) {
    QuantityKind kind = draw.oneOf(QuantityKind.class);
    UnitSystem units = draw.oneOf(UnitSystem.class);
    double least = draw.between(-900, 900);
    double width = draw.between(1, 900);
    double factor = kind.bareUnit(units).factor();
    QuantityRange range = new QuantityRange(kind, least * factor, (least + width) * factor);
    String words = range.allowed(units);
    String bounds = words.substring(words.indexOf(" from ") + 6);
    for (String bound : bounds.split(" to ")) {
      assertTrue(range.holds(Quantities.parse(bound, kind, units)), words);
    }
    assertTrue(range.holds(Quantities.parse(range.example(units), kind, units)), words);
  }

  @Test
  void datumMustBeStatedForAMeasuredAngle() {
    Field<MeasuredAngle> angle = Field.measuredAngle("angle", "angle of the bar", -0.5, 0.5);
    List<Field<?>> fields = List.of(angle);
    assertEquals(Datum.FRAME, read("angle: -2.5 deg from frame", fields).get(angle).from());
    MeasuredAngle twice = read("angle: [1 deg from level, 1.1 from level]", fields).get(angle);
    assertEquals(Math.toRadians(1.05), twice.meanRad(), 1e-12);
    assertTrue(refused("angle: 2.5 deg", fields).getMessage().contains("2.5 deg from frame"));
    assertTrue(
        refused("angle: [1 deg from level, 1 deg from frame]", fields)
            .getMessage()
            .contains("same datum"));
  }

  @Test
  void placesSpansAndNamedGroupsAreRead() {
    Field<Position> point = Field.point("point", "a place", -1000, 1000);
    Field<PartialPosition> part = Field.partialPoint("part", "some of a place", -1000, 1000);
    Field<Span> span = Field.span("span", "a stretch", -1000, 1000);
    Field<Map<String, FieldValues>> named =
        Field.namedSections("named", "groups by name", List.of(LENGTH));
    FieldValues values =
        read(
            """
            point: {forward: 1 in, left: -2 in, up: 3 in}
            part: {up: 1 in}
            span: [-1 in, 1 in]
            named: {b: {bar_length: 2 in}, a: {bar_length: 3 in}}
            """,
            List.of(point, part, span, named));
    assertEquals(25.4, values.get(point).forwardMm());
    assertEquals(-50.8, values.get(point).leftMm());
    assertEquals(Optional.empty(), values.get(part).leftMm());
    assertEquals(new Span(-25.4, 25.4), values.get(span));
    assertEquals(List.of("b", "a"), List.copyOf(values.get(named).keySet()));
    assertEquals(76.2, values.get(named).get("a").get(LENGTH), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "95, 95",
    "95.00, 95.00",
    "'\"95.50\"', 95.50",
    "0, 0",
    "10000000, 10000000",
    "0.0001, 0.0001"
  })
  void moneyIsTheExactDecimalThatIsWritten(String written, BigDecimal amount) {
    Field<BigDecimal> money = Field.money("price", "price of the bar");
    assertEquals(amount, read("price: " + written, List.of(money)).get(money));
  }

  @Seeds(1000)
  void exactPercentageIsTheDecimalThatIsWritten(Draw draw) {
    double any = draw.between(0, 100);
    BigDecimal percent = BigDecimal.valueOf(any).setScale(4, java.math.RoundingMode.DOWN);
    Field<BigDecimal> rate = Field.exactPercent("rate", "rate", 0, 1);
    BigDecimal ratio = read("rate: " + percent.toPlainString() + " %", List.of(rate)).get(rate);
    assertEquals(0, percent.movePointLeft(2).compareTo(ratio), percent + " % became " + ratio);
  }

  @Test
  void groupWithoutRequiredFieldsMayBeLeftOutAndGivesItsDefaults() {
    Field<FieldValues> group = Field.section("group", "a group", List.of(SIDE, BENT));
    Field<FieldValues> strict = Field.section("strict", "a group", List.of(LENGTH));
    assertFalse(group.isRequired());
    assertTrue(strict.isRequired());
    FieldValues values = read("strict: {bar_length: 3 in}", List.of(group, strict));
    assertEquals("inboard", values.get(group).get(SIDE));
    assertEquals(List.of("group.side: inboard"), values.defaultsTaken(UnitSystem.US));
  }

  @Test
  void fieldThatMakesNoSenseIsRefusedWhenItIsMade() {
    assertThrows(IllegalArgumentException.class, () -> Field.lengthMm("Bar", "help", 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Field.lengthMm("bar", " ", 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Field.lengthMm("bar", "help", 1, 1));
    assertThrows(IllegalArgumentException.class, () -> Field.number("bar", "help", 0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Field.choice("bar", "help", List.of()));
    assertThrows(IllegalArgumentException.class, () -> LENGTH.withDefault(1.0));
    assertThrows(IllegalArgumentException.class, () -> SIDE.withDefault("middle"));
    assertThrows(IllegalArgumentException.class, () -> read("{}", List.of(SIDE, SIDE)));
  }

  @Test
  void valuesCanBeMadeWithoutAFile() {
    FieldValues values = FieldValues.none().with(LENGTH, 100.0);
    assertEquals(100, values.get(LENGTH));
    assertEquals("inboard", values.get(SIDE));
    assertThrows(IllegalArgumentException.class, () -> FieldValues.none().with(LENGTH, 1.0));
  }

  @Test
  void descriptionSaysWhatMayStandThere() {
    Field<Measurement> depth =
        Field.measuredLength("depth", "height of the rail", 50.8, 355.6).measuredFrom("the floor");
    assertEquals("in", depth.unit(UnitSystem.US));
    assertEquals("mm", depth.unit(UnitSystem.METRIC));
    assertEquals(50.8, depth.min().getAsDouble());
    assertEquals(355.6, depth.max().getAsDouble());
    assertEquals(Optional.of("the floor"), depth.datum());
    assertEquals(List.of("inboard", "outboard"), SIDE.choices());
    assertEquals(Optional.of("inboard"), SIDE.defaultText(UnitSystem.US));
    assertTrue(BENT.isOptional() && !BENT.isRequired() && LENGTH.isRequired());
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void exampleOfEveryFieldIsAccepted(UnitSystem units) {
    List<Field<?>> all =
        List.of(
            Field.lengthMm("a", "help", 0, 5),
            Field.angleRad("b", "help", -1, 1),
            Field.levelAngleRad("c", "help", -1, 1),
            Field.massKg("d", "help", 0, 9000),
            Field.forceN("e", "help", 0, 50),
            Field.rateNPerMm("f", "help", 1, 100),
            Field.torqueNmm("g", "help", 1, 10),
            Field.pressureMPa("h", "help", 0, 400),
            Field.speedMPerS("i", "help", 0, 10),
            Field.speedRpm("j", "help", 0, 9000),
            Field.timeHours("k", "help", 0, 1),
            Field.percent("l", "help", 0, 1),
            Field.exactPercent("m", "help", 0, 1),
            Field.measuredLength("n", "help", 0, 5),
            Field.measuredMass("o", "help", 0, 9000),
            Field.measuredAngle("p", "help", -1, 1),
            Field.measuredLevelAngle("q", "help", -1, 1),
            Field.measuredPoint("r", "help", -1000, 1000),
            Field.point("s", "help", -1000, 1000),
            Field.partialPoint("t", "help", -1000, 1000),
            Field.span("u", "help", -1000, 1000),
            Field.number("v", "help", 0, 1),
            Field.count("w", "help", 0, 9),
            Field.choice("x", "help", List.of("one", "two")),
            Field.choices("y", "help", List.of("one", "two")),
            Field.flag("z", "help"),
            Field.text("a1", "help", 9),
            Field.date("b1", "help"),
            Field.money("c1", "help"),
            Field.currency("d1", "help"),
            Field.section("e1", "help", List.of(LENGTH)),
            Field.sections("f1", "help", List.of(LENGTH)),
            Field.namedSections("g1", "help", List.of(LENGTH)),
            Field.options("h1", "help"));
    StringBuilder yaml = new StringBuilder();
    for (Field<?> field : all) {
      yaml.append(field.key()).append(": ").append(field.example(units)).append('\n');
    }
    FieldValues values =
        FieldReader.readAll(DocumentReader.read("all.yaml", yaml.toString()), all, units);
    for (Field<?> field : all) {
      assertTrue(values.isGiven(field), field.key());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "wheelbase, whelbase, true",
    "wheelbase, wheel-base, true",
    "outside_at_axle, outside_at_axel, true",
    "outside_at_axle, Outside at axle, true",
    "bump, droop, false",
    "left, right, false",
    "up, down, false",
    "wall, wal, true",
    "a_key, '', false"
  })
  void nearestWordIsFoundOnlyForASlipOfTheHand(String known, String written, boolean near) {
    assertEquals(
        near ? Optional.of(known) : Optional.empty(), NearestWord.to(written, List.of(known)));
  }
}
