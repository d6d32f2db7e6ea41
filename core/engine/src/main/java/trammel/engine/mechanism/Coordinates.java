package trammel.engine.mechanism;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.engine.geometry.Point3;

/**
 * The coordinates that say where all bodies stand, in mm: forward and sideways shift, yaw and pitch
 * of the axle, the turns of the further bodies, then the imposed heave and roll. Angles are
 * multiplied by a lever, so that all are alike in size.
 */
final class Coordinates {
  private static final int FORWARD = 0;
  private static final int LATERAL = 1;
  private static final int YAW = 2;
  private static final int PITCH = 3;

  /** Shorter levers would make a turn look small (mm). */
  private static final double LEAST_LEVER_MM = 1;

  final List<FurtherBody> bodies;
  final double radiusMm;

  /** Number of free coordinates. */
  final int free;

  /** Column of the imposed heave. */
  final int heave;

  /** Column of the imposed roll. */
  final int roll;

  /** Number of all coordinates. */
  final int count;

  final double axleLeverMm;

  private final Map<String, Integer> indices = new HashMap<>();
  private final int[] firstTurn;
  private final double[] leversMm;

  /** Columns that move a body: by body, then by column. */
  private final boolean[][] moves;

  Coordinates(
      double trackMm,
      double radiusMm,
      List<FurtherBody> bodies,
      List<ElasticLink> links,
      List<ExactJoint> joints,
      List<Bush> bushes) {
    this.bodies = bodies;
    this.radiusMm = radiusMm;
    axleLeverMm = trackMm / 3;
    indices.put(Mechanism.FRAME, 0);
    indices.put(Mechanism.AXLE, 1);
    firstTurn = new int[bodies.size()];
    leversMm = new double[bodies.size()];
    int columns = Mechanism.FREE_OF_AXLE;
    for (int i = 0; i < bodies.size(); i++) {
      FurtherBody body = bodies.get(i);
      indices.put(body.name(), i + 2);
      firstTurn[i] = columns;
      columns += body.pivot().turns();
      leversMm[i] = Math.max(LEAST_LEVER_MM, farthestMm(body, links, joints, bushes));
    }
    free = columns;
    heave = columns;
    roll = columns + 1;
    count = columns + 2;
    moves = new boolean[bodies.size() + 2][count];
    for (int column : new int[] {FORWARD, LATERAL, YAW, PITCH, heave, roll}) {
      moves[1][column] = true;
    }
    for (int i = 0; i < bodies.size(); i++) {
      System.arraycopy(moves[index(bodies.get(i).pivot().on())], 0, moves[i + 2], 0, count);
      for (int turn = 0; turn < bodies.get(i).pivot().turns(); turn++) {
        moves[i + 2][firstTurn[i] + turn] = true;
      }
    }
  }

  private static double farthestMm(
      FurtherBody body, List<ElasticLink> links, List<ExactJoint> joints, List<Bush> bushes) {
    Point3 pivot = body.pivot().point();
    double farthest = 0;
    for (ElasticLink link : links) {
      farthest = Math.max(farthest, reachMm(body, pivot, link.from()));
      farthest = Math.max(farthest, reachMm(body, pivot, link.to()));
    }
    for (ExactJoint joint : joints) {
      if (joint instanceof ExactJoint.Slide slide) {
        farthest = Math.max(farthest, reachMm(body, pivot, slide.point()));
        farthest = Math.max(farthest, reachMm(body, pivot, slide.line()));
      } else if (joint instanceof ExactJoint.Ball ball) {
        farthest =
            Math.max(farthest, reachMm(body, pivot, new BodyPoint(ball.first(), ball.point())));
        farthest =
            Math.max(farthest, reachMm(body, pivot, new BodyPoint(ball.second(), ball.point())));
      }
    }
    for (Bush bush : bushes) {
      farthest = Math.max(farthest, reachMm(body, pivot, new BodyPoint(bush.body(), bush.point())));
      farthest = Math.max(farthest, reachMm(body, pivot, new BodyPoint(bush.on(), bush.point())));
    }
    return farthest;
  }

  private static double reachMm(FurtherBody body, Point3 pivot, BodyPoint point) {
    return point.body().equals(body.name()) ? pivot.distanceMm(point.atRide()) : 0;
  }

  int index(String body) {
    return indices.get(body);
  }

  boolean moves(int body, int column) {
    return moves[body][column];
  }

  int firstTurn(int further) {
    return firstTurn[further];
  }

  double leverMm(int further) {
    return leversMm[further];
  }
}
