package trammel.cutting.outlines;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Parts of one outline that may lie the same ways round, whatever they are called. */
final class OutlineKind {
  final OutlineWay[] ways;
  final double areaMm2;
  private final OutlinePart first;

  /** What the parts still to be placed are called. */
  private final Deque<String> names = new ArrayDeque<>();

  private OutlineKind(OutlinePart first) {
    this.first = first;
    this.ways = OutlineWay.all(first);
    this.areaMm2 = first.areaMm2();
  }

  private record Form(List<OutlinePoint> outline, List<Double> turnsDeg) {}

  /** The kinds among the parts of a list, in the order of the list. */
  static List<OutlineKind> of(List<OutlinePart> parts) {
    Map<Form, OutlineKind> kinds = new LinkedHashMap<>();
    for (OutlinePart part : parts) {
      OutlineKind kind =
          kinds.computeIfAbsent(
              new Form(part.outline(), part.turnsDeg()), form -> new OutlineKind(part));
      for (int i = 0; i < part.quantity(); i++) {
        kind.names.add(part.id());
      }
    }
    return new ArrayList<>(kinds.values());
  }

  int left() {
    return names.size();
  }

  /** Takes one of those left and says what it is called. */
  String take() {
    return names.remove();
  }

  /** Those left as a parts list. */
  List<OutlinePart> rest() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (String name : names) {
      counts.merge(name, 1, Integer::sum);
    }
    List<OutlinePart> rest = new ArrayList<>(counts.size());
    counts.forEach(
        (name, count) -> rest.add(new OutlinePart(name, first.outline(), first.turnsDeg(), count)));
    return rest;
  }
}
