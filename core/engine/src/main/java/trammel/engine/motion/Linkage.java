package trammel.engine.motion;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import trammel.engine.geometry.Point3;

/**
 * A rigid axle and the links that hold it, as they stand at ride height.
 *
 * @param trackMm distance between the wheel centres (mm)
 * @param tyreLoadedRadiusMm height of the wheel centres above the ground at ride (mm)
 * @param links four links or more that together hold the axle fore and aft, sideways, in yaw and in
 *     pitch
 */
public record Linkage(double trackMm, double tyreLoadedRadiusMm, List<Link> links) {

  /** Heave and roll are imposed; the four other freedoms need a link each. */
  static final int FEWEST_LINKS = 4;

  /** Beyond this ratio of stiffness the soft link's part of the motion drowns in rounding. */
  static final double WIDEST_STIFFNESS_RATIO = 1e6;

  /**
   * @throws IllegalArgumentException if track or radius is not a positive length, there are fewer
   *     than four links, two share a name, or the links leave the axle free to move at ride height
   */
  public Linkage {
    requireLength("track", trackMm);
    requireLength("loaded tyre radius", tyreLoadedRadiusMm);
    links = List.copyOf(Objects.requireNonNull(links, "links of the linkage"));
    if (links.size() < FEWEST_LINKS) {
      throw new IllegalArgumentException(
          "The linkage has "
              + links.size()
              + " links; at least 4 are needed to hold the axle fore and aft, sideways, in yaw and"
              + " in pitch. Add the missing links.");
    }
    requireOwnNames(links);
    requireComparableStiffness(links);
    HeldFreedoms.require(trackMm, tyreLoadedRadiusMm, links);
  }

  /** Middle of the axle line at ride: midway between the wheel centres. */
  public Point3 centreAtRide() {
    return new Point3(0, 0, tyreLoadedRadiusMm);
  }

  /** Wheel centre at ride, left side. */
  public Point3 wheelLeftAtRide() {
    return new Point3(0, trackMm / 2, tyreLoadedRadiusMm);
  }

  /** Wheel centre at ride, right side. */
  public Point3 wheelRightAtRide() {
    return new Point3(0, -trackMm / 2, tyreLoadedRadiusMm);
  }

  /**
   * Whether the links can follow every small heave and roll without any stretch, because there are
   * no more of them than freedoms to hold. A linkage with more links binds, and its bushings give.
   */
  public boolean closesExactly() {
    return links.size() == FEWEST_LINKS;
  }

  /**
   * The link of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Link link(String name) {
    return links.get(indexOf(name));
  }

  /**
   * The same linkage with one link replaced: the one that has the new link's name.
   *
   * @throws IllegalArgumentException if there is none of that name, or the new linkage is
   *     impossible
   */
  public Linkage withLink(Link replacement) {
    List<Link> changed = new ArrayList<>(links);
    changed.set(indexOf(replacement.name()), replacement);
    return new Linkage(trackMm, tyreLoadedRadiusMm, changed);
  }

  /** The same linkage built the other way round: left is right. */
  public Linkage mirrored() {
    List<Link> mirrored = new ArrayList<>(links.size());
    for (Link link : links) {
      mirrored.add(link.mirrored());
    }
    return new Linkage(trackMm, tyreLoadedRadiusMm, mirrored);
  }

  private int indexOf(String name) {
    for (int i = 0; i < links.size(); i++) {
      if (links.get(i).name().equals(name)) {
        return i;
      }
    }
    StringBuilder known = new StringBuilder();
    for (Link link : links) {
      known.append(known.isEmpty() ? "" : ", ").append(link.name());
    }
    throw new IllegalArgumentException(
        "There is no link '" + name + "'; the links are " + known + ". Give one of these names.");
  }

  private static void requireLength(String what, double lengthMm) {
    if (!(lengthMm > 0 && lengthMm <= Link.FARTHEST_MM)) {
      throw new IllegalArgumentException(
          "The "
              + what
              + " is "
              + lengthMm
              + " mm; it must be above 0 and at most 10000000 mm. Measure it again.");
    }
  }

  private static void requireOwnNames(List<Link> links) {
    Set<String> seen = new HashSet<>();
    for (Link link : links) {
      if (!seen.add(link.name())) {
        throw new IllegalArgumentException(
            "Two links are called '" + link.name() + "'; give each link a name of its own.");
      }
    }
  }

  private static void requireComparableStiffness(List<Link> links) {
    if (links.size() == FEWEST_LINKS) {
      return;
    }
    Link softest = links.get(0);
    Link stiffest = links.get(0);
    for (Link link : links) {
      softest = link.stiffnessNPerMm() < softest.stiffnessNPerMm() ? link : softest;
      stiffest = link.stiffnessNPerMm() > stiffest.stiffnessNPerMm() ? link : stiffest;
    }
    if (stiffest.stiffnessNPerMm() / softest.stiffnessNPerMm() > WIDEST_STIFFNESS_RATIO) {
      throw new IllegalArgumentException(
          "Link '"
              + softest.name()
              + "' has a stiffness of "
              + softest.stiffnessNPerMm()
              + " N/mm and link '"
              + stiffest.name()
              + "' of "
              + stiffest.stiffnessNPerMm()
              + " N/mm; the stiffest may be at most a million times the softest. Give the bushings"
              + " their real stiffness.");
    }
  }
}
