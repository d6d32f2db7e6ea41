package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.trade.given.Dimension;

/**
 * Holes that take weight out of a bracket plate and leave it as strong. The plate takes a force in
 * its plane at a bolt and is held along its base. A hole is allowed only where no straight cut
 * through it, square to the line from bolt to base, carries a higher stress than the highest that
 * the plate without it has anywhere, whichever way the force points.
 *
 * @param bolts where the force may enter the plate, the farthest from the base first
 * @param base middle of the base, in the direction in which the plate is held
 * @param spineMm half the width along the middle line that stays whole for a web that is welded
 *     there; 0 for none, and then one hole sits on that line, else two beside it
 */
public record Lightening(List<Point2> bolts, Point2 base, double spineMm) {
  /** Metal left round a hole: 1/2 in, or twice the thickness; common practice, no source. */
  private static final double KEPT_MM = 12.7;

  private static final double KEPT_THICKNESSES = 2;

  /** Sizes of hole saws and cutters, 3/4 to 3 in by quarters: common practice, no source. */
  private static final double SIZE_STEP_MM = 25.4 / 4;

  private static final int MOST_STEPS = 12;
  private static final int LEAST_STEPS = 3;

  /** Cuts looked at from bolt to base, and places tried for a hole. */
  private static final int CUTS = 96;

  private static final int PLACES = 24;

  /** Every half degree: in a slender plate pull turns into bending within a few degrees. */
  private static final int LEANS = 360;

  private static final double CHORD_MM = 0.05;
  private static final double ROUNDING = 1e-9;

  public Lightening {
    bolts = List.copyOf(bolts);
    for (Point2 bolt : bolts) {
      Dimension.positiveMm("distance from bolt to base of a plate", bolt.distanceMm(base));
    }
    Dimension.notNegativeMm("metal kept for the web of a lightened plate", spineMm);
  }

  /** The plate with the largest hole or pair of holes that it stands, if it stands any. */
  public Optional<Outline> of(Outline plate, double thicknessMm) {
    Point2 first = bolts.get(0);
    double upRad = first.headingRad(base);
    Placement toBolt = Placement.shift(-first.xMm(), -first.yMm());
    Placement upright = Placement.turn(Math.PI / 2 - upRad);
    Outline standing = plate.placed(toBolt).placed(upright);
    List<Point2> loaded = new ArrayList<>(bolts.size());
    for (Point2 bolt : bolts) {
      loaded.add(upright.of(toBolt.of(bolt)));
    }
    double[][] allowedMPa = greatest(standing, loaded);
    double keptMm = Math.max(KEPT_MM, KEPT_THICKNESSES * thicknessMm);
    for (int steps = MOST_STEPS; steps >= LEAST_STEPS; steps--) {
      for (List<Point2> centres : places(standing, steps * SIZE_STEP_MM / 2, keptMm)) {
        Outline lighter = with(standing, centres, steps * SIZE_STEP_MM / 2);
        if (isAsStrong(greatest(lighter, loaded), allowedMPa)) {
          return Optional.of(back(lighter, upRad));
        }
      }
    }
    return Optional.empty();
  }

  private Outline back(Outline standing, double upRad) {
    return standing
        .placed(Placement.turn(upRad - Math.PI / 2))
        .placed(Placement.shift(bolts.get(0).xMm(), bolts.get(0).yMm()));
  }

  private double heightMm() {
    return bolts.get(0).distanceMm(base);
  }

  /** Places for the hole or the pair, nearest the base first: there the plate is widest. */
  private List<List<Point2>> places(Outline standing, double radiusMm, double keptMm) {
    List<List<Point2>> places = new ArrayList<>();
    List<List<Point2>> polygons = polygons(standing);
    for (int i = PLACES - 1; i > 0; i--) {
      double yMm = heightMm() * i / PLACES;
      if (yMm + radiusMm + keptMm > heightMm()) {
        continue;
      }
      double middleMm = CutSection.at(yMm, polygons).middleMm();
      List<Point2> centres = centres(middleMm, yMm, radiusMm, keptMm);
      if (isClear(standing, centres, radiusMm + keptMm)) {
        places.add(centres);
      }
    }
    return places;
  }

  private List<Point2> centres(double middleMm, double yMm, double radiusMm, double keptMm) {
    if (spineMm == 0) {
      return List.of(new Point2(middleMm, yMm));
    }
    double asideMm = spineMm + keptMm + radiusMm;
    return List.of(new Point2(-asideMm, yMm), new Point2(asideMm, yMm));
  }

  private static boolean isClear(Outline plate, List<Point2> centres, double needMm) {
    for (Point2 centre : centres) {
      if (!plate.outer().contains(centre) || plate.outer().distanceMm(centre) < needMm) {
        return false;
      }
      for (Hole hole : plate.holes()) {
        if (hole.loop().distanceMm(centre) < needMm) {
          return false;
        }
      }
    }
    return true;
  }

  private static Outline with(Outline plate, List<Point2> centres, double radiusMm) {
    List<Hole> holes = new ArrayList<>(plate.holes());
    for (Point2 centre : centres) {
      holes.add(new Window(Loop.circle(centre, radiusMm)));
    }
    return new Outline(plate.outer(), holes);
  }

  private static List<List<Point2>> polygons(Outline plate) {
    List<List<Point2>> polygons = new ArrayList<>(plate.holePolygons(CHORD_MM));
    polygons.add(plate.polygon(CHORD_MM));
    return polygons;
  }

  private static boolean isAsStrong(double[][] hasMPa, double[][] allowedMPa) {
    for (int bolt = 0; bolt < hasMPa.length; bolt++) {
      for (int lean = 0; lean < LEANS; lean++) {
        if (hasMPa[bolt][lean] > allowedMPa[bolt][lean] * (1 + ROUNDING)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Greatest stress over all cuts, for each bolt and lean of a force of 1 N (MPa, 1 mm thick). */
  private double[][] greatest(Outline standing, List<Point2> loaded) {
    List<List<Point2>> polygons = polygons(standing);
    double[][] greatest = new double[loaded.size()][LEANS];
    for (int cut = 0; cut < CUTS; cut++) {
      double yMm = heightMm() * cut / CUTS;
      CutSection section = CutSection.at(yMm, polygons);
      for (int bolt = 0; bolt < greatest.length; bolt++) {
        Point2 at = loaded.get(bolt);
        for (int lean = 0; lean < LEANS && yMm >= at.yMm(); lean++) {
          double leanRad = Math.PI * lean / LEANS;
          greatest[bolt][lean] =
              Math.max(greatest[bolt][lean], section.stressMPa(leanRad, at, yMm));
        }
      }
    }
    return greatest;
  }
}
