package trammel.app.commands.book;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.book.CustomerData;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;

/** {@code forget}: shows what there is of a customer or a job, and deletes it on request. */
final class ForgottenCustomer {
  static final String APPLY = "--apply";

  /** Jobs that the ledger has of them. */
  private final Set<String> known;

  private final CustomerData data;

  private ForgottenCustomer(Set<String> known, CustomerData data) {
    this.known = known;
    this.data = data;
  }

  static ExitCode forget(BookDesk desk) {
    BookShop shop = desk.shop();
    String who = desk.named();
    if (who.isBlank()) {
      throw CommandFailure.badInput(
          "book forget was given a blank; give a customer's name, or a job's number.");
    }
    Set<String> known = known(shop, who);
    CustomerData data = CustomerData.of(shop.folder(), who, known);
    addReadings(shop, who, data, known);
    ForgottenCustomer customer = new ForgottenCustomer(known, data);
    customer.requireAny(shop.folder(), who);
    boolean apply = desk.has(APPLY);
    List<Path> left = apply ? customer.delete(shop) : List.of();
    desk.print(customer.text(left, apply), customer.json(left, apply));
    return left.isEmpty() ? ExitCode.DONE : ExitCode.FAULT;
  }

  private static Set<String> known(BookShop shop, String who) {
    Set<String> known = new LinkedHashSet<>();
    if (shop.kept().hasAnything()) {
      try (Ledger ledger = shop.open()) {
        for (JobBook.Heading job : ledger.book().jobs()) {
          if (!job.isForgotten()
              && (job.number().equals(who) || CustomerData.isSame(job.customer(), who))) {
            known.add(job.number());
          }
        }
      }
    }
    return known;
  }

  /** Readings of a job that was never quoted are kept under its number alone. */
  private static void addReadings(BookShop shop, String who, CustomerData data, Set<String> known) {
    if (!shop.kept().ledgerPlace().exists()) {
      return;
    }
    Set<String> numbers = new LinkedHashSet<>(data.jobs());
    numbers.add(who);
    try (Ledger ledger = shop.open()) {
      for (String number : numbers) {
        if (ledger.book().job(number).isEmpty() && !ledger.tackings().of(number).isEmpty()) {
          known.add(number);
        }
      }
    }
  }

  private void requireAny(Path folder, String who) {
    if (known.isEmpty() && data.files().isEmpty()) {
      throw CommandFailure.badInput(
          "Neither the ledger nor a job file in "
              + folder
              + " is of '"
              + who
              + "'; give a customer's name as it is written there, or a job's number.");
    }
  }

  /** The ledger first: a file that stays is told, and can be deleted by hand. */
  private List<Path> delete(BookShop shop) {
    if (!known.isEmpty()) {
      try (Ledger ledger = shop.open()) {
        ledger.asOne(
            () -> {
              known.forEach(ledger.book()::forget);
              return null;
            });
      }
    }
    return data.delete();
  }

  private String text(List<Path> left, boolean apply) {
    StringBuilder text = new StringBuilder(apply ? "DELETED\n" : "WOULD BE DELETED\n");
    if (!known.isEmpty()) {
      text.append(
              "  in the ledger: customer, vehicle, stages, readings after tacking and every word of"
                  + " job ")
          .append(String.join(", ", known))
          .append("\n    numbers, days, amounts and hours stay, as the books need them\n");
    }
    add(text, data.files());
    if (!left.isEmpty()) {
      text.append("COULD NOT BE DELETED\n");
      add(text, left);
    }
    if (!data.copies().isEmpty()) {
      text.append("STILL IN, delete them yourself and make new backups:\n");
      add(text, data.copies());
    }
    text.append(
        "Invoices may have to be kept for years by law: print them before. Files elsewhere, papers"
            + " and mail are not found by this.\n");
    return text.append(apply ? "" : "Nothing is deleted yet: give --apply.\n").toString();
  }

  private static void add(StringBuilder text, List<Path> files) {
    files.forEach(file -> text.append("  ").append(file).append('\n'));
  }

  private Map<String, Object> json(List<Path> left, boolean apply) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs_in_ledger", List.copyOf(known));
    json.put("files", words(data.files()));
    json.put("copies_of_the_ledger", words(data.copies()));
    json.put("not_deleted", words(left));
    json.put("deleted", apply);
    return json;
  }

  private static List<String> words(List<Path> files) {
    return files.stream().map(Path::toString).toList();
  }
}
