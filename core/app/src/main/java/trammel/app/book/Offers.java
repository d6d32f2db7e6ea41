package trammel.app.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobHeader;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.Payments;
import trammel.trade.money.PriceLine;

/** Makes an offer of a job as it stands now. */
public final class Offers {
  private Offers() {}

  /** Whose job it is. */
  public static JobBook.Heading heading(Estimate estimate) {
    JobHeader header = estimate.draft().job().header();
    return new JobBook.Heading(header.number(), header.customer(), header.vehicle());
  }

  /** The offer of a job at its price now. */
  public static Offer of(
      Estimate estimate, Offer.Kind kind, int count, LocalDate givenOn, String why) {
    CostBuildUp price = estimate.price();
    List<Offer.Line> lines = new ArrayList<>();
    for (PriceLine line : price.lines()) {
      lines.add(
          new Offer.Line(
              line.line().key(),
              line.line().title(),
              line.line().costClass().title(),
              line.line().quantityText(),
              line.price()));
    }
    return new Offer(
        kind,
        count,
        givenOn,
        why,
        lines,
        price.terms().tax().name(),
        price.tax(),
        price.cashRounding(),
        estimate.hours().meanHours(),
        estimate.hours().p80Hours(),
        payments(price));
  }

  private static List<Offer.Payment> payments(CostBuildUp price) {
    Payments payments = price.payments();
    List<Offer.Payment> list = new ArrayList<>();
    if (!payments.deposit().isZero()) {
      list.add(new Offer.Payment("deposit with the order", payments.deposit()));
    }
    for (int i = 0; i < payments.progress().size(); i++) {
      list.add(
          new Offer.Payment(price.terms().progress().get(i).when(), payments.progress().get(i)));
    }
    if (!payments.balance().isZero()) {
      list.add(new Offer.Payment("balance on delivery", payments.balance()));
    }
    return list;
  }
}
