package trammel.planning.rack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.document.BadInputException;
import trammel.planning.quantity.UnitSystem;

class RackFileTextTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  private static Rack rack(String lines) {
    return RackReader.read("rack.yaml", "format: trammel-rack/1\n" + lines, CATALOG);
  }

  private static String refusal(String lines) {
    return assertThrows(BadInputException.class, () -> rack(lines)).getMessage();
  }

  @Test
  void theDemonstrationRackIsReadAndWrittenAlike() {
    Rack demo = RackReader.read(Path.of("..", "..", "catalogs", "demo", "rack.yaml"), CATALOG);
    assertTrue(demo.note().orElseThrow().contains("nvented"));
    assertEquals(demo, RackReader.read("again.yaml", RackWriter.yaml(demo), CATALOG));
  }

  @Test
  void anEmptyRackIsARack() {
    assertEquals(Rack.empty(UnitSystem.US), rack(""));
    assertEquals(Rack.empty(UnitSystem.US), again(rack("")));
  }

  @Test
  void everythingWrongIsToldAtOnceWithItsLine() {
    String message =
        refusal(
            "sticks:\n  A: {bar: dom-9, length: 20 ft}\nitems:\n  gold: {quantity: 1}\n"
                + "  alignment: {quantity: 1}\nbolts:\n"
                + "  - {bolt: bolt-0.500-20, length: 1.6 in, count: 2}\n");
    assertTrue(message.contains("rack.yaml, line 3, sticks.A.bar: given 'dom-9'"), message);
    assertTrue(message.contains("line 5, items.gold"), message);
    assertTrue(message.contains("line 6, items.alignment"), message);
    assertTrue(message.contains("line 8, bolts[0].length"), message);
  }

  @Test
  void nonsenseIsRefused() {
    assertTrue(refusal("sticks:\n  A: {bar: dom-1.50x0.120, length: -3 in}\n").contains("length"));
    assertTrue(refusal("sticks:\n  A: {bar: dom-1.50x0.120}\n").contains("sticks.A.length"));
    assertTrue(refusal("shelves: 3\n").contains("shelves"));
    assertTrue(
        refusal(
                "sticks:\n  A: {bar: dom-1.50x0.120, length: 3 ft}\nsheets:\n"
                    + "  A: {plate: plate-0.250, width: 1 ft, length: 1 ft}\n")
            .contains("each name once"));
  }

  @Test
  void whatIsTakenAndPutBackIsCounted() {
    RackEdit edit =
        new RackEdit(
            rack(
                "next: 2\nsticks:\n  R2: {bar: dom-1.50x0.120, length: 3 ft, count: 2}\n"
                    + "items:\n  wire-035: {quantity: 5}\n"));
    edit.takeStick("R2");
    assertEquals("R3", edit.putStick("dom-1.50x0.120", 500));
    assertEquals(0, new BigDecimal("5").compareTo(edit.takeItem("wire-035", BigDecimal.TEN)));
    assertEquals(0, edit.takeBolts("bolt-0.500-20", 50.8, 4));
    Rack after = edit.rack();
    assertEquals(1, after.sticks().get("R2").count());
    assertEquals(Map.of(), after.items());
    assertEquals(4, after.next());
    edit.takeStick("R2");
    assertThrows(IllegalArgumentException.class, () -> edit.takeStick("R2"));
  }

  /** A rewrite never makes a piece longer, loses a thousandth of an inch at most, and only once. */
  @Property(tries = 300)
  void aRewriteNeverLengthensAPiece(
      @ForAll @DoubleRange(min = 10, max = 12_000) double lengthMm, @ForAll boolean us) {
    UnitSystem units = us ? UnitSystem.US : UnitSystem.METRIC;
    Rack once = again(one("A", lengthMm, units));
    double shownMm = once.sticks().get("A").lengthMm();
    assertTrue(shownMm <= lengthMm + 1e-4 && shownMm > lengthMm - 0.0255, lengthMm + " " + shownMm);
    assertEquals(shownMm, again(once).sticks().get("A").lengthMm(), 1e-9);
  }

  /** Whatever is painted on a piece survives the file. */
  @Property(tries = 300)
  void everyNameSurvives(@ForAll @StringLength(min = 1, max = 20) String name) {
    String written = printable(name);
    assertEquals(
        java.util.Set.of(written), again(one(written, 500, UnitSystem.METRIC)).sticks().keySet());
  }

  private static String printable(String name) {
    StringBuilder text = new StringBuilder("n");
    name.codePoints()
        .filter(c -> c >= ' ' && c < 0xD800 && !Character.isISOControl(c) && c != 0xFEFF)
        .filter(c -> c != 0x2028 && c != 0x2029)
        .forEach(text::appendCodePoint);
    return text.toString();
  }

  private static Rack one(String name, double lengthMm, UnitSystem units) {
    return new Rack(
        units,
        Optional.empty(),
        1,
        Map.of(name, new Rack.Stick("dom-1.50x0.120", lengthMm, 1)),
        Map.of(),
        Map.of(),
        List.of());
  }

  private static Rack again(Rack rack) {
    return RackReader.read("rack.yaml", RackWriter.yaml(rack), CATALOG);
  }
}
