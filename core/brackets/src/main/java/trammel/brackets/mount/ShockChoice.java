package trammel.brackets.mount;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.Shock;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Phrase;

/**
 * Chooses the shock for the travel: the shortest that keeps its reserve at both ends, set so that
 * bump and droop leave the same.
 */
final class ShockChoice {
  private static final int ROUNDS = 3;
  private static final double ROUNDING_MM = 1e-6;

  private final List<Shock> shocks;
  private final Vector3 upward;
  private final AxleTravel travel;

  /**
   * @param shocks to choose from, at least one
   * @param leanRad lean inward, from the lower mount up
   */
  ShockChoice(List<Shock> shocks, double leanRad, AxleTravel travel) {
    List<Shock> sorted = new ArrayList<>(shocks);
    sorted.sort(Comparator.comparingDouble(Shock::closedMm));
    this.shocks = sorted;
    this.upward = new Vector3(0, -Math.sin(leanRad), Math.cos(leanRad));
    this.travel = travel;
  }

  /**
   * The shock on a lower mount on the left.
   *
   * @throws UnworkableLayoutException if none has travel enough
   */
  ShockFit at(Point3 axle) {
    AxlePath path = travel.path(axle);
    AxlePath.Along along = path.along(axle, upward);
    for (Shock shock : shocks) {
      if (isTooShort(shock, along)) {
        continue;
      }
      ShockFit fit = fit(shock, axle, path);
      if (Math.min(fit.leftInBumpMm(), fit.leftInDroopMm())
          >= MountPractice.SHOCK_RESERVE_MM - ROUNDING_MM) {
        return fit;
      }
    }
    throw tooShort(axle, path);
  }

  /** Known before it is set: no length at ride leaves enough of its stroke at both ends. */
  private static boolean isTooShort(Shock shock, AxlePath.Along along) {
    double leftMm = shock.openMm() - shock.closedMm() - along.leastStrokeMm(shock.closedMm());
    return leftMm < 2 * (MountPractice.SHOCK_RESERVE_MM - ROUNDING_MM);
  }

  private ShockFit fit(Shock shock, Point3 axle, AxlePath path) {
    double lengthMm = (shock.closedMm() + shock.openMm()) / 2;
    for (int i = 0; i < ROUNDS; i++) {
      Point3 frame = axle.plus(upward.scaled(lengthMm));
      lengthMm += (shock.closedMm() + shock.openMm()) / 2 - path.from(frame).middleMm();
    }
    Point3 frame = axle.plus(upward.scaled(lengthMm));
    AxlePath.Range range = path.from(frame);
    return new ShockFit(
        shock, frame, axle, range.leastMm() - shock.closedMm(), shock.openMm() - range.mostMm());
  }

  private UnworkableLayoutException tooShort(Point3 axle, AxlePath path) {
    Shock longest = shocks.get(0);
    for (Shock shock : shocks) {
      if (shock.openMm() - shock.closedMm() > longest.openMm() - longest.closedMm()) {
        longest = shock;
      }
    }
    ShockFit fit = fit(longest, axle, path);
    AxlePath.Range range = path.from(fit.frame());
    double shortestMm = range.leastMm();
    double longestMm = range.mostMm();
    double neededMm = longestMm - shortestMm + 2 * MountPractice.SHOCK_RESERVE_MM;
    return new UnworkableLayoutException(
        Phrase.of(
            "{}{}{} has a stroke of {}; bump and droop with {} left at each end need"
                + " {} (mounted here, closed {} or less and open {} or more). Choose a"
                + " longer shock, ask for less bump or droop, or lean it more.",
            shocks.size() == 1 ? "shock " : "the shock with the longest stroke, ",
            longest.key(),
            shocks.size() == 1 ? "" : ",",
            length(longest.openMm() - longest.closedMm()),
            length(MountPractice.SHOCK_RESERVE_MM),
            length(neededMm),
            length(shortestMm - MountPractice.SHOCK_RESERVE_MM),
            length(longestMm + MountPractice.SHOCK_RESERVE_MM)));
  }
}
