package trammel.planning.job;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import trammel.reading.tree.Location;

/**
 * A line of a job's own, beside what its plan asks for.
 *
 * @param title what it is, for quote and cost sheet
 * @param kind what kind of line
 * @param hours hours of work; empty for what is no work by hours
 * @param operation key of an operation in the catalog; empty for what is none
 * @param quantity how many, above 0
 * @param price price of one to the shop; for a credit what is taken off; empty where there is none
 * @param supplier who delivers what is bought; empty where nobody is named yet
 * @param leadDays working days until it is there
 * @param why what asks for it
 * @param location where it stands in the file
 */
public record Extra(
    String title,
    ExtraKind kind,
    Optional<Double> hours,
    Optional<String> operation,
    BigDecimal quantity,
    Optional<BigDecimal> price,
    Optional<String> supplier,
    int leadDays,
    String why,
    Location location) {

  /** Short name in files, made of the title: "powder coat" is "extra-powder-coat". */
  public String key() {
    String plain = title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return "extra-" + plain.replaceAll("^-|-$", "");
  }
}
