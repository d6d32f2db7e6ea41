package trammel.brackets.rail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.trade.plates.Arc;
import trammel.trade.plates.BoxingPlate;
import trammel.trade.plates.Placement;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;

/**
 * A plate between the flanges of a channel rail, flush with their edges.
 *
 * @param rails the rails
 * @param left true for the left rail
 * @param rearMm its rear end, forward of the axle (mm)
 * @param frontMm its front end (mm)
 * @param thicknessMm thickness of the plate (mm)
 * @param notch the arc that is cut out of the rails over the axle: x along the rail from the middle
 *     of the notch, y up from the rail's lower edge
 */
record ClosedChannel(
    Rails rails,
    boolean left,
    double rearMm,
    double frontMm,
    double thicknessMm,
    Optional<Arc> notch) {

  private Point3 corner(double forwardMm) {
    double sideMm = rails.innerFaceMm(forwardMm);
    return new Point3(forwardMm, left ? sideMm : -sideMm, rails.topMm(forwardMm) - rails.wallMm());
  }

  /** Length along the sloping, tapering rail (mm). */
  double runMm() {
    return corner(rearMm).distanceMm(corner(frontMm));
  }

  private double insideMm() {
    return rails.depthMm() - 2 * rails.wallMm();
  }

  /** The plate, its upper edge the outline's top: x along the rail, y up to the upper flange. */
  BoxingPlate shape(String name, double gapMm) {
    return new BoxingPlate(
        name, thicknessMm, runMm(), insideMm(), gapMm, notch.map(cut -> cut.placed(shift())));
  }

  /** From the middle of the notch in the rail's inner face to the plate's axes. */
  private Placement shift() {
    Place face = face();
    double side = left ? 1 : -1;
    Point3 outer = new Point3(0, side * rails.outerFaceMm(0), rails.undersideMm(0));
    // Square across the rail, as it is cut.
    Point3 middle = face.own(outer.plus(face.z().scaled(side * rails.flangeMm())));
    return Placement.shift(middle.xMm(), middle.yMm());
  }

  /** The plane of the flanges' edges, from the upper flange's underside at the rear end. */
  private Place face() {
    Vector3 along = corner(rearMm).to(corner(frontMm)).normalized();
    Vector3 up = new Vector3(0, 0, 1);
    return Place.of(corner(rearMm), along, up.minus(along.scaled(up.dot(along))));
  }

  /** Where it stands: inside the channel. */
  Held held() {
    Vector3 outward = new Vector3(0, left ? 1 : -1, 0);
    Place face = face();
    return new Held(
        Assembly.FRAME, Place.lying(face.origin(), face.x(), face.y(), outward, thicknessMm));
  }

  /**
   * A weld along an edge of the plate.
   *
   * @param edge which one; both where they are alike
   * @param run where it runs
   */
  record EdgeWeld(Edge edge, SeamRun run) {}

  /** The edges of the plate that are welded to the rail. */
  enum Edge {
    WHOLE("flanges", "upper and lower edge"),
    UPPER("upper flange", "upper edge"),
    LOWER_BEHIND("lower flange behind the notch", "lower edge behind the notch"),
    LOWER_AHEAD("lower flange ahead of the notch", "lower edge ahead of the notch");

    private final String onto;
    private final String words;

    Edge(String onto, String words) {
      this.onto = onto;
      this.words = words;
    }

    /** What of the rail it is welded to. */
    String onto() {
      return onto;
    }

    /** The edge in words. */
    String words() {
      return words;
    }
  }

  /** The welds along its upper edge and along what a notch leaves of its lower one. */
  List<EdgeWeld> welds(String id, double gapMm) {
    BoxingPlate plate = shape(id, gapMm);
    Straight upper =
        new Straight(new Point2(0, plate.upperMm()), new Point2(plate.runMm(), plate.upperMm()));
    List<Straight> lower = plate.lowerEdges();
    boolean whole = lower.size() == 1 && Math.abs(lower.get(0).lengthMm() - plate.runMm()) < 0.01;
    List<EdgeWeld> welds = new ArrayList<>();
    welds.add(new EdgeWeld(whole ? Edge.WHOLE : Edge.UPPER, along(id, upper)));
    for (Straight edge : lower) {
      Edge beside = edge.from().xMm() < 0.01 ? Edge.LOWER_BEHIND : Edge.LOWER_AHEAD;
      welds.add(new EdgeWeld(whole ? Edge.WHOLE : beside, along(id, edge)));
    }
    return welds;
  }

  private SeamRun along(String id, Straight edge) {
    return new SeamRun(id, VehicleParts.rail(left), new FlatPath(face(), List.of(edge)));
  }
}
