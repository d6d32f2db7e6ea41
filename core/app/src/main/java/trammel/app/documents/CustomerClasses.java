package trammel.app.documents;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import trammel.ledger.Offer;
import trammel.trade.money.CostClass;
import trammel.trade.money.Money;

/** The sums of an offer as a customer sees them: what is the shop's own work is one of them. */
final class CustomerClasses {
  private static final Set<String> SHOP_WORK =
      Set.of(
          CostClass.LABOUR.title(),
          CostClass.OVERHEAD.title(),
          CostClass.CONTINGENCY.title(),
          CostClass.SUPPLIES.title());

  private static final String WORK_TITLE = "shop work and supplies";

  private CustomerClasses() {}

  /** The titles of those that any of the offers has a sum in, in the order of a price. */
  static List<String> of(Offer... offers) {
    return Arrays.stream(CostClass.values())
        .map(one -> title(one.title()))
        .distinct()
        .filter(title -> Arrays.stream(offers).anyMatch(offer -> !sum(offer, title).isZero()))
        .toList();
  }

  /** What an offer comes to in one of them, before tax. */
  static Money sum(Offer offer, String title) {
    Money sum = Money.zero(offer.tax().currency());
    for (Offer.Line line : offer.lines()) {
      if (title(line.costClass()).equals(title)) {
        sum = sum.plus(line.price());
      }
    }
    return sum;
  }

  private static String title(String costClass) {
    return SHOP_WORK.contains(costClass) ? WORK_TITLE : costClass;
  }
}
