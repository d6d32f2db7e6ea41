package trammel.assembly.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trammel.assembly.Mesh;
import trammel.engine.geometry.Point3;

/**
 * The edges of one body that a picture shows: where its surface turns sharply, and where it turns
 * away from the eye.
 */
final class Edges {
  /** Facets of one rounding meet at less than this; real edges of plates and tubes at more. */
  private static final double SHARP_COSINE = Math.cos(Math.toRadians(35));

  /** Bits of a number of a corner or a facet within a meeting. */
  private static final int BITS = 21;

  private static final long MASK = (1L << BITS) - 1;

  private final List<Point3> corners;
  private final List<Optional<Facet>> facets;

  /** Each side of each facet: its lower corner, its higher one, the facet; in that order. */
  private final long[] sides;

  /**
   * An edge to be drawn.
   *
   * @param behind true if the body itself hides it, both its facets being turned away
   */
  record Edge(Point3 from, Point3 to, boolean behind) {}

  /**
   * @throws IllegalArgumentException if the mesh has two million corners or facets
   */
  Edges(Mesh mesh, Eye eye) {
    if (Math.max(mesh.corners().size(), mesh.faces().size()) > MASK) {
      throw new IllegalArgumentException(
          "A mesh of " + mesh.faces().size() + " facets is too large to draw: make it coarser.");
    }
    corners = mesh.corners().stream().map(eye::see).toList();
    facets = new ArrayList<>(mesh.faces().size());
    sides = new long[3 * mesh.faces().size()];
    for (Mesh.Face face : mesh.faces()) {
      int number = facets.size();
      facets.add(Facet.of(corners.get(face.a()), corners.get(face.b()), corners.get(face.c())));
      sides[3 * number] = side(face.a(), face.b(), number);
      sides[3 * number + 1] = side(face.b(), face.c(), number);
      sides[3 * number + 2] = side(face.c(), face.a(), number);
    }
    Arrays.sort(sides);
  }

  private static long side(int one, int other, int facet) {
    return ((long) Math.min(one, other) << 2 * BITS)
        | ((long) Math.max(one, other) << BITS)
        | facet;
  }

  /** The facets that face the eye. */
  List<Facet> facing() {
    return facets.stream().flatMap(Optional::stream).filter(Facet::facesTheEye).toList();
  }

  List<Edge> drawn() {
    List<Edge> drawn = new ArrayList<>();
    int first = 0;
    while (first < sides.length) {
      int next = first + 1;
      while (next < sides.length && sides[next] >> BITS == sides[first] >> BITS) {
        next++;
      }
      List<Facet> meeting = new ArrayList<>(2);
      for (int i = first; i < next; i++) {
        facets.get((int) (sides[i] & MASK)).ifPresent(meeting::add);
      }
      if (isDrawn(meeting)) {
        drawn.add(
            new Edge(
                corners.get((int) (sides[first] >> 2 * BITS)),
                corners.get((int) (sides[first] >> BITS & MASK)),
                meeting.stream().noneMatch(Facet::facesTheEye)));
      }
      first = next;
    }
    return drawn;
  }

  private static boolean isDrawn(List<Facet> meeting) {
    if (meeting.size() != 2) {
      return !meeting.isEmpty();
    }
    Facet one = meeting.get(0);
    Facet other = meeting.get(1);
    return one.facesTheEye() != other.facesTheEye()
        || one.normal().dot(other.normal()) < SHARP_COSINE;
  }
}
