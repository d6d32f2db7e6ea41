package trammel.planning.order;

import java.math.BigDecimal;
import trammel.trade.money.Money;

/**
 * Something to order.
 *
 * @param key its key in the catalog
 * @param title what it is
 * @param quantity how many of its unit
 * @param unit what one of it is, such as {@code stick}
 * @param price price of one
 * @param amount what it costs at the catalog's price
 * @param leadDays working days from order to delivery
 * @param use what it is for
 */
public record OrderLine(
    String key,
    String title,
    BigDecimal quantity,
    String unit,
    BigDecimal price,
    Money amount,
    int leadDays,
    String use) {}
