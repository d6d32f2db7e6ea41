package trammel.planning.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.assembly.Compound;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.NotchPlate;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;

/**
 * A frame rail as plates that run along it: web, flanges and, on a boxed rail, the inner web, with
 * the notch cut out of them. Its own axes: x along the rail from over the axle forward, y up from
 * its underside, the outer face in the plane z = 0.
 *
 * @param rails the rails
 * @param notch the notch that is cut over the axle
 * @param foremostMm the foremost joint on the frame, ahead of the axle (mm)
 */
record RailForm(Rails rails, Optional<NotchPlate> notch, double foremostMm) {
  /** How far the straight run goes on behind the axle (mm), 36 in: from memory. */
  private static final double BEHIND_MM = 36 * 25.4;

  /** How far it goes on ahead of front mounts and joints (mm), 12 in: from memory. */
  private static final double AHEAD_MM = 12 * 25.4;

  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** Where the rail's own axes stand. */
  Place place(boolean left) {
    Vector3 along = at(left, -1).to(at(left, 1)).normalized();
    return Place.of(at(left, 0), along, UP.minus(along.scaled(UP.dot(along))));
  }

  private Point3 at(boolean left, double forwardMm) {
    double sideMm = rails.outerFaceMm(forwardMm);
    return new Point3(forwardMm, left ? sideMm : -sideMm, rails.undersideMm(forwardMm));
  }

  /** Its steel; on the left rail own z goes inwards, on the right one outwards. */
  Solid solid(boolean left) {
    double inward = left ? 1 : -1;
    double wallMm = rails.wallMm();
    List<Compound.Member> members = new ArrayList<>();
    members.add(web(0, inward));
    if (rails.boxed()) {
      members.add(web(rails.flangeMm() - wallMm, inward));
    }
    double flangeMm = rails.flangeMm() - (rails.boxed() ? 2 : 1) * wallMm;
    members.add(flange(rearMm(), frontMm(), rails.depthMm() - wallMm, flangeMm, inward));
    if (notch.isEmpty()) {
      members.add(flange(rearMm(), frontMm(), 0, flangeMm, inward));
    } else {
      double halfMm = notch.get().openingMm() / 2;
      members.add(flange(rearMm(), -halfMm, 0, flangeMm, inward));
      members.add(flange(halfMm, frontMm(), 0, flangeMm, inward));
    }
    return new Compound(members);
  }

  private double rearMm() {
    return -BEHIND_MM;
  }

  private double frontMm() {
    return Math.max(rails.frontMountsForwardMm(), foremostMm) + AHEAD_MM;
  }

  /** An upright plate that starts at a distance inside the outer face. */
  private Compound.Member web(double insideMm, double inward) {
    double topMm = rails.depthMm();
    List<Edge> edges = new ArrayList<>();
    Point2 lowRear = new Point2(rearMm(), 0);
    Point2 lowFront = new Point2(frontMm(), 0);
    if (notch.isPresent()) {
      double halfMm = notch.get().openingMm() / 2;
      edges.add(new Straight(lowRear, new Point2(-halfMm, 0)));
      edges.add(notch.get().cut());
      edges.add(new Straight(new Point2(halfMm, 0), lowFront));
    } else {
      edges.add(new Straight(lowRear, lowFront));
    }
    Point2 highFront = new Point2(frontMm(), topMm);
    Point2 highRear = new Point2(rearMm(), topMm);
    edges.add(new Straight(lowFront, highFront));
    edges.add(new Straight(highFront, highRear));
    edges.add(new Straight(highRear, lowRear));
    double startMm = inward > 0 ? insideMm : -insideMm - rails.wallMm();
    return new Compound.Member(
        Place.at(new Point3(0, 0, startMm)),
        Prism.plate(Outline.solid(new Loop(edges)), rails.wallMm()));
  }

  /** A level plate inside the web. */
  private Compound.Member flange(
      double fromMm, double toMm, double upMm, double widthMm, double inward) {
    double wallMm = rails.wallMm();
    double middleMm = inward * (wallMm + widthMm / 2);
    Place place =
        Place.of(
            new Point3((fromMm + toMm) / 2, upMm, middleMm),
            new Vector3(1, 0, 0),
            new Vector3(0, 0, -1));
    return new Compound.Member(place, Prism.block(toMm - fromMm, widthMm, wallMm));
  }
}
