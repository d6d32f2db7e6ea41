package trammel.trade.money;

import java.math.BigDecimal;
import trammel.engine.quantity.Given;

/**
 * What an hour of the shop's work is billed at, and what it costs the shop. All money in one
 * currency, unrounded. Most shops have one rate on the door with the overhead in it; some bill the
 * overhead on top.
 *
 * @param perHour what is billed for an hour as labour
 * @param overheadPerHour rent, power and tools of an hour
 * @param overheadInRate true when the rate has the overhead in it, false when it is billed on top
 * @param wagePerHour what is paid for an hour: wage, taxes and insurance
 */
public record LabourRate(
    BigDecimal perHour,
    BigDecimal overheadPerHour,
    boolean overheadInRate,
    BigDecimal wagePerHour) {

  private static final long MOST_PER_HOUR = 100_000_000L;

  public LabourRate {
    Given.decimal("labour rate per hour", perHour, 0, MOST_PER_HOUR, "Give an hour's rate.");
    Given.decimal("overhead per hour", overheadPerHour, 0, MOST_PER_HOUR, "Give 0 for none.");
    Given.decimal("wage per hour", wagePerHour, 0, MOST_PER_HOUR, "Give what an hour is paid.");
  }

  /** A rate that stands for itself: no overhead on top, and nothing known of what it costs. */
  public static LabourRate door(BigDecimal perHour) {
    return new LabourRate(perHour, BigDecimal.ZERO, true, BigDecimal.ZERO);
  }

  /** A rate with overhead billed on top. */
  public static LabourRate withOverheadOnTop(BigDecimal perHour, BigDecimal overheadPerHour) {
    return new LabourRate(perHour, overheadPerHour, false, BigDecimal.ZERO);
  }

  /** The same with another rate and overhead. */
  public LabourRate with(BigDecimal otherPerHour, BigDecimal otherOverhead) {
    return new LabourRate(otherPerHour, otherOverhead, overheadInRate, wagePerHour);
  }

  /** Overhead that is billed on top of the rate; 0 when the rate has it. */
  public BigDecimal overheadOnTop() {
    return overheadInRate ? BigDecimal.ZERO : overheadPerHour;
  }

  /** Overhead that an hour's rate has to carry; 0 when it is billed on top. */
  public BigDecimal overheadWithin() {
    return overheadInRate ? overheadPerHour : BigDecimal.ZERO;
  }

  /** All that is billed for an hour. */
  public BigDecimal billedPerHour() {
    return perHour.add(overheadOnTop());
  }

  /** What an hour that is billed as labour costs the shop: its wage, and the overhead within. */
  public BigDecimal costPerHour() {
    return wagePerHour.add(overheadWithin());
  }
}
