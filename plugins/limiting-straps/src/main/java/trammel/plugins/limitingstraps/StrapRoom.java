package trammel.plugins.limitingstraps;

import static trammel.engine.quantity.Amount.length;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Phrase;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;

/**
 * Shock travel that is left when the straps are tight and stretched: with the axle hanging in both,
 * and with one wheel hanging while the other is at full bump. Below nothing, a shock is fully
 * extended first and carries the axle.
 *
 * @param site the straps' options, catalog and units
 */
record StrapRoom(Site site) implements Check {
  private static final int MOST_STEPS = 20;
  private static final double TIGHT_MM = 0.01;

  /** The check with the reserve that the job asks for as its limit. */
  static LimitedCheck of(Site site) {
    return new LimitedCheck(
        new StrapRoom(site),
        Limit.atLeast(
            site.options().get(StrapOptions.RESERVE),
            0,
            "the option reserve; common practice, no source: a strap comes tight before the shock"
                + " is fully extended"));
  }

  @Override
  public String id() {
    return "limiting-strap-room";
  }

  @Override
  public String title() {
    return "shock travel left when the limiting straps are tight";
  }

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().shocks().isEmpty()) {
      return new Reading.NotApplicable("the layout has no separate shock");
    }
    try {
      return read(analysis, StrapFit.of(analysis, site));
    } catch (UnworkableLayoutException noRoom) {
      return new Reading.Unknown(noRoom.reason());
    }
  }

  private Reading read(LayoutAnalysis analysis, StrapFit fit) {
    double leastMm = Double.POSITIVE_INFINITY;
    String where = "";
    for (Hanging hanging : Hanging.values()) {
      Optional<AxlePose> pose = tight(analysis, fit, hanging);
      if (pose.isEmpty()) {
        continue;
      }
      for (ShockUnit shock : analysis.layout().shocks()) {
        double leftMm = shock.openMm() - shock.frame().distanceMm(pose.get().move(shock.axle()));
        if (leftMm < leastMm) {
          leastMm = leftMm;
          where = shock.name() + ", " + hanging.words;
        }
      }
    }
    if (where.isEmpty()) {
      return new Reading.Unknown(
          "the bars stop the axle before the straps are tight; see the travel that they allow");
    }
    return new Reading.Value(
        leastMm,
        Phrase.of("{}, {} stretched to {}", where, fit.strap().title(), length(fit.stretchedMm())));
  }

  /**
   * How far below ride both wheels hang in stretched straps (mm); empty where they find no room.
   */
  static OptionalDouble endOfDroopMm(LayoutAnalysis analysis, Site site) {
    try {
      Optional<AxlePose> pose = tight(analysis, StrapFit.of(analysis, site), Hanging.BOTH);
      return pose.isPresent() ? OptionalDouble.of(-pose.get().heaveMm()) : OptionalDouble.empty();
    } catch (UnworkableLayoutException noRoom) {
      return OptionalDouble.empty();
    }
  }

  /** Which wheel hangs in its strap. */
  private enum Hanging {
    BOTH("both wheels hanging"),
    LEFT("left wheel hanging, right at full bump"),
    RIGHT("right wheel hanging, left at full bump");

    private final String words;

    Hanging(String words) {
      this.words = words;
    }

    Optional<AxlePose> pose(LayoutAnalysis analysis, double hangingMm) {
      double bumpMm = analysis.layout().chassis().travel().bumpMm();
      double leftMm = this == RIGHT ? bumpMm : hangingMm;
      double rightMm = this == LEFT ? bumpMm : hangingMm;
      double sin = (leftMm - rightMm) / analysis.layout().chassis().axle().trackMm();
      double rollRad = Math.asin(Math.max(-1, Math.min(1, sin)));
      return analysis.poseAt((leftMm + rightMm) / 2, rollRad);
    }
  }

  /**
   * The pose at which a hanging wheel's strap is at its stretched length: by the secant rule, for
   * the length grows nearly evenly with the droop. Empty where the bars do not let it get there.
   */
  private static Optional<AxlePose> tight(LayoutAnalysis analysis, StrapFit fit, Hanging hanging) {
    double droopMm = analysis.layout().chassis().travel().droopMm();
    double lastMm = 0;
    double lastShort = fit.stretchedMm() - fit.place().apartMm();
    double hangingMm = -droopMm;
    for (int i = 0; i < MOST_STEPS; i++) {
      Optional<AxlePose> pose = hanging.pose(analysis, hangingMm);
      if (pose.isEmpty()) {
        return Optional.empty();
      }
      double isShort = fit.stretchedMm() - longestMm(fit.place(), pose.get());
      if (Math.abs(isShort) < TIGHT_MM) {
        return pose;
      }
      double slope = (isShort - lastShort) / (hangingMm - lastMm);
      lastMm = hangingMm;
      lastShort = isShort;
      hangingMm -= isShort / slope;
    }
    return Optional.empty();
  }

  /** The longer of the two distances from eye to eye (mm). */
  private static double longestMm(StrapPlace place, AxlePose pose) {
    Point3 upper = place.upper();
    Point3 lower = place.lower();
    return Math.max(
        upper.distanceMm(pose.move(lower)),
        upper.mirrored().distanceMm(pose.move(lower.mirrored())));
  }

  /** Less droop lets a shorter strap in; a mount set nearer leaves more of the shock. */
  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> names = shocksWithTheirSprings(analysis.layout());
    return List.of(
        new Adjustment.ChangeDroop(),
        new Adjustment.MoveEnds(names, End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.UP));
  }

  private static Set<String> shocksWithTheirSprings(Layout layout) {
    Set<String> names = new LinkedHashSet<>();
    for (ShockUnit shock : layout.shocks()) {
      names.add(shock.name());
      for (SpringUnit spring : layout.springs()) {
        if (spring.frame().equals(shock.frame()) && spring.axle().equals(shock.axle())) {
          names.add(spring.name());
        }
      }
    }
    return names;
  }
}
