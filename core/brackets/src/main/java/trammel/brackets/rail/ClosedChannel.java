package trammel.brackets.rail;

import java.util.List;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;
import trammel.trade.plates.BoxingPlate;

/**
 * A plate between the flanges of a channel rail, flush with their edges.
 *
 * @param rails the rails
 * @param left true for the left rail
 * @param rearMm its rear end, forward of the axle (mm)
 * @param frontMm its front end (mm)
 * @param thicknessMm thickness of the plate (mm)
 */
public record ClosedChannel(
    Rails rails, boolean left, double rearMm, double frontMm, double thicknessMm) {

  private Point3 corner(double forwardMm) {
    double sideMm = rails.innerFaceMm(forwardMm);
    return new Point3(forwardMm, left ? sideMm : -sideMm, rails.topMm(forwardMm) - rails.wallMm());
  }

  /** Length along the sloping, tapering rail (mm). */
  public double runMm() {
    return corner(rearMm).distanceMm(corner(frontMm));
  }

  private double insideMm() {
    return rails.depthMm() - 2 * rails.wallMm();
  }

  /** The plate, its upper edge the outline's top: x along the rail, y up to the upper flange. */
  public BoxingPlate shape(String name, double gapMm) {
    return BoxingPlate.even(name, thicknessMm, runMm(), insideMm(), gapMm);
  }

  /** The plane of the flanges' edges, from the upper flange's underside at the rear end. */
  private Place face() {
    Vector3 along = corner(rearMm).to(corner(frontMm)).normalized();
    Vector3 up = new Vector3(0, 0, 1);
    return Place.of(corner(rearMm), along, up.minus(along.scaled(up.dot(along))));
  }

  /** Where it stands: inside the channel. */
  public Held held() {
    Vector3 outward = new Vector3(0, left ? 1 : -1, 0);
    Place face = face();
    return new Held(
        Assembly.FRAME, Place.lying(face.origin(), face.x(), face.y(), outward, thicknessMm));
  }

  /** The welds along its upper and its lower edge. */
  public List<SeamRun> runs(String id, double gapMm) {
    double runMm = runMm();
    double lowMm = gapMm - insideMm();
    String rail = VehicleParts.rail(left);
    return List.of(
        new SeamRun(id, rail, FlatPath.line(face(), 0, -gapMm, runMm, -gapMm)),
        new SeamRun(id, rail, FlatPath.line(face(), 0, lowMm, runMm, lowMm)));
  }
}
