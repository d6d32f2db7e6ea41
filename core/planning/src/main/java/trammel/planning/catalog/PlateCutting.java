package trammel.planning.catalog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.brackets.material.MissingEntryException;
import trammel.engine.quantity.Given;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;
import trammel.trade.steel.PlasmaSetup;

/**
 * How a shop has its plates cut.
 *
 * @param way on its own table, by hand, or sent out
 * @param process what cuts, in words
 * @param leastHole smallest round hole that is cut with the plate, as a multiple of its thickness;
 *     smaller ones are drilled. By hand every round hole is drilled
 * @param speeds how the table cuts, by thickness; at least one for a table
 * @param sentOut what is asked for cutting outside, by thickness; at least one where it is sent out
 */
public record PlateCutting(
    Way way, String process, double leastHole, List<Speed> speeds, List<SentOut> sentOut) {

  /** Sizes no further apart than this are one thickness (mm). */
  private static final double SAME_MM = 0.05;

  /** Who cuts. */
  public enum Way {
    TABLE("table"),
    HAND("hand"),
    SENT_OUT("sent-out");

    private final String word;

    Way(String word) {
      this.word = word;
    }

    /** How files write it. */
    public String word() {
      return word;
    }
  }

  /**
   * How the table cuts plate up to a thickness.
   *
   * @param upToMm thickness (mm), above 0
   * @param setup speed, pierce and lead-in
   */
  public record Speed(double upToMm, PlasmaSetup setup) {
    public Speed {
      Given.positive("thickness of a cutting speed", upToMm, 200, "mm", "Give the thickest plate.");
      Given.present("cutting speed", setup, "Give it.");
    }
  }

  /**
   * What is asked for cutting plate up to a thickness outside.
   *
   * @param upToMm thickness (mm), above 0
   * @param cutItem key of the item priced by the length of cut
   * @param pierceItem key of the item priced by the pierce
   */
  public record SentOut(double upToMm, String cutItem, String pierceItem) {
    public SentOut {
      Given.positive("thickness of a cutting price", upToMm, 200, "mm", "Give the thickest plate.");
      Given.text("item of a cut length", cutItem, "Name it.");
      Given.text("item of a pierce", pierceItem, "Name it.");
    }
  }

  public PlateCutting {
    Given.present("way of cutting plate", way, "Give table, hand or sent-out.");
    Given.text("process of plate cutting", process, "For example plasma, 45 A.");
    Given.within("least hole in thicknesses", leastHole, 0, 10, "", "1.5 is common for plasma.");
    List<Speed> bySpeed = new ArrayList<>(speeds);
    bySpeed.sort(Comparator.comparingDouble(Speed::upToMm));
    speeds = List.copyOf(bySpeed);
    List<SentOut> byPrice = new ArrayList<>(sentOut);
    byPrice.sort(Comparator.comparingDouble(SentOut::upToMm));
    sentOut = List.copyOf(byPrice);
    if (way == Way.TABLE && speeds.isEmpty()) {
      throw new IllegalArgumentException(
          "plates are cut on the shop's table and nothing says how fast. Add speeds.");
    }
    if (way == Way.SENT_OUT && sentOut.isEmpty()) {
      throw new IllegalArgumentException(
          "plates are sent out to be cut and nothing says what that costs. Add sent_out.");
    }
  }

  /**
   * How the table cuts a thickness.
   *
   * @throws MissingEntryException if it is thicker than any that has a speed
   */
  public PlasmaSetup setup(double thicknessMm) {
    return speeds.stream()
        .filter(speed -> thicknessMm <= speed.upToMm() + SAME_MM)
        .map(Speed::setup)
        .findFirst()
        .orElseThrow(() -> tooThick(thicknessMm, "plate_cutting.speeds"));
  }

  /**
   * What is asked for cutting a thickness outside.
   *
   * @throws MissingEntryException if it is thicker than any that has a price
   */
  public SentOut outside(double thicknessMm) {
    return sentOut.stream()
        .filter(price -> thicknessMm <= price.upToMm() + SAME_MM)
        .findFirst()
        .orElseThrow(() -> tooThick(thicknessMm, "plate_cutting.sent_out"));
  }

  private static MissingEntryException tooThick(double thicknessMm, String list) {
    return new MissingEntryException(
        "plate of "
            + thicknessMm
            + " mm is thicker than the catalog says how to cut. Add its thickness to "
            + list
            + ".");
  }

  /** Whether a hole of a plate is drilled and not cut with it. */
  public boolean isDrilled(Hole hole, double thicknessMm) {
    return hole instanceof RoundHole round
        && (way == Way.HAND || round.diameterMm() < leastHole * thicknessMm - 1e-6);
  }
}
