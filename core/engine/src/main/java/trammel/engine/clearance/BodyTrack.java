package trammel.engine.clearance;

import java.util.Arrays;
import trammel.engine.motion.Placement;

/** A body laid out at every pose of a grid. */
final class BodyTrack {

  private final Placed[] places;
  private final double greatestStepMm;

  BodyTrack(Body body, PoseGrid grid, Placement[] placements) {
    places = new Placed[grid.size()];
    if (body.carrier().isStill()) {
      Arrays.fill(places, Placed.of(body.shape()));
      greatestStepMm = 0;
    } else {
      for (int k = 0; k < places.length; k++) {
        places[k] = Placed.of(body.at(placements[k]));
      }
      greatestStepMm = greatestStepMm(grid);
    }
  }

  private double greatestStepMm(PoseGrid grid) {
    double greatestMm = 0;
    for (int k = 0; k < places.length; k++) {
      greatestMm = Math.max(greatestMm, stepMm(k, grid.neighbour(k, 0, 1)));
      greatestMm = Math.max(greatestMm, stepMm(k, grid.neighbour(k, 1, -1)));
      greatestMm = Math.max(greatestMm, stepMm(k, grid.neighbour(k, 1, 0)));
      greatestMm = Math.max(greatestMm, stepMm(k, grid.neighbour(k, 1, 1)));
    }
    return greatestMm;
  }

  private double stepMm(int index, int neighbour) {
    return neighbour < 0 ? 0 : Placed.greatestMoveMm(places[index], places[neighbour]);
  }

  Placed at(int index) {
    return places[index];
  }

  /** Furthest that any point of the body moves between neighbouring poses, mm. */
  double greatestStepMm() {
    return greatestStepMm;
  }
}
