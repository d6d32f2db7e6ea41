package trammel.app.commands.book;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.book.ReceivedForm;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.ledger.Ledger;
import trammel.ledger.Purchases;
import trammel.planning.estimate.Counts;

/** {@code received} and {@code unplace}: what came of an order, or that it was none. */
final class ReceivedGoods {
  static final String ALL = "--all";

  private ReceivedGoods() {}

  static ExitCode receive(BookDesk desk) {
    BookShop shop = desk.shop();
    Optional<OutFolder> out = desk.out("received " + desk.named());
    try (Ledger ledger = shop.openExisting()) {
      Purchases.Purchase purchase = purchase(ledger, desk.named());
      if (desk.more().isEmpty() && !desk.has(ALL)) {
        writeForm(desk, purchase, out);
        return ExitCode.DONE;
      }
      List<Purchases.Receipt> receipts = receipts(desk, purchase);
      ledger.purchases().receive(purchase.number(), desk.day(), receipts);
      print(desk, purchase(ledger, purchase.number()), receipts.size());
      return ExitCode.DONE;
    }
  }

  private static void writeForm(
      BookDesk desk, Purchases.Purchase purchase, Optional<OutFolder> out) {
    OutFolder into =
        out.orElseThrow(
            () ->
                CommandFailure.badInput(
                    "book received writes the form of the order into the folder of --out DIR;"
                        + " behind the order's number it takes the filled form, and --all where"
                        + " everything has come."));
    FileSet form = new FileSet().add(ReceivedForm.NAME, new ReceivedForm(purchase).form());
    desk.write(form, into, purchase.jobs());
  }

  private static List<Purchases.Receipt> receipts(BookDesk desk, Purchases.Purchase purchase) {
    if (desk.more().isPresent() && desk.has(ALL)) {
      throw CommandFailure.badInput(ALL + " and a form say two things; give one of them.");
    }
    ReceivedForm form = new ReceivedForm(purchase);
    List<Purchases.Receipt> receipts =
        desk.more().map(filled -> form.read(Path.of(filled))).orElseGet(form::rest);
    if (receipts.isEmpty()) {
      throw CommandFailure.badInput(
          "Nothing of order " + purchase.number() + " was said to have come.");
    }
    return receipts;
  }

  private static void print(BookDesk desk, Purchases.Purchase now, int lines) {
    desk.print(
        "ORDER "
            + now.number()
            + ", "
            + Counts.of(lines, "line")
            + " received\n"
            + CourseText.goods(now),
        CourseJson.purchase(now));
  }

  private static Purchases.Purchase purchase(Ledger ledger, String number) {
    return ledger
        .purchases()
        .of(number)
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "The ledger has no order " + number + "; it has " + orders(ledger) + "."));
  }

  private static String orders(Ledger ledger) {
    List<String> numbers =
        ledger.purchases().all().stream().map(Purchases.Purchase::number).toList();
    return numbers.isEmpty()
        ? "none: trammel order --placed keeps them"
        : String.join(", ", numbers);
  }

  static ExitCode unplace(BookDesk desk) {
    try (Ledger ledger = desk.shop().openExisting()) {
      String number = purchase(ledger, desk.named()).number();
      ledger.purchases().drop(number);
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("order", number);
      json.put("taken_out", true);
      desk.print("Order " + number + " is taken out; what came of it stays in the ledger.\n", json);
      return ExitCode.DONE;
    }
  }
}
