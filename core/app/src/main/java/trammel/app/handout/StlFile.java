package trammel.app.handout;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import trammel.assembly.Mesh;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * A closed surface as a binary STL file, in millimetres, which every program for printers in three
 * dimensions takes: 80 bytes of heading, the number of triangles, and for each its normal, its
 * corners anticlockwise from outside, and two bytes of nothing (3D Systems, StereoLithography
 * Interface Specification, 1989).
 */
final class StlFile {
  private static final int HEADING_BYTES = 80;
  private static final int TRIANGLE_BYTES = 12 * 4 + 2;

  private StlFile() {}

  /**
   * The file.
   *
   * @param name what it is, for the heading, which must not begin with "solid"
   * @param mesh its surface (mm)
   */
  static byte[] of(String name, Mesh mesh) {
    ByteBuffer bytes =
        ByteBuffer.allocate(HEADING_BYTES + 4 + TRIANGLE_BYTES * mesh.faces().size())
            .order(ByteOrder.LITTLE_ENDIAN);
    byte[] heading = ("Trammel, mm: " + name).getBytes(StandardCharsets.US_ASCII);
    bytes.put(heading, 0, Math.min(heading.length, HEADING_BYTES));
    bytes.position(HEADING_BYTES);
    bytes.putInt(mesh.faces().size());
    for (Mesh.Face face : mesh.faces()) {
      Point3 a = mesh.corners().get(face.a());
      Point3 b = mesh.corners().get(face.b());
      Point3 c = mesh.corners().get(face.c());
      Vector3 across = a.to(b).cross(a.to(c));
      double twiceAreaMm2 = across.norm();
      put(bytes, twiceAreaMm2 > 0 ? across.scaled(1 / twiceAreaMm2) : across);
      put(bytes, a);
      put(bytes, b);
      put(bytes, c);
      bytes.putShort((short) 0);
    }
    return bytes.array();
  }

  private static void put(ByteBuffer bytes, Vector3 vector) {
    bytes.putFloat((float) vector.x()).putFloat((float) vector.y()).putFloat((float) vector.z());
  }

  private static void put(ByteBuffer bytes, Point3 point) {
    bytes.putFloat((float) point.xMm());
    bytes.putFloat((float) point.yMm());
    bytes.putFloat((float) point.zMm());
  }
}
