package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.trade.given.Dimension;
import trammel.trade.tubes.Cope;

/**
 * A weld once round a coped tube on what it fits.
 *
 * @param place the tube's end: origin at the tips, z into the tube, x along the barrel
 * @param cope what the end is cut to
 */
public record CopePath(Place place, Cope cope) implements SeamPath {
  private static final int LEAST_CHORDS = 12;
  private static final int MOST_CHORDS = 720;

  @Override
  public double lengthMm() {
    return cope.edgeLengthMm();
  }

  @Override
  public List<Point3> points(double chordMm) {
    Dimension.positiveMm("chord of a weld's path", chordMm);
    // The edge is bent at most about twice as sharply as the tube itself.
    double stepRad = 2 * Math.acos(Math.max(0, 1 - chordMm / 2 / cope.branchRadiusMm()));
    int chords =
        (int) Math.max(LEAST_CHORDS, Math.min(MOST_CHORDS, Math.ceil(2 * Math.PI / stepRad)));
    double tipsMm = cope.nearestMm();
    List<Point3> points = new ArrayList<>(chords + 1);
    for (int i = 0; i <= chords; i++) {
      double roundRad = 2 * Math.PI * i / chords;
      points.add(
          place.point(
              cope.branchRadiusMm() * Math.cos(roundRad),
              cope.branchRadiusMm() * Math.sin(roundRad),
              cope.edgeMm(roundRad) - tipsMm));
    }
    return points;
  }
}
