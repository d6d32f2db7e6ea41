package trammel.engine.layout;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import trammel.engine.mechanism.FurtherBody;

/**
 * A finished layout at ride: the chassis with what guides its axle, springs and shocks. Bars,
 * further bodies, springs and shocks share one set of names.
 *
 * @param chassis the vehicle at ride height
 * @param guide what guides the axle
 * @param springs the springs, at least one
 * @param shocks the shocks
 * @param antiRollBar the anti-roll bar; empty for none
 */
public record Layout(
    Chassis chassis,
    AxleGuide guide,
    List<SpringUnit> springs,
    List<ShockUnit> shocks,
    Optional<AntiRollBar> antiRollBar) {
  public Layout {
    Objects.requireNonNull(antiRollBar, "antiRollBar");
    Objects.requireNonNull(chassis, "chassis");
    Objects.requireNonNull(guide, "guide");
    springs = List.copyOf(springs);
    shocks = List.copyOf(shocks);
    if (springs.isEmpty()) {
      throw new IllegalArgumentException(
          "the layout has no spring; at least one is needed. Choose a spring type.");
    }
    Set<String> names = new HashSet<>();
    for (Bar bar : guide.bars()) {
      refuseTwice(names, bar.name());
    }
    for (FurtherBody body : guide.bodies()) {
      refuseTwice(names, body.name());
    }
    for (SpringUnit spring : springs) {
      refuseTwice(names, spring.name());
    }
    for (ShockUnit shock : shocks) {
      refuseTwice(names, shock.name());
    }
  }

  /** A layout without an anti-roll bar. */
  public Layout(
      Chassis chassis, AxleGuide guide, List<SpringUnit> springs, List<ShockUnit> shocks) {
    this(chassis, guide, springs, shocks, Optional.empty());
  }

  /** A layout whose axle is guided by bars alone. */
  public Layout(Chassis chassis, List<Bar> bars, List<SpringUnit> springs, List<ShockUnit> shocks) {
    this(chassis, AxleGuide.of(bars), springs, shocks);
  }

  private static void refuseTwice(Set<String> names, String name) {
    if (!names.add(name)) {
      throw new IllegalArgumentException(
          "two parts of the layout are called " + name + "; each needs a name of its own.");
    }
  }

  /** The bars, in the order of their linkage. */
  public List<Bar> bars() {
    return guide.bars();
  }

  /**
   * How the axle moves.
   *
   * @throws IllegalArgumentException if nothing holds it, or it is locked
   */
  public AxleMotion motion() {
    return guide.motion(chassis);
  }

  /** The bars across the vehicle, which hold the axle sideways and do nothing else. */
  public List<Bar> across() {
    return bars().stream().filter(Bar::isAcross).toList();
  }

  /** The bars that carry drive and braking at or below the axle's centre. */
  public List<Bar> lower() {
    return bars().stream().filter(bar -> drives(bar) && !isHigh(bar)).toList();
  }

  /** The bars that carry drive and braking above the axle's centre. */
  public List<Bar> upper() {
    return bars().stream().filter(bar -> drives(bar) && isHigh(bar)).toList();
  }

  /** The bars that do the same as a bar at the same height, itself among them. */
  public List<Bar> alike(Bar bar) {
    return bars().stream()
        .filter(other -> other.duties().equals(bar.duties()) && isHigh(other) == isHigh(bar))
        .toList();
  }

  private static boolean drives(Bar bar) {
    return bar.duties().contains(Duty.DRIVE_AND_BRAKING);
  }

  private boolean isHigh(Bar bar) {
    return bar.axle().zMm() > chassis.axleCentre().zMm();
  }

  /** The bar of a name. */
  public Optional<Bar> bar(String name) {
    return bars().stream().filter(bar -> bar.name().equals(name)).findFirst();
  }

  /** This layout on another chassis. */
  public Layout withChassis(Chassis newChassis) {
    return new Layout(newChassis, guide, springs, shocks, antiRollBar);
  }

  /** This layout with other bars between the same bodies. */
  public Layout withBars(List<Bar> newBars) {
    return new Layout(chassis, guide.withBars(newBars), springs, shocks, antiRollBar);
  }

  /** This layout with other springs. */
  public Layout withSprings(List<SpringUnit> newSprings) {
    return new Layout(chassis, guide, newSprings, shocks, antiRollBar);
  }

  /** This layout with other shocks. */
  public Layout withShocks(List<ShockUnit> newShocks) {
    return new Layout(chassis, guide, springs, newShocks, antiRollBar);
  }

  /** This layout with an anti-roll bar. */
  public Layout withAntiRollBar(AntiRollBar bar) {
    return new Layout(chassis, guide, springs, shocks, Optional.of(bar));
  }
}
