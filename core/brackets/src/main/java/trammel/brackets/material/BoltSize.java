package trammel.brackets.material;

import java.math.BigDecimal;
import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.strength.BoltGrade;
import trammel.trade.hardware.BoltChoice;
import trammel.trade.hardware.BoltedJoint;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.StockedLengths;

/**
 * Bolts of one diameter with their nut and washers.
 *
 * @param key the name under which it stands in the catalog
 * @param title what it is, such as {@code 5/8-18 grade 8}
 * @param thread its thread, to 50 mm
 * @param grade its strength grade
 * @param nutHeightMm height of the lock nut (mm), above 0
 * @param washerMm thickness of one washer (mm), above 0
 * @param lengths the lengths it is stocked in with the price of each bolt, shortest first
 * @param nutPrice price of a lock nut
 * @param washerPrice price of a washer
 * @param supplier who delivers them
 * @param leadDays working days from order to delivery, 0 to 365
 */
public record BoltSize(
    String key,
    String title,
    ScrewThread thread,
    BoltGrade grade,
    double nutHeightMm,
    double washerMm,
    List<Stocked> lengths,
    BigDecimal nutPrice,
    BigDecimal washerPrice,
    String supplier,
    int leadDays) {
  private static final int WASHERS = 2;

  public BoltSize {
    Given.text("key of a bolt size", key, "Give it a short name.");
    Given.text("title of bolt size '" + key + "'", title, "Say what it is.");
    Given.present("thread of bolt size '" + key + "'", thread, "Give its diameter and pitch.");
    Given.present("grade of bolt size '" + key + "'", grade, "Give its strength grade.");
    Given.positive(
        "diameter of '" + key + "' in mm", thread.diameterMm(), 50, "", "Give the nominal size.");
    Given.positive("nut height of '" + key + "' in mm", nutHeightMm, 50, "", "Measure it.");
    Given.positive("washer of '" + key + "' in mm", washerMm, 10, "", "Measure it.");
    lengths = List.copyOf(lengths);
    Given.count("lengths of '" + key + "'", lengths.size(), 1, 100, "Give one at least.");
    Given.present("nut price of '" + key + "'", nutPrice, "Give an amount.");
    Given.present("washer price of '" + key + "'", washerPrice, "Give an amount.");
    Given.text("supplier of '" + key + "'", supplier, "Say who delivers it.");
    Given.count("lead time of '" + key + "'", leadDays, 0, 365, "Ask the supplier.");
  }

  /** Nominal diameter (mm). */
  public double diameterMm() {
    return thread.diameterMm();
  }

  /**
   * The stocked length for what a bolt clamps between its two washers.
   *
   * @param gripMm thickness that it clamps, washers left out (mm)
   * @throws IllegalArgumentException if none is long enough
   */
  public BoltChoice choose(double gripMm) {
    List<Double> stocked = lengths.stream().map(Stocked::lengthMm).toList();
    return new BoltedJoint(thread, gripMm, WASHERS, washerMm, nutHeightMm)
        .choose(new StockedLengths(stocked));
  }

  /** These bolts at other prices. */
  public BoltSize priced(List<Stocked> priced, BigDecimal nut, BigDecimal washer) {
    return new BoltSize(
        key, title, thread, grade, nutHeightMm, washerMm, priced, nut, washer, supplier, leadDays);
  }

  /**
   * A stocked length.
   *
   * @param lengthMm under the head (mm), above 0
   * @param price price of one bolt
   */
  public record Stocked(double lengthMm, BigDecimal price) {
    public Stocked {
      Given.positive("bolt length", lengthMm, 1000, "mm", "Give the length under the head.");
      Given.present("price of a bolt", price, "Give an amount.");
    }
  }
}
