package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/** Numbers of the bars, springs and shocks, the same in every drawing and list of a job. */
public final class PartNumbers {
  private final List<String> names = new ArrayList<>();

  /** Numbers the parts of a layout in its own order. */
  public PartNumbers(Layout layout) {
    for (Bar bar : layout.bars()) {
      names.add(bar.name());
    }
    for (SpringUnit spring : layout.springs()) {
      names.add(spring.name());
    }
    for (ShockUnit shock : layout.shocks()) {
      names.add(shock.name());
    }
  }

  /** The parts in the order of their numbers. */
  public List<String> names() {
    return List.copyOf(names);
  }

  /** The number of a part as it is written, empty if it has none. */
  public String of(String name) {
    int index = names.indexOf(name);
    return index < 0 ? "" : Integer.toString(index + 1);
  }
}
