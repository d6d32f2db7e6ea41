package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import trammel.assembly.Assembly;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;

/**
 * Where a plate or tube meets a rail, as a tape reads it: along the rail's underside from the axle
 * mark, and square up from the underside. The edges are those of the part where it touches.
 *
 * @param part id of the placed part
 * @param on what it is welded to: the rail, or a plate that closes it
 * @param face which side of the rail
 * @param rearMm its rear edge, ahead of the axle mark (mm), minus behind
 * @param frontMm its front edge (mm)
 * @param lowerMm its lower edge, up from the underside (mm)
 * @param upperMm its upper edge (mm)
 */
public record RailFoot(
    String part,
    String on,
    Face face,
    double rearMm,
    double frontMm,
    double lowerMm,
    double upperMm) {
  /** A weld's points are looked at this near to its path (mm). */
  private static final double CHORD_MM = 0.2;

  /** What reaches over more of the rail's width than this lies on its underside or its top. */
  private static final double ACROSS_SHARE = 0.6;

  /** What is welded to the underside and this far up a face (of the rail's depth) holds on both. */
  private static final double UP_A_FACE_SHARE = 0.2;

  /** Corners as near as this to the one that is nearest to the rail touch it too (mm). */
  private static final double TOUCHING_MM = 4;

  /** Whether it is a plate that closes the rail, or closes it again round a notch. */
  public boolean closesTheRail() {
    return closesTheRail(part);
  }

  /** A side of a rail. */
  public enum Face {
    /** The face away from the vehicle's middle. */
    OUTER("outer face"),
    /** The face towards it. */
    INNER("inner face"),
    /** Below. */
    UNDERSIDE("underside"),
    /** Below, and up the face towards the vehicle's middle. */
    UNDERSIDE_AND_INNER("underside, inner face"),
    /** Above. */
    TOP("top");

    private final String words;

    Face(String words) {
      this.words = words;
    }

    /** How it is called. */
    public String words() {
      return words;
    }
  }

  /**
   * Every plate and tube that is welded to a rail or to the plates that close it.
   *
   * @param assembly the finished vehicle
   * @param rails its rails
   * @param left true for the left rail
   * @return from front to rear
   */
  public static List<RailFoot> of(Assembly assembly, Rails rails, boolean left) {
    Set<String> closed = new TreeSet<>(Set.of(VehicleParts.rail(left)));
    for (PlacedSeam seam : assembly.seams()) {
      if (seam.run().onto().contains(VehicleParts.rail(left))) {
        seam.run().parts().stream().filter(RailFoot::closesTheRail).forEach(closed::add);
      }
    }
    Datum datum = Datum.rail(assembly, left);
    Map<String, Touch> touches = new LinkedHashMap<>();
    for (PlacedSeam seam : assembly.seams()) {
      for (String part : seam.run().parts()) {
        if (isPlateOrTube(assembly, part)) {
          // A plate that closes the rail is placed by the rail, not by its neighbour.
          seam.run().onto().stream()
              .filter(closed::contains)
              .filter(onto -> !closed.contains(part) || onto.equals(VehicleParts.rail(left)))
              .findFirst()
              .ifPresent(
                  onto ->
                      touches
                          .computeIfAbsent(part, id -> new Touch(assembly, id, onto, rails, datum))
                          .add(seam));
        }
      }
    }
    return touches.values().stream()
        .map(Touch::foot)
        .sorted(Comparator.comparingDouble(RailFoot::frontMm).reversed())
        .toList();
  }

  /** Whether it is a plate that closes an open rail, not one of its notch. */
  public boolean isBoxing() {
    return isBoxing(part);
  }

  private static boolean isBoxing(String part) {
    return part.contains("boxing");
  }

  static boolean closesTheRail(String part) {
    return isBoxing(part) || part.startsWith(VehicleParts.NOTCH_SIDE_PLATE);
  }

  private static boolean isPlateOrTube(Assembly assembly, String id) {
    PlacedPart part = assembly.part(id).orElseThrow();
    return part.kind() == PartKind.PLATE || part.kind() == PartKind.TUBE;
  }

  /** One part and its welds on a rail, in the rail's own directions: along, out from it, up. */
  private static final class Touch {
    private final String part;
    private final String on;
    private final Rails rails;
    private final Datum datum;
    private final List<Point3> corners;
    private final List<Point3> welds = new ArrayList<>();

    Touch(Assembly assembly, String part, String on, Rails rails, Datum datum) {
      this.part = part;
      this.on = on;
      this.rails = rails;
      this.datum = datum;
      PlacedPart placed = assembly.part(part).orElseThrow();
      corners = own(placed.solid().mesh().placed(placed.place()).corners());
    }

    void add(PlacedSeam seam) {
      welds.addAll(own(seam.run().path().points(CHORD_MM)));
    }

    /** Along the rail, out from its inner face, up from its underside. */
    private List<Point3> own(List<Point3> points) {
      return points.stream()
          .map(datum::read)
          .map(read -> new Point3(read.x(), read.z() + rails.flangeMm(), read.y()))
          .toList();
    }

    /** Against a side of the rail by the part's own corners, else by its welds. */
    RailFoot foot() {
      Face face = face();
      List<Point3> touching = welds;
      if (face == Face.OUTER || face == Face.INNER) {
        double nearestMm = corners.stream().mapToDouble(c -> offMm(c, face)).min().orElseThrow();
        touching = corners.stream().filter(c -> offMm(c, face) < nearestMm + TOUCHING_MM).toList();
      }
      double lowerMm = touching.stream().mapToDouble(Point3::zMm).min().orElseThrow();
      double upperMm = touching.stream().mapToDouble(Point3::zMm).max().orElseThrow();
      return new RailFoot(
          part,
          on,
          face,
          touching.stream().mapToDouble(Point3::xMm).min().orElseThrow(),
          touching.stream().mapToDouble(Point3::xMm).max().orElseThrow(),
          Math.max(0, lowerMm),
          Math.min(rails.depthMm(), upperMm));
    }

    private Face face() {
      double leastMm = welds.stream().mapToDouble(Point3::yMm).min().orElseThrow();
      double mostMm = welds.stream().mapToDouble(Point3::yMm).max().orElseThrow();
      if (mostMm - leastMm > ACROSS_SHARE * rails.flangeMm()) {
        double upMm = welds.stream().mapToDouble(Point3::zMm).average().orElseThrow();
        if (upMm > rails.depthMm() / 2) {
          return Face.TOP;
        }
        return welds.stream().anyMatch(this::isUpTheInnerFace)
            ? Face.UNDERSIDE_AND_INNER
            : Face.UNDERSIDE;
      }
      return (leastMm + mostMm) / 2 > rails.flangeMm() / 2 ? Face.OUTER : Face.INNER;
    }

    private boolean isUpTheInnerFace(Point3 weld) {
      return weld.zMm() > UP_A_FACE_SHARE * rails.depthMm() && weld.yMm() < rails.flangeMm() / 2;
    }

    /** How far out from a side of the rail a corner is (mm). */
    private double offMm(Point3 corner, Face face) {
      return face == Face.OUTER ? corner.yMm() - rails.flangeMm() : -corner.yMm();
    }
  }
}
