package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * What a supplier asks for an order beside the prices, in the catalog's currency.
 *
 * @param supplier the supplier as entries name it
 * @param minimumOrder least value of an order
 * @param smallOrderCharge added to an order under it
 * @param freight freight of an order
 * @param freightFreeFrom value of an order from which freight is free
 * @param longLengthMm length (mm) beyond which a piece counts as over-length
 * @param longLengthCharge added once to an order with an over-length piece
 * @param address where orders are sent
 * @param account the shop's number with it
 */
public record SupplierTerms(
    String supplier,
    Optional<BigDecimal> minimumOrder,
    Optional<BigDecimal> smallOrderCharge,
    Optional<BigDecimal> freight,
    Optional<BigDecimal> freightFreeFrom,
    Optional<Double> longLengthMm,
    Optional<BigDecimal> longLengthCharge,
    Optional<String> address,
    Optional<String> account) {
  public SupplierTerms {
    Given.text("name of a supplier", supplier, "Write it as the entries do.");
    if (smallOrderCharge.isPresent() && minimumOrder.isEmpty()) {
      throw new IllegalArgumentException(
          "small_order_charge of '" + supplier + "' needs minimum_order. Add it.");
    }
    if (freightFreeFrom.isPresent() && freight.isEmpty()) {
      throw new IllegalArgumentException(
          "freight_free_from of '" + supplier + "' needs freight. Add it.");
    }
    if (longLengthMm.isPresent() != longLengthCharge.isPresent()) {
      throw new IllegalArgumentException(
          "over_length and over_length_charge of '" + supplier + "' need each other. Give both.");
    }
  }

  /** A supplier who asks for nothing more than the prices. */
  public static SupplierTerms none(String supplier) {
    return new SupplierTerms(
        supplier,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
