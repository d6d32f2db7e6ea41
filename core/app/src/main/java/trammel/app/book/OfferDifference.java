package trammel.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.ledger.Offer;
import trammel.trade.money.Money;

/**
 * What is other in one offer than in the one before it, line by line. The differences of the lines,
 * of the tax and of the rounding add up to that of the totals, to the coin.
 *
 * @param before the offer before
 * @param after the offer
 * @param rows lines whose price or quantity is another, in the order of the offers
 */
public record OfferDifference(Offer before, Offer after, List<Row> rows) {
  /** Lines of a price that are worked out from other lines. */
  private static final Set<String> FOLLOWING =
      Set.of("contingency", "overhead-by-hour", "supplies-by-labour");

  public OfferDifference {
    rows = List.copyOf(rows);
  }

  /**
   * A line that is other.
   *
   * @param before empty if it is new
   * @param after empty if it is no more
   */
  public record Row(Optional<Offer.Line> before, Optional<Offer.Line> after) {
    private Offer.Line any() {
      return after.or(() -> before).orElseThrow();
    }

    /** What it is. */
    public String title() {
      return any().title();
    }

    /** Its name. */
    public String key() {
      return any().key();
    }

    /** True if it follows from other lines, so that how much of it there is says nothing. */
    public boolean isFollowing() {
      return FOLLOWING.contains(key());
    }

    /** The class that it is summed up in. */
    public String costClass() {
      return any().costClass();
    }

    /** How much it costs more; below 0 less. */
    public Money difference() {
      Money none = Money.zero(any().price().currency());
      return after
          .map(Offer.Line::price)
          .orElse(none)
          .minus(before.map(Offer.Line::price).orElse(none));
    }
  }

  /**
   * The difference of two offers.
   *
   * @throws IllegalArgumentException if they are in two currencies
   */
  public static OfferDifference of(Offer before, Offer after) {
    before.total().minus(after.total());
    Map<String, Offer.Line> old = byName(before);
    Map<String, Offer.Line> now = byName(after);
    Set<String> names = new LinkedHashSet<>(old.keySet());
    names.addAll(now.keySet());
    List<Row> rows = new ArrayList<>();
    for (String name : names) {
      Optional<Offer.Line> was = Optional.ofNullable(old.get(name));
      Optional<Offer.Line> is = Optional.ofNullable(now.get(name));
      boolean same =
          was.isPresent()
              && is.isPresent()
              && was.get().price().equals(is.get().price())
              && was.get().quantity().equals(is.get().quantity());
      if (!same) {
        rows.add(new Row(was, is));
      }
    }
    return new OfferDifference(before, after, rows);
  }

  /** Lines of one name and title are told apart by their order. */
  private static Map<String, Offer.Line> byName(Offer offer) {
    Map<String, Offer.Line> byName = new LinkedHashMap<>();
    for (Offer.Line line : offer.lines()) {
      String name = line.key() + "\n" + line.title();
      int count = 1;
      while (byName.containsKey(name + "\n" + count)) {
        count++;
      }
      byName.put(name + "\n" + count, line);
    }
    return byName;
  }

  /** How much the tax is more. */
  public Money tax() {
    return after.tax().minus(before.tax());
  }

  /** How much the rounding is more. */
  public Money rounding() {
    return after.rounding().minus(before.rounding());
  }

  /** How much the lines come to more, before tax. */
  public Money subtotal() {
    return after.subtotal().minus(before.subtotal());
  }

  /** How much the total is more. */
  public Money total() {
    return after.total().minus(before.total());
  }

  /** How many hours more are expected (h). */
  public double hours() {
    return after.meanHours() - before.meanHours();
  }

  /** True if nothing of price or lines is other. */
  public boolean isNothing() {
    return rows.isEmpty() && tax().isZero() && rounding().isZero();
  }
}
