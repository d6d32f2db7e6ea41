package trammel.planning.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.EndFitting;
import trammel.engine.layout.Joint;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;

/**
 * Joints for both ends of every bar that go together.
 *
 * @param frame threaded, so that it sets the bar's length
 * @param axle a welded barrel of the same kind, or the same swivel
 */
public record JointPair(EndFitting frame, EndFitting axle) {

  /** Working load of the weaker of the two (N). */
  public double workingN() {
    return Math.min(working(frame), working(axle));
  }

  /** All pairs of a catalog: bushed ones first, the weaker before the stronger. */
  public static List<JointPair> all(Catalog catalog) {
    List<EndFitting> barrels = sorted(catalog, false);
    List<EndFitting> shanks = sorted(catalog, true);
    List<JointPair> pairs = new ArrayList<>();
    for (EndFitting barrel : barrels) {
      shanks.stream()
          .filter(shank -> working(shank) >= working(barrel) && isAlike(shank, barrel))
          .findFirst()
          .ifPresent(shank -> pairs.add(new JointPair(shank, barrel)));
    }
    for (EndFitting shank : shanks) {
      if (barrels.stream().noneMatch(barrel -> isAlike(barrel, shank))) {
        pairs.add(new JointPair(shank, shank));
      }
    }
    return List.copyOf(pairs);
  }

  /** The pair that a linkage's options choose; empty where it has no such options. */
  public static Optional<JointPair> of(Site site) {
    Catalog catalog = site.catalog();
    Optional<String> frame = site.options().find(BarOptions.frameEnd(catalog));
    Optional<String> axle = site.options().find(BarOptions.axleEnd(catalog));
    return frame.isPresent() && axle.isPresent()
        ? Optional.of(new JointPair(catalog.end(frame.get()), catalog.end(axle.get())))
        : Optional.empty();
  }

  private static List<EndFitting> sorted(Catalog catalog, boolean threaded) {
    return catalog.ends().values().stream()
        .filter(end -> end.threaded() == threaded)
        .sorted(Comparator.comparingDouble(JointPair::working))
        .toList();
  }

  private static double working(EndFitting end) {
    return end.joint().workingN();
  }

  /** Whether two joints give alike: both bushed, or both swivels. */
  private static boolean isAlike(EndFitting one, EndFitting other) {
    Joint first = one.joint();
    Joint second = other.joint();
    return first.radialStiffnessNPerMm() < 2 * second.radialStiffnessNPerMm()
        && second.radialStiffnessNPerMm() < 2 * first.radialStiffnessNPerMm();
  }
}
