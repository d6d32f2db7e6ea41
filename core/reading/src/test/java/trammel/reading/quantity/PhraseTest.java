package trammel.reading.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.quantity.Amount.angle;
import static trammel.engine.quantity.Amount.force;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.longLength;
import static trammel.engine.quantity.Amount.pressure;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.quantity.Phrase;

/** Words with quantities among them. An inch is 25.4 mm, a pound-force 4.4482216 N (both exact). */
class PhraseTest {
  private static final QuantityPrinter US = new QuantityPrinter(UnitSystem.US);
  private static final QuantityPrinter METRIC = new QuantityPrinter(UnitSystem.METRIC);

  @Test
  void isMadeOnceAndReadInTheUnitsOfEachReader() {
    Phrase phrase =
        Phrase.of("the web stands {} inside the joint, {} is needed", length(19.05), length(25.4));

    assertEquals("the web stands 3/4 in inside the joint, 1 in is needed", phrase.in(US));
    assertEquals("the web stands 19.1 mm inside the joint, 25.4 mm is needed", phrase.in(METRIC));
  }

  @Test
  void holdsQuantitiesOfSeveralKindsAndPlainWords() {
    Phrase phrase =
        Phrase.of(
            "{} {} lean {} under {} and reach {}",
            3,
            "springs",
            angle(Math.PI / 6),
            force(444.82216),
            longLength(12 * 25.4));

    assertEquals("3 springs lean 30.0 deg under 100 lb and reach 1'", phrase.in(US));
    assertEquals("3 springs lean 30.0 deg under 445 N and reach 304.8 mm", phrase.in(METRIC));
  }

  @Test
  void aPhraseInAPhraseIsReadInTheSameUnits() {
    Phrase inner = Phrase.of("{} behind", length(50.8));

    assertEquals(
        "it stands 2 in behind the axle", Phrase.of("it stands {} the axle", inner).in(US));
  }

  @Test
  void equalWordsAndQuantitiesAreEqual() {
    assertEquals(Phrase.of("base {}", length(10)), Phrase.of("base {}", length(10)));
    assertNotEquals(Phrase.of("base {}", length(10)), Phrase.of("base {}", length(11)));
    assertNotEquals(Phrase.of("base {}", length(10)), Phrase.of("base {}", pressure(10)));
  }

  @Test
  void aTemplateWithFewerOrMorePlacesThanTermsIsRefused() {
    IllegalArgumentException tooFew =
        assertThrows(
            IllegalArgumentException.class,
            () -> Phrase.of("{} is needed, {} is there", length(1)));
    IllegalArgumentException tooMany =
        assertThrows(IllegalArgumentException.class, () -> Phrase.of("needed", length(1)));
    assertThrows(IllegalArgumentException.class, () -> Phrase.of("{} is needed"));

    assertTrue(tooFew.getMessage().contains("given 1 terms for its 2 places"), tooFew.getMessage());
    assertTrue(tooMany.getMessage().contains("for its 0 places"), tooMany.getMessage());
  }

  /** A number by itself would be read as inches by one and as millimetres by the other. */
  @Test
  void aNumberThatDoesNotSayItsKindIsRefused() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Phrase.of("{} is needed", 12.7));

    assertTrue(refused.getMessage().contains("12.7, a Double"), refused.getMessage());
    assertTrue(refused.getMessage().contains("length(mm)"), refused.getMessage());
  }

  @Test
  void aQuantityThatIsNoNumberIsRefusedWhereItIsMade() {
    assertThrows(IllegalArgumentException.class, () -> length(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> length(Double.POSITIVE_INFINITY));
  }

  @Test
  void aGivenNameMayHoldBraces() {
    assertEquals("{} tank", Phrase.text("{} tank").in(US));
    assertEquals("near {} tank", Phrase.of("near {}", "{} tank").in(US));
  }

  @Test
  void twoReasonsOfOneLineAreJoinedOnceEach() {
    Phrase bolt = Phrase.of("through the eye, grip {}", length(25.4));

    assertEquals("through the eye, grip 1 in; spare", bolt.and(Phrase.of("spare")).in(US));
    assertEquals("through the eye, grip 1 in", bolt.and(Phrase.of("grip {}", length(25.4))).in(US));
    assertEquals("a, b", Phrase.joined(", ", List.of(Phrase.of("a"), Phrase.of("b"))).in(US));
  }

  /** 25.4 mm and 25.6 mm are both 1 in to the nearest 1/32, and two lengths in millimetres. */
  @Test
  void whatIsPrintedAlikeIsNotToldApart() {
    Phrase one = Phrase.of("{} at both", length(25.4));
    Phrase two = Phrase.of("{} and {}", length(25.4), length(25.6));
    Phrase phrase = Phrase.whereAlike(length(25.4), length(25.6), one, two);

    assertEquals("1 in at both", phrase.in(US));
    assertEquals("25.4 mm and 25.6 mm", phrase.in(METRIC));
  }

  @Test
  void standsInBracketsAsOneLineWithoutAFullStop() {
    assertEquals(
        "no room. Move it 1 in",
        Phrase.of("no room.\nMove it {}.\n", length(25.4)).asClause().in(US));
    assertFalse(Phrase.of("no room").isBlank());
    assertTrue(Phrase.NONE.isBlank());
  }

  /** What a program that is looked into shows, whoever reads it. */
  @Test
  void byItselfItSpeaksInTheUnitsThatAreHeld() {
    assertEquals(
        "12.7 mm under 30 deg",
        Phrase.of("{} under {}", length(12.7), angle(Math.PI / 6)).toString());
  }
}
