package trammel.plugins.wattslinkage;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.plates.Belt;
import trammel.trade.plates.Disc;
import trammel.trade.plates.HoleRules;
import trammel.trade.plates.Outline;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;

/**
 * A plate that holds one end of the pivot bolt and stands on tubes: round about the bolt and about
 * each tube, with straight sides between. The pivot is the origin.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param tubes centres of the tubes that are welded to it
 * @param landMm radius of metal about each tube's centre, room for its weld included
 * @param holeMm hole for the pivot bolt
 */
record PivotPlate(String name, double thicknessMm, List<Point2> tubes, double landMm, double holeMm)
    implements PlateShape {
  private static final Point2 PIVOT = new Point2(0, 0);

  PivotPlate {
    tubes = List.copyOf(tubes);
  }

  @Override
  public Outline outline() {
    List<Disc> discs = new ArrayList<>(tubes.size() + 1);
    discs.add(new Disc(PIVOT, HoleRules.SHOP.edgeFactor() * holeMm));
    tubes.forEach(tube -> discs.add(new Disc(tube, landMm)));
    return HoleRules.SHOP.check(
        name, new Outline(Belt.around(discs), List.of(new RoundHole(PIVOT, holeMm))));
  }
}
