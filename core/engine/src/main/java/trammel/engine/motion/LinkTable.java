package trammel.engine.motion;

import java.util.List;

/** The numbers of a linkage laid out for the inner loops. */
final class LinkTable {

  /** Doubles a link takes in {@link #values}. */
  static final int WIDTH = 9;

  static final int FRAME_X = 0;
  static final int FRAME_Y = 1;

  /** Frame pivot above the axle's middle at ride. */
  static final int FRAME_Z = 2;

  /** Axle pivot from the axle's middle at ride. */
  static final int ARM_X = 3;

  static final int ARM_Y = 4;
  static final int ARM_Z = 5;
  static final int LENGTH = 6;

  /** Stiffness over the largest stiffness. */
  static final int WEIGHT = 7;

  /** Half of (arm squared less length squared). */
  static final int OFFSET = 8;

  final double[] values;
  final int count;
  final double stiffestNPerMm;

  /** Turns angles into lengths of the size of the shifts (mm). */
  final double leverMm;

  final double shortestMm;

  LinkTable(Linkage linkage) {
    List<Link> links = linkage.links();
    count = links.size();
    leverMm = linkage.trackMm() / 3;
    double stiffest = 0;
    for (Link link : links) {
      stiffest = Math.max(stiffest, link.stiffnessNPerMm());
    }
    stiffestNPerMm = stiffest;
    values = new double[count * WIDTH];
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      fill(i * WIDTH, links.get(i), linkage.tyreLoadedRadiusMm());
      shortest = Math.min(shortest, values[i * WIDTH + LENGTH]);
    }
    shortestMm = shortest;
  }

  private void fill(int at, Link link, double radiusMm) {
    values[at + FRAME_X] = link.frame().xMm();
    values[at + FRAME_Y] = link.frame().yMm();
    values[at + FRAME_Z] = link.frame().zMm() - radiusMm;
    double armX = link.axle().xMm();
    double armY = link.axle().yMm();
    double armZ = link.axle().zMm() - radiusMm;
    values[at + ARM_X] = armX;
    values[at + ARM_Y] = armY;
    values[at + ARM_Z] = armZ;
    double dx = armX - values[at + FRAME_X];
    double dy = armY - values[at + FRAME_Y];
    double dz = armZ - values[at + FRAME_Z];
    double squared = dx * dx + dy * dy + dz * dz;
    values[at + LENGTH] = Math.sqrt(squared);
    values[at + WEIGHT] = link.stiffnessNPerMm() / stiffestNPerMm;
    values[at + OFFSET] = 0.5 * (armX * armX + armY * armY + armZ * armZ - squared);
  }
}
