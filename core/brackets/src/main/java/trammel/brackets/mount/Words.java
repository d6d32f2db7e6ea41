package trammel.brackets.mount;

import trammel.engine.geometry.Point3;
import trammel.reading.quantity.QuantityPrinter;

/** Places by the axle in words. */
public final class Words {
  private static final double LEVEL_MM = 0.4;

  private Words() {}

  /** Where a point stands from the axle's centre, such as {@code 3 in behind and 2 in below}. */
  public static String fromAxle(Point3 point, Point3 axleCentre, QuantityPrinter print) {
    double forwardMm = point.xMm() - axleCentre.xMm();
    double upMm = point.zMm() - axleCentre.zMm();
    String along = print.length(Math.abs(forwardMm)) + (forwardMm < 0 ? " behind" : " ahead of");
    String height =
        Math.abs(upMm) < LEVEL_MM
            ? "level with"
            : print.length(Math.abs(upMm)) + (upMm < 0 ? " below" : " above");
    return along + " and " + height + " the axle's centre";
  }

  /** A count with its noun, such as {@code 3 pieces}. */
  public static String count(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
