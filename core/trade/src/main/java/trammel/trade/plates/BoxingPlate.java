package trammel.trade.plates;

import java.util.List;
import java.util.Optional;
import trammel.trade.given.Dimension;

/**
 * A plate that closes an open rail of even depth, less a weld gap at each flange; where the rail is
 * notched, it is cut out with the rail. Axes: x along the rail from the plate's rear end, y up from
 * the inside of the upper flange.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param runMm length along the rail
 * @param insideDepthMm depth between the flanges
 * @param weldGapMm gap to each flange
 * @param notch the arc that is cut out of the rail, over the plate's lower edge from its rear to
 *     its front end; empty where there is none. One that the plate does not reach changes nothing.
 */
public record BoxingPlate(
    String name,
    double thicknessMm,
    double runMm,
    double insideDepthMm,
    double weldGapMm,
    Optional<Arc> notch)
    implements PlateShape {

  public BoxingPlate {
    Dimension.text("boxing plate name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("length of " + name, runMm);
    Dimension.notNegativeMm("weld gap of " + name, weldGapMm);
    Dimension.positiveMm("height of " + name, insideDepthMm - 2 * weldGapMm);
  }

  /** The height of its lower edge (mm, under the inside of the upper flange: negative). */
  public double lowerMm() {
    return weldGapMm - insideDepthMm;
  }

  /** The height of its upper edge (mm, negative). */
  public double upperMm() {
    return -weldGapMm;
  }

  /** What is left of its lower edge beside the notch, from the rear to the front. */
  public List<Straight> lowerEdges() {
    return outline().outer().edges().stream()
        .filter(Straight.class::isInstance)
        .map(Straight.class::cast)
        .filter(edge -> isLower(edge.from()) && isLower(edge.to()))
        .toList();
  }

  private boolean isLower(Point2 point) {
    return Math.abs(point.yMm() - lowerMm()) < Loop.JOIN_MM;
  }

  @Override
  public Outline outline() {
    double rearMm = 0;
    double frontMm = 0;
    double reachMm = notch.map(this::reachMm).orElse(0.0);
    if (reachMm > 0) {
      double middleMm = notch.get().centre().xMm();
      rearMm = Math.max(0, middleMm - reachMm);
      frontMm = Math.min(runMm, middleMm + reachMm);
    }
    Loop loop =
        frontMm - rearMm < Loop.JOIN_MM
            ? Path.from(0, lowerMm())
                .lineTo(runMm, lowerMm())
                .lineTo(runMm, upperMm())
                .lineTo(0, upperMm())
                .close()
            : notched(notch.get(), rearMm, frontMm);
    return Outline.solid(loop);
  }

  /** How far the cut reaches to each side of its middle along the plate's lower edge (mm). */
  private double reachMm(Arc cut) {
    double upMm = lowerMm() - cut.centre().yMm();
    double square = cut.radiusMm() * cut.radiusMm() - upMm * upMm;
    return square > 0 ? Math.sqrt(square) : 0;
  }

  private Loop notched(Arc cut, double rearMm, double frontMm) {
    Point2 start = rearMm > 0 ? new Point2(0, lowerMm()) : onCut(cut, 0);
    Path path =
        Path.from(start).lineTo(onCut(cut, rearMm)).arcTo(onCut(cut, frontMm), cut.centre(), false);
    if (frontMm < runMm) {
      path.lineTo(runMm, lowerMm());
    }
    return path.lineTo(runMm, upperMm()).lineTo(0, upperMm()).close();
  }

  private static Point2 onCut(Arc cut, double alongMm) {
    double fromMiddleMm = alongMm - cut.centre().xMm();
    double upMm =
        Math.sqrt(Math.max(0, cut.radiusMm() * cut.radiusMm() - fromMiddleMm * fromMiddleMm));
    return new Point2(alongMm, cut.centre().yMm() + upMm);
  }
}
