package trammel.engine.checks;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trammel.engine.layout.Bar;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/** Names of the parts that an adjustment moves together. */
final class Names {
  private Names() {}

  static Set<String> of(List<Bar> bars) {
    Set<String> names = new LinkedHashSet<>();
    for (Bar bar : bars) {
      names.add(bar.name());
    }
    return names;
  }

  /** Shocks together with the springs that share both their mounts, as on a coil-over. */
  static Set<String> ofShocks(List<ShockUnit> shocks, List<SpringUnit> springs) {
    Set<String> names = new LinkedHashSet<>();
    for (ShockUnit shock : shocks) {
      names.add(shock.name());
      for (SpringUnit spring : springs) {
        if (spring.frame().equals(shock.frame()) && spring.axle().equals(shock.axle())) {
          names.add(spring.name());
        }
      }
    }
    return names;
  }

  static Set<String> ofSprings(List<SpringUnit> springs, List<ShockUnit> shocks) {
    Set<String> names = new LinkedHashSet<>();
    for (SpringUnit spring : springs) {
      names.add(spring.name());
      for (ShockUnit shock : shocks) {
        if (spring.frame().equals(shock.frame()) && spring.axle().equals(shock.axle())) {
          names.add(shock.name());
        }
      }
    }
    return names;
  }
}
