package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.trade.money.Money;

/** The course of jobs in the ledger. Jobs, customers and amounts are invented. */
class JobBookTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private static final Purchases.Purchase ORDER =
      new Purchases.Purchase(
          "D-101-1",
          "parts house (invented)",
          DAY,
          DAY.plusDays(5),
          List.of("D-101", "D-102"),
          List.of(
              new Purchases.Line(
                  "shock-8",
                  "shock",
                  new BigDecimal("4"),
                  "each",
                  dollars("561.60"),
                  BigDecimal.ZERO)));

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("ledger.sqlite");
  }

  private static Money dollars(String amount) {
    return Money.of(amount, "USD");
  }

  @Test
  void whatWasOfferedAndAgreedComesBackAsItWentIn() {
    Offer quote = Samples.offer(Offer.Kind.QUOTE, 1);
    Offer change = Samples.offer(Offer.Kind.CHANGE, 1);
    try (Ledger ledger = Ledger.open(file())) {
      ledger.book().give(Samples.HEADING, quote);
      ledger.book().accept("D-101", Offer.Kind.QUOTE, 1, DAY);
      ledger.book().give(Samples.HEADING, change);
      ledger.book().drop("D-101", Offer.Kind.CHANGE, 1, DAY);
    }
    try (Ledger ledger = Ledger.openExisting(file())) {
      assertEquals(
          List.of(
              new Offer.Kept(quote, Optional.of(DAY), Optional.empty()),
              new Offer.Kept(change, Optional.empty(), Optional.of(DAY))),
          ledger.book().offers("D-101"));
      assertEquals(Optional.of(Samples.HEADING), ledger.book().job("D-101"));
      assertEquals(dollars("13637.02"), quote.total());
      assertEquals(List.of(), ledger.findings());
    }
  }

  /** A revision of one number is given once. */
  @Test
  void noOfferIsWrittenOver() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.book().give(Samples.HEADING, Samples.offer(Offer.Kind.QUOTE, 1));
      assertThrows(
          IllegalStateException.class,
          () -> ledger.book().give(Samples.HEADING, Samples.offer(Offer.Kind.QUOTE, 1)));
      assertEquals(1, ledger.book().offers("D-101").size());
    }
  }

  /** Invoices are numbered one after the other, whichever job they are of. */
  @Test
  void invoicesAreNumberedWithoutAGap() {
    try (Ledger ledger = Ledger.open(file())) {
      for (String number : List.of("A", "B", "C")) {
        ledger
            .book()
            .give(new JobBook.Heading(number, "x", "y"), Samples.offer(Offer.Kind.QUOTE, 1));
      }
      assertEquals(1, ledger.book().invoice(invoice("B")).number());
      assertThrows(IllegalStateException.class, () -> ledger.book().invoice(invoice("B")));
      assertEquals(2, ledger.book().invoice(invoice("A")).number());
      assertEquals(3, ledger.book().invoice(invoice("C")).number());
      assertEquals(dollars("13537.02"), ledger.book().invoice("A").orElseThrow().balance());
    }
  }

  private static JobBook.Invoice invoice(String job) {
    return invoice(job, "as quoted");
  }

  private static JobBook.Invoice invoice(String job, String line) {
    return new JobBook.Invoice(
        0,
        job,
        DAY,
        List.of(new JobBook.InvoiceLine(line, dollars("13586.72"), dollars("13637.02"))),
        dollars("13637.02"),
        dollars("100"));
  }

  @Test
  void anInvoiceWhoseLinesDoNotAddUpIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new JobBook.Invoice(
                0,
                "A",
                DAY,
                List.of(new JobBook.InvoiceLine("as quoted", dollars("1"), dollars("1"))),
                dollars("1.01"),
                dollars("0")));
  }

  /** The machine's clock between before and after: whoever looks later sees when it was written. */
  @Test
  void everythingThatWasWrittenDownSaysWhenAndWho() {
    String before = Moment.NOW.text();
    try (Ledger ledger = Ledger.open(file())) {
      ledger.book().give(Samples.HEADING, Samples.offer(Offer.Kind.QUOTE, 1));
      JobBook.Paid paid = new JobBook.Paid(DAY, dollars("100"), "cash");
      JobBook.Stage stage = new JobBook.Stage("tacked", JobBook.StageWord.PROMISED, DAY, "");
      ledger.book().pay("D-101", paid);
      ledger.book().say("D-101", stage);
      ledger.purchases().place(ORDER);
      Purchases.Receipt receipt = new Purchases.Receipt(1, BigDecimal.ONE, "dented");
      Writer.as(
          " Bench 2\n\u200b ",
          () -> {
            ledger.purchases().receive("D-101-1", DAY, List.of(receipt));
            ledger.rackStock().become(Samples.RACK, "counted");
            return null;
          });
      ledger.prices().add(List.of(Samples.price("118.00")));
      assertEquals(paid, ledger.book().writtenPayments("D-101").get(0).what());
      assertEquals(stage, ledger.book().writtenStages("D-101").get(0).what());
      Written<Purchases.Received> received = ledger.purchases().received("D-101-1").get(0);
      assertEquals(new Purchases.Received(DAY, receipt), received.what());
      List<String> when =
          List.of(
              ledger.book().writtenPayments("D-101").get(0).at(),
              ledger.book().writtenStages("D-101").get(0).at(),
              received.at(),
              ledger.book().writtenOffers("D-101").get(0).at());
      for (String at : when) {
        assertTrue(before.compareTo(at) <= 0 && at.compareTo(Moment.NOW.text()) <= 0, at);
      }
      assertEquals("Bench 2", received.who());
      assertEquals("Bench 2", ledger.rackStock().movements().get(0).who());
      String account = System.getProperty("user.name");
      assertEquals(account, ledger.book().writtenPayments("D-101").get(0).who());
      assertEquals(account, ledger.book().writtenStages("D-101").get(0).who());
      assertEquals(account, ledger.book().writtenOffers("D-101").get(0).who());
      assertEquals(account, ledger.prices().all().get(0).who());
      ledger.purchases().drop("D-101-1");
      assertEquals(List.of(), ledger.purchases().received("D-101-1"));
    }
  }

  /** 4 shocks were ordered, 1 came and then 2: 1 is on back-order. */
  @Test
  void whatHasNotComeIsOnBackOrder() {
    try (Ledger ledger = Ledger.open(file())) {
      Purchases purchases = ledger.purchases();
      purchases.place(ORDER);
      assertEquals(List.of(ORDER), purchases.forJob("D-102"));
      purchases.receive("D-101-1", DAY, List.of(new Purchases.Receipt(1, BigDecimal.ONE, "")));
      purchases.receive(
          "D-101-1", DAY, List.of(new Purchases.Receipt(1, new BigDecimal("2"), "one dented")));
      Purchases.Purchase now = purchases.of("D-101-1").orElseThrow();
      assertEquals(0, BigDecimal.ONE.compareTo(now.lines().get(0).outstanding()));
      assertTrue(now.isOpen());
      purchases.drop("D-101-1");
      assertEquals(Optional.empty(), purchases.of("D-101-1"));
      purchases.place(ORDER);
      assertEquals(List.of(), ledger.findings());
    }
  }

  /** Not only the words are gone but also the bytes that they stood in. */
  @Test
  void whatIsForgottenIsNotInTheFileAnyMore() throws IOException {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.book().give(Samples.HEADING, Samples.offer(Offer.Kind.QUOTE, 1));
      ledger
          .book()
          .say(
              "D-101",
              new JobBook.Stage("Invented Customer calls", JobBook.StageWord.PROMISED, DAY, ""));
      ledger
          .book()
          .pay("D-101", new JobBook.Paid(DAY, dollars("100"), "cheque of Invented Customer"));
      ledger.book().invoice(invoice("D-101", "Change order D-101-C1: as Invented Customer asked"));
      ledger.purchases().place(ORDER);
      ledger
          .purchases()
          .receive(
              "D-101-1",
              DAY,
              List.of(new Purchases.Receipt(1, BigDecimal.ONE, "brought by Invented Customer")));
      ledger.tackings().write(tacked("as Invented Customer saw"));
    }
    assertTrue(text().contains("Invented Customer"));
    try (Ledger ledger = Ledger.open(file())) {
      ledger.book().forget("D-101");
      assertTrue(ledger.book().job("D-101").orElseThrow().isForgotten());
      assertEquals(dollars("13637.02"), ledger.book().offers("D-101").get(0).offer().total());
      assertEquals(dollars("100"), ledger.book().payments("D-101").get(0).amount());
      assertEquals(
          "Change order D-101-C1",
          ledger.book().invoice("D-101").orElseThrow().lines().get(0).title());
      assertEquals(List.of(), ledger.tackings().all());
      assertEquals(List.of(), ledger.findings());
    }
    assertFalse(text().contains("lower-left.frame.up"), "what was read off the vehicle");
    assertFalse(text().contains("Invented Customer"));
    assertFalse(text().contains("pickup (invented)"));
  }

  private static Tacking tacked(String said) {
    Tacking one = Samples.tacking("D-101");
    return new Tacking(
        one.job(),
        one.count(),
        one.tackedOn(),
        one.form(),
        one.answer(),
        List.of(said),
        one.readings());
  }

  private String text() throws IOException {
    return new String(Files.readAllBytes(file()), StandardCharsets.ISO_8859_1);
  }
}
