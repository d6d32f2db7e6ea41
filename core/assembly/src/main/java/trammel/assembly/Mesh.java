package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;

/**
 * A closed surface of triangles, each anticlockwise as seen from outside.
 *
 * @param corners the points that triangles share (mm)
 * @param faces the triangles by the numbers of their corners
 */
public record Mesh(List<Point3> corners, List<Face> faces) {
  /** One triangle: the numbers of its corners, anticlockwise from outside. */
  public record Face(int a, int b, int c) {}

  public Mesh {
    corners = List.copyOf(corners);
    faces = List.copyOf(faces);
    for (Face face : faces) {
      if (Math.min(face.a, Math.min(face.b, face.c)) < 0
          || Math.max(face.a, Math.max(face.b, face.c)) >= corners.size()) {
        throw new IllegalArgumentException(
            "The triangle "
                + face
                + " names a corner that is not there; there are "
                + corners.size()
                + ". Number them from 0.");
      }
    }
  }

  /** The same surface put elsewhere. */
  public Mesh placed(Place place) {
    return new Mesh(corners.stream().map(place::apply).toList(), faces);
  }

  /** Several surfaces as one. */
  static Mesh together(List<Mesh> meshes) {
    List<Point3> corners = new ArrayList<>();
    List<Face> faces = new ArrayList<>();
    for (Mesh mesh : meshes) {
      int first = corners.size();
      corners.addAll(mesh.corners);
      for (Face face : mesh.faces) {
        faces.add(new Face(face.a + first, face.b + first, face.c + first));
      }
    }
    return new Mesh(corners, faces);
  }

  /** Enclosed volume, mm³: signed tetrahedra from the origin to each triangle. */
  public double volumeMm3() {
    double six = 0;
    for (Face face : faces) {
      Point3 a = corners.get(face.a);
      Point3 b = corners.get(face.b);
      Point3 c = corners.get(face.c);
      six +=
          a.xMm() * (b.yMm() * c.zMm() - b.zMm() * c.yMm())
              + a.yMm() * (b.zMm() * c.xMm() - b.xMm() * c.zMm())
              + a.zMm() * (b.xMm() * c.yMm() - b.yMm() * c.xMm());
    }
    return six / 6;
  }
}
