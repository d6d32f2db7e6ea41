package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.sheets.SheetStock;

/** Where kinds of parts lie on one sheet, whichever of the parts they are. */
final class SheetLayout {
  final SheetStock stock;
  private final List<Spot> spots = new ArrayList<>();
  private final Map<OutlineKind, Integer> used = new HashMap<>();
  private double areaMm2;

  private record Spot(OutlineKind kind, double turnDeg, double xMm, double yMm) {}

  SheetLayout(SheetStock stock) {
    this.stock = stock;
  }

  void put(OutlineKind kind, double turnDeg, double xMm, double yMm) {
    spots.add(new Spot(kind, turnDeg, xMm, yMm));
    used.merge(kind, 1, Integer::sum);
    areaMm2 += kind.areaMm2;
  }

  boolean isEmpty() {
    return spots.isEmpty();
  }

  /** Area of all its parts. */
  double areaMm2() {
    return areaMm2;
  }

  /** How many parts lie on it. */
  int parts() {
    return spots.size();
  }

  /** How often it can be cut from the parts that are left. */
  int timesLeft() {
    int times = Integer.MAX_VALUE;
    for (Map.Entry<OutlineKind, Integer> kind : used.entrySet()) {
      times = Math.min(times, kind.getKey().left() / kind.getValue());
    }
    return times;
  }

  /** Cuts it once: takes its parts from those left. */
  NestedSheet cut() {
    List<PlacedOutline> placed = new ArrayList<>(spots.size());
    for (Spot spot : spots) {
      placed.add(new PlacedOutline(spot.kind.take(), spot.turnDeg, spot.xMm, spot.yMm));
    }
    return new NestedSheet(stock, placed);
  }
}
