package trammel.assembly.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Mesh;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * The edges of one body that a picture shows: where its surface turns sharply, and where it turns
 * away from the eye. Corners of its mesh that are one point are taken as one.
 */
final class Edges {
  /** Facets of one rounding meet at less than this; real edges of plates and tubes at more. */
  private static final double SHARP_COSINE = Math.cos(Math.toRadians(35));

  /** Corners this near to each other are one (mm). */
  private static final double ONE_POINT_MM = 1e-3;

  private static final double NO_AREA_MM2 = 1e-9;

  private final List<Point3> corners = new ArrayList<>();
  private final List<Facet> facets = new ArrayList<>();
  private final Map<Long, List<Facet>> meetings = new LinkedHashMap<>();

  /**
   * A triangle as the eye sees it.
   *
   * @param twiceAreaMm2 twice its area in the picture, above 0 where it faces the eye
   */
  record Facet(Point3 a, Point3 b, Point3 c, Vector3 normal, double twiceAreaMm2) {
    boolean facesTheEye() {
      return twiceAreaMm2 > NO_AREA_MM2;
    }
  }

  /**
   * An edge to be drawn.
   *
   * @param behind true if the body itself hides it, both its facets being turned away
   */
  record Edge(Point3 from, Point3 to, boolean behind) {}

  Edges(Mesh mesh, Eye eye) {
    int[] number = new int[mesh.corners().size()];
    Map<List<Long>, Integer> known = new HashMap<>();
    for (int i = 0; i < number.length; i++) {
      Point3 seen = eye.see(mesh.corners().get(i));
      List<Long> cell = List.of(cell(seen.xMm()), cell(seen.yMm()), cell(seen.zMm()));
      number[i] = known.computeIfAbsent(cell, unknown -> corners.size());
      if (number[i] == corners.size()) {
        corners.add(seen);
      }
    }
    for (Mesh.Face face : mesh.faces()) {
      add(number[face.a()], number[face.b()], number[face.c()]);
    }
  }

  private static long cell(double mm) {
    return Math.round(mm / ONE_POINT_MM);
  }

  private void add(int a, int b, int c) {
    Point3 pa = corners.get(a);
    Point3 pb = corners.get(b);
    Point3 pc = corners.get(c);
    Vector3 normal = pa.to(pb).cross(pa.to(pc));
    if (normal.norm() < NO_AREA_MM2) {
      return;
    }
    Facet facet = new Facet(pa, pb, pc, normal.normalized(), normal.z());
    facets.add(facet);
    meet(a, b, facet);
    meet(b, c, facet);
    meet(c, a, facet);
  }

  private void meet(int one, int other, Facet facet) {
    long key = ((long) Math.min(one, other) << 32) | Math.max(one, other);
    meetings.computeIfAbsent(key, unknown -> new ArrayList<>(2)).add(facet);
  }

  List<Facet> facets() {
    return facets;
  }

  List<Edge> drawn() {
    List<Edge> drawn = new ArrayList<>();
    meetings.forEach(
        (key, meeting) -> {
          if (isDrawn(meeting)) {
            boolean behind = meeting.stream().noneMatch(Facet::facesTheEye);
            drawn.add(
                new Edge(corners.get((int) (key >> 32)), corners.get(key.intValue()), behind));
          }
        });
    return drawn;
  }

  private static boolean isDrawn(List<Facet> meeting) {
    if (meeting.size() != 2) {
      return true;
    }
    Facet one = meeting.get(0);
    Facet other = meeting.get(1);
    return one.facesTheEye() != other.facesTheEye()
        || one.normal().dot(other.normal()) < SHARP_COSINE;
  }
}
