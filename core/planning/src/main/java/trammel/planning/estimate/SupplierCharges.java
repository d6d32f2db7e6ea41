package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.planning.catalog.SupplierTerms;
import trammel.trade.money.Money;

/** What a supplier's terms add to an order. */
public final class SupplierCharges {
  private final SupplierTerms terms;
  private final Money goods;
  private final double longestMm;
  private final List<Charge> charges = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param goods value of the lines
   * @param longestMm longest piece of the order (mm); 0 if it has no lengths
   */
  public SupplierCharges(SupplierTerms terms, Money goods, double longestMm) {
    this.terms = terms;
    this.goods = goods;
    this.longestMm = longestMm;
    smallOrder();
    freight();
    overLength();
  }

  /** What is added to the lines. */
  public List<Charge> charges() {
    return List.copyOf(charges);
  }

  /** What to look at before the order is sent. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** All charges together. */
  Money sum() {
    Money sum = Money.zero(goods.currency());
    for (Charge charge : charges) {
      sum = sum.plus(charge.amount());
    }
    return sum;
  }

  private void smallOrder() {
    if (terms.minimumOrder().isEmpty() || reaches(terms.minimumOrder().get())) {
      return;
    }
    Money least = money(terms.minimumOrder().get());
    if (terms.smallOrderCharge().isPresent()) {
      charges.add(
          new Charge(
              "small-order",
              "small order, under " + least.text(),
              money(terms.smallOrderCharge().get())));
    } else {
      remarks.add(
          "Takes no order under "
              + least.text()
              + "; this one is "
              + least.minus(goods).text()
              + " short. Put it together with another job.");
    }
  }

  private void freight() {
    if (terms.freight().isPresent()
        && (terms.freightFreeFrom().isEmpty() || !reaches(terms.freightFreeFrom().get()))) {
      charges.add(new Charge("freight", "freight", money(terms.freight().get())));
    }
  }

  private void overLength() {
    if (terms.longLengthMm().isPresent() && longestMm > terms.longLengthMm().get()) {
      charges.add(
          new Charge("over-length", "over-length sticks", money(terms.longLengthCharge().get())));
    }
  }

  private boolean reaches(BigDecimal value) {
    return goods.amount().compareTo(value) >= 0;
  }

  private Money money(BigDecimal amount) {
    return new Money(amount, goods.currency());
  }
}
