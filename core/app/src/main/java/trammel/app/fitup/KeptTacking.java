package trammel.app.fitup;

import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trammel.app.ledger.ShopLedger;
import trammel.ledger.Ledger;
import trammel.ledger.Tacking;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.TackReport;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;

/** Keeps in the shop's ledger what was read after tacking and what it told the shop to do. */
public final class KeptTacking {
  private KeptTacking() {}

  /**
   * What a form says as a whole.
   *
   * @param words says which bracket is to be moved which way, in the reader's units
   */
  public static Tacking of(
      String job,
      FitUpSheet sheet,
      List<TackReading> readings,
      TackReport report,
      Function<TackReport.Move, String> words) {
    Map<String, Target> targets = new HashMap<>();
    sheet.targets().forEach(target -> targets.put(target.id(), target));
    List<Tacking.Reading> read = new ArrayList<>();
    for (TackReading reading : readings) {
      Target target = targets.get(reading.id());
      read.add(
          new Tacking.Reading(
              reading.id(),
              target.kind() == QuantityKind.ANGLE ? Tacking.Kind.ANGLE : Tacking.Kind.LENGTH,
              target.plan(),
              target.tolerance(),
              reading.values()));
    }
    List<String> said = new ArrayList<>(report.reasons());
    report.again().forEach(again -> said.add("measure again " + again.id() + ": " + again.why()));
    report.moves().forEach(move -> said.add(words.apply(move)));
    return new Tacking(
        job, 1, LocalDate.now(), FitUpForm.mark(job, sheet).text(), report.verdict(), said, read);
  }

  /**
   * Writes down what is new of a form, where the shop has a ledger. None is made for it: a
   * judgement that was asked for is given whatever becomes of the ledger.
   *
   * @return why it was not written down, in words; empty where it was, where nothing is new, and
   *     where there is no ledger
   */
  public static Optional<String> keep(ShopLedger shop, Tacking tacking) {
    if (!shop.ledgerPlace().exists()) {
      return Optional.empty();
    }
    try (Ledger ledger = Ledger.openExisting(shop.ledgerPlace().file())) {
      ledger.tackings().write(tacking);
      return Optional.empty();
    } catch (IllegalArgumentException | UncheckedIOException refused) {
      return Optional.of(
          "the readings were not written into the shop's ledger: " + refused.getMessage());
    }
  }
}
