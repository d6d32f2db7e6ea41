package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * The bolt holes of a bracket: one pick-up hole, or a row of them for adjustment, with a round nose
 * of metal about each.
 *
 * @param nominal centre of the hole that the layout asks for
 * @param holeDiameterMm hole diameter
 * @param noseRadiusMm metal about each hole, from its centre
 * @param count holes in the row
 * @param pitchMm distance between neighbouring centres; 0 for a single hole
 * @param directionRad direction of the row, anticlockwise from the plate's x
 * @param nominalIndex which hole of the row is the nominal one, counted from 0 against the
 *     direction
 */
public record PickUpRow(
    Point2 nominal,
    double holeDiameterMm,
    double noseRadiusMm,
    int count,
    double pitchMm,
    double directionRad,
    int nominalIndex) {
  private static final int MOST_HOLES = 25;

  public PickUpRow {
    Dimension.positiveMm("pick-up hole diameter", holeDiameterMm);
    Dimension.atLeastMm(
        "nose radius about the pick-up hole",
        noseRadiusMm,
        holeDiameterMm / 2.0,
        "Give at least 1.5 times the hole diameter.");
    Dimension.count("number of holes in the row", count, 1, MOST_HOLES);
    Dimension.count("number of the nominal hole, from 0", nominalIndex, 0, count - 1);
    Dimension.angleRad(
        "direction of the row",
        directionRad,
        -2.0 * Math.PI,
        2.0 * Math.PI,
        "Give it within one turn.");
    if (count > 1) {
      Dimension.positiveMm("pitch of the row", pitchMm);
    }
  }

  /** One hole with the nose that the shop's edge rule asks for. */
  public static PickUpRow single(Point2 centre, double holeDiameterMm) {
    double noseRadiusMm = HoleRules.SHOP.edgeFactor() * holeDiameterMm;
    return new PickUpRow(centre, holeDiameterMm, noseRadiusMm, 1, 0.0, 0.0, 0);
  }

  /** This hole as one of a row. */
  public PickUpRow row(int holes, double pitchBetweenMm, double alongRad, int whichIsNominal) {
    return new PickUpRow(
        nominal, holeDiameterMm, noseRadiusMm, holes, pitchBetweenMm, alongRad, whichIsNominal);
  }

  /** The same row with another nose radius. */
  public PickUpRow withNose(double radiusMm) {
    return new PickUpRow(
        nominal, holeDiameterMm, radiusMm, count, pitchMm, directionRad, nominalIndex);
  }

  /** Centres of all holes, in the direction of the row. */
  public List<Point2> centres() {
    List<Point2> centres = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      centres.add(Point2.polar(nominal, (i - nominalIndex) * pitchMm, directionRad));
    }
    return centres;
  }

  Point2 middle() {
    double alongMm = ((count - 1) / 2.0 - nominalIndex) * pitchMm;
    return Point2.polar(nominal, alongMm, directionRad);
  }

  List<Hole> holes() {
    List<Hole> holes = new ArrayList<>(count);
    for (Point2 centre : centres()) {
      holes.add(new RoundHole(centre, holeDiameterMm));
    }
    return holes;
  }

  List<Disc> noses() {
    List<Disc> noses = new ArrayList<>(count);
    for (Point2 centre : centres()) {
      noses.add(new Disc(centre, noseRadiusMm));
    }
    return noses;
  }
}
