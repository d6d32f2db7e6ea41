package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.length;

import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Phrase;

/** Places by the axle in words. */
public final class Words {
  private static final double LEVEL_MM = 0.4;

  private Words() {}

  /** Where a point stands from the axle's centre, such as {@code 3 in behind and 2 in below}. */
  public static Phrase fromAxle(Point3 point, Point3 axleCentre) {
    double forwardMm = point.xMm() - axleCentre.xMm();
    double upMm = point.zMm() - axleCentre.zMm();
    Phrase along =
        Phrase.of("{}{}", length(Math.abs(forwardMm)), forwardMm < 0 ? " behind" : " ahead of");
    Phrase height =
        Math.abs(upMm) < LEVEL_MM
            ? Phrase.of("level with")
            : Phrase.of("{}{}", length(Math.abs(upMm)), upMm < 0 ? " below" : " above");
    return Phrase.of("{} and {} the axle's centre", along, height);
  }

  /** A count with its noun, such as {@code 3 pieces}. */
  public static String count(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
