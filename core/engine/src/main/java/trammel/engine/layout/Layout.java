package trammel.engine.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import trammel.engine.motion.Link;
import trammel.engine.motion.Linkage;

/**
 * A finished layout at ride: the chassis with its bars, springs and shocks. Bars, springs and
 * shocks share one set of names.
 *
 * @param chassis the vehicle at ride height
 * @param bars the bars of the linkage, at least four
 * @param springs the springs, at least one
 * @param shocks the shocks
 */
public record Layout(
    Chassis chassis, List<Bar> bars, List<SpringUnit> springs, List<ShockUnit> shocks) {
  public Layout {
    Objects.requireNonNull(chassis, "chassis");
    bars = List.copyOf(bars);
    springs = List.copyOf(springs);
    shocks = List.copyOf(shocks);
    if (springs.isEmpty()) {
      throw new IllegalArgumentException(
          "the layout has no spring; at least one is needed. Choose a spring type.");
    }
    Set<String> names = new HashSet<>();
    for (Bar bar : bars) {
      refuseTwice(names, bar.name());
    }
    for (SpringUnit spring : springs) {
      refuseTwice(names, spring.name());
    }
    for (ShockUnit shock : shocks) {
      refuseTwice(names, shock.name());
    }
  }

  private static void refuseTwice(Set<String> names, String name) {
    if (!names.add(name)) {
      throw new IllegalArgumentException(
          "two parts of the layout are called " + name + "; each needs a name of its own.");
    }
  }

  /** The linkage as the motion engine sees it. */
  public Linkage linkage() {
    List<Link> links = new ArrayList<>(bars.size());
    for (Bar bar : bars) {
      links.add(bar.link());
    }
    return new Linkage(chassis.axle().trackMm(), chassis.tyre().loadedRadiusMm(), links);
  }

  /** The bars that do one thing, in the layout's order. */
  public List<Bar> bars(BarRole role) {
    List<Bar> found = new ArrayList<>(2);
    for (Bar bar : bars) {
      if (bar.role() == role) {
        found.add(bar);
      }
    }
    return found;
  }

  /** The bar of a name. */
  public Optional<Bar> bar(String name) {
    for (Bar bar : bars) {
      if (bar.name().equals(name)) {
        return Optional.of(bar);
      }
    }
    return Optional.empty();
  }

  /** This layout on another chassis. */
  public Layout withChassis(Chassis newChassis) {
    return new Layout(newChassis, bars, springs, shocks);
  }

  /** This layout with other bars. */
  public Layout withBars(List<Bar> newBars) {
    return new Layout(chassis, newBars, springs, shocks);
  }

  /** This layout with other springs. */
  public Layout withSprings(List<SpringUnit> newSprings) {
    return new Layout(chassis, bars, newSprings, shocks);
  }

  /** This layout with other shocks. */
  public Layout withShocks(List<ShockUnit> newShocks) {
    return new Layout(chassis, bars, springs, newShocks);
  }
}
