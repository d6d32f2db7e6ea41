package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.BodyPose;

/**
 * A bracket on the floor: one end of a bar, spring or shock. A coil that sits on its shock shares
 * the shock's brackets, which go by the shock's name.
 *
 * @param part name of the part that it holds
 * @param end which end
 */
public record Mount(String part, End end) {
  /** A coil whose seats are as near as this to the shock's mounts sits on that shock. */
  private static final double ON_THE_SHOCK_MM = 0.1;

  /** Every bracket of a layout, each once: bars, springs, shocks; frame end before axle end. */
  public static List<Mount> of(Layout layout) {
    List<Mount> mounts = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      add(mounts, bar.name());
    }
    for (SpringUnit spring : layout.springs()) {
      if (layout.shocks().stream().noneMatch(shock -> sitsOn(spring, shock))) {
        add(mounts, spring.name());
      }
    }
    for (ShockUnit shock : layout.shocks()) {
      add(mounts, shock.name());
    }
    return mounts;
  }

  private static boolean sitsOn(SpringUnit spring, ShockUnit shock) {
    return spring.frame().distanceMm(shock.frame()) < ON_THE_SHOCK_MM
        && spring.axle().distanceMm(shock.axle()) < ON_THE_SHOCK_MM;
  }

  private static void add(List<Mount> mounts, String part) {
    for (End end : End.values()) {
      mounts.add(new Mount(part, end));
    }
  }

  /** Short name for readings, such as {@code lower-left.frame}. */
  public String key() {
    return part + (end == End.FRAME ? ".frame" : ".axle");
  }

  /** In words: a bracket, or the joint on a further body of the linkage, such as a rocker. */
  public String words(Layout layout) {
    Optional<String> body =
        layout.bar(part).map(bar -> bar.at(end).body()).filter(Mount::isFurther);
    return body.isPresent()
        ? "joint of " + part + " on the " + body.get()
        : (end == End.FRAME ? "frame" : "axle") + " bracket of " + part;
  }

  private static boolean isFurther(String body) {
    return !body.equals(BodyPose.FRAME) && !body.equals(BodyPose.AXLE);
  }

  /** Where it is in a layout (mm). */
  public Point3 point(Layout layout) {
    for (Bar bar : layout.bars()) {
      if (bar.name().equals(part)) {
        return bar.point(end);
      }
    }
    for (SpringUnit spring : layout.springs()) {
      if (spring.name().equals(part)) {
        return spring.point(end);
      }
    }
    for (ShockUnit shock : layout.shocks()) {
      if (shock.name().equals(part)) {
        return shock.point(end);
      }
    }
    throw new IllegalArgumentException(
        "part " + part + " is not in the layout; name a bar, spring or shock of it.");
  }

  /** The layout with this bracket elsewhere; a coil goes with the shock on which it sits. */
  Layout moved(Layout layout, Point3 point) {
    List<Bar> bars = new ArrayList<>(layout.bars());
    bars.replaceAll(bar -> bar.name().equals(part) ? bar.withPoint(end, point) : bar);
    List<SpringUnit> springs = new ArrayList<>(layout.springs());
    springs.replaceAll(spring -> isHeldIn(layout, spring) ? spring.withPoint(end, point) : spring);
    List<ShockUnit> shocks = new ArrayList<>(layout.shocks());
    shocks.replaceAll(shock -> shock.name().equals(part) ? shock.withPoint(end, point) : shock);
    return layout.withBars(bars).withSprings(springs).withShocks(shocks);
  }

  private boolean isHeldIn(Layout layout, SpringUnit spring) {
    return spring.name().equals(part)
        || layout.shocks().stream()
            .anyMatch(shock -> shock.name().equals(part) && sitsOn(spring, shock));
  }
}
