package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.planning.fitup.TackVerdict;

/** Readings after tacking in the ledger. Jobs and readings are invented. */
class TackingsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 2);

  @TempDir Path folder;

  private Ledger open() {
    return Ledger.open(folder.resolve("ledger.sqlite"));
  }

  /** A bracket that is to stand 457.2 mm up. */
  private static Tacking.Reading up(String bracket, Double... read) {
    return new Tacking.Reading(
        bracket + ".frame.up", Tacking.Kind.LENGTH, 457.2, 1.5875, List.of(read));
  }

  private static Tacking form(TackVerdict answer, Tacking.Reading... readings) {
    return form("1A2B-3C4D", answer, readings);
  }

  private static Tacking form(String mark, TackVerdict answer, Tacking.Reading... readings) {
    return new Tacking("D-101", 1, DAY, mark, answer, List.of(answer.words()), List.of(readings));
  }

  @Test
  void whatWasReadComesBackAsItWentInWithItsWriterAndTime() {
    String before = Moment.NOW.text();
    Tacking tacking = Samples.tacking("D-101");
    try (Ledger ledger = open()) {
      Writer.as("Bench 2", () -> ledger.tackings().write(tacking));
    }
    try (Ledger ledger = open()) {
      Written<Tacking> kept = ledger.tackings().of("D-101").get(0);
      assertEquals(tacking, kept.what());
      assertEquals("Bench 2", kept.who());
      assertTrue(before.compareTo(kept.at()) <= 0 && kept.at().compareTo(Moment.NOW.text()) <= 0);
      assertEquals(tacking.readings(), ledger.tackings().standing("D-101"));
      assertEquals(List.of(), ledger.tackings().standing("D-102"));
      assertEquals(List.of(), ledger.findings());
    }
  }

  /** The form is read as a whole each time; the ledger keeps of it what is new. */
  @Test
  void eachReadingIsWrittenDownOnceAndTheAnswerWhenItBecomesAnother() {
    try (Ledger ledger = open()) {
      Tackings tackings = ledger.tackings();
      tackings.write(form(TackVerdict.MEASURE_AGAIN, up("lower-left", 457.0)));
      Tacking both =
          form(TackVerdict.RE_SET, up("lower-left", 457.0), up("lower-right", 460.4, 460.6));
      assertEquals(
          List.of(up("lower-right", 460.4, 460.6)), tackings.write(both).orElseThrow().readings());
      assertEquals(Optional.empty(), tackings.write(both), "nothing is new");
      Tacking set = form(TackVerdict.WELD, up("lower-left", 457.0), up("lower-right", 457.1));
      assertEquals(List.of(up("lower-right", 457.1)), tackings.write(set).orElseThrow().readings());
      assertEquals(set.readings(), tackings.standing("D-101"));
      assertEquals(
          List.of(TackVerdict.MEASURE_AGAIN, TackVerdict.RE_SET, TackVerdict.WELD),
          tackings.of("D-101").stream().map(one -> one.what().answer()).toList());
      assertEquals(
          List.of(1, 2, 3), tackings.of("D-101").stream().map(one -> one.what().count()).toList());
    }
  }

  @Test
  void aReadingThatIsTakenBackIsSaidToBe() {
    try (Ledger ledger = open()) {
      Tackings tackings = ledger.tackings();
      tackings.write(form(TackVerdict.WELD, up("lower-left", 457.0), up("lower-right", 457.1)));
      Tacking then = tackings.write(form(TackVerdict.WELD, up("lower-right", 457.1))).orElseThrow();
      assertEquals(List.of(up("lower-left")), then.readings());
      assertEquals(then, tackings.of("D-101").get(1).what());
      assertEquals(List.of(up("lower-right", 457.1)), tackings.standing("D-101"));
    }
  }

  /** Readings of a plan that was given up say nothing of the new one, nor when it comes back. */
  @Test
  void readingsOfAnotherPlanAreNotCarriedOver() {
    try (Ledger ledger = open()) {
      Tackings tackings = ledger.tackings();
      Tacking first = form("1A2B-3C4D", TackVerdict.WELD, up("lower-left", 457.0));
      tackings.write(first);
      Tacking other = form("9F9F-0000", TackVerdict.WELD, up("lower-left", 457.0));
      assertEquals(other.readings(), tackings.write(other).orElseThrow().readings());
      assertEquals(first.readings(), tackings.write(first).orElseThrow().readings());
    }
  }

  /** What is put in its place counts; what stood there stays in the file. */
  @Test
  void anEntryIsCorrectedAndTakenOutWithoutBeingLost() {
    try (Ledger ledger = open()) {
      Tackings tackings = ledger.tackings();
      tackings.write(form(TackVerdict.WELD, up("lower-left", 457.0)));
      Tacking right = form(TackVerdict.RE_SET, up("lower-left", 475.0));
      tackings.put(right);
      assertEquals(right, tackings.of("D-101").get(0).what());
      tackings.takeOut("D-101", 1);
      assertEquals(List.of(), tackings.all());
      assertEquals(List.of(), ledger.findings());
      tackings.write(form(TackVerdict.WELD, up("lower-left", 457.0)));
      assertEquals(2, tackings.of("D-101").get(0).what().count(), "no number is given twice");
    }
    try (Sql sql = Sql.open(folder.resolve("ledger.sqlite"))) {
      assertEquals(3, sql.number("select count(*) from tacking"));
    }
  }

  @Test
  void whatNoReadingCanBeIsRefused() {
    List<Tacking.Reading> twice = new ArrayList<>(List.of(up("lower-left", 1.0)));
    twice.add(up("lower-left", 2.0));
    assertThrows(
        IllegalArgumentException.class,
        () -> form(TackVerdict.WELD, twice.toArray(Tacking.Reading[]::new)));
    assertThrows(IllegalArgumentException.class, () -> up("lower-left", Double.NaN));
  }
}
