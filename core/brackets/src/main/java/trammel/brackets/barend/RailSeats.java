package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.quantity.Phrase;

/** Keeps the brackets of one rail off each other. */
public final class RailSeats {
  /** Kept between neighbouring brackets for their welds, 1/4 in: common practice, no source. */
  private static final double APART_MM = 25.4 / 4;

  private RailSeats() {}

  /**
   * The seats with bases shortened where two would meet; the longer base gives way.
   *
   * @throws UnworkableLayoutException if they are too close for that
   */
  public static List<RailSeat> apart(List<RailSeat> seats) {
    List<RailSeat> fitted = new ArrayList<>(seats);
    for (int i = 0; i < fitted.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (fitted.get(i).left() == fitted.get(j).left()) {
          part(fitted, i, j);
        }
      }
    }
    return List.copyOf(fitted);
  }

  private static void part(List<RailSeat> seats, int i, int j) {
    boolean firstLonger = seats.get(i).baseLengthMm() > seats.get(j).baseLengthMm();
    int longer = firstLonger ? i : j;
    RailSeat giving = seats.get(longer);
    RailSeat keeping = seats.get(firstLonger ? j : i);
    double betweenMm = Math.abs(giving.joint().xMm() - keeping.joint().xMm());
    double roomMm = 2 * (betweenMm - APART_MM) - keeping.baseLengthMm();
    if (roomMm >= giving.baseLengthMm()) {
      return;
    }
    if (roomMm < giving.leastBaseMm()) {
      double neededMm = (keeping.baseLengthMm() + giving.leastBaseMm()) / 2 + APART_MM;
      throw new UnworkableLayoutException(
          Phrase.of(
              "the frame joints of {} and {} are {} apart along the rail; their"
                  + " brackets need {}. Make one of the two bars longer or shorter by {}.",
              giving.bar(),
              keeping.bar(),
              length(betweenMm),
              length(neededMm),
              length(neededMm - betweenMm)));
    }
    seats.set(longer, giving.withBase(roomMm));
  }
}
