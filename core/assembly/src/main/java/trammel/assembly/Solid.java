package trammel.assembly;

import java.util.List;
import trammel.engine.geometry.Point3;

/**
 * The form of a part in its own axes. Volume and centre are exact, arcs included; the mesh is for
 * pictures and for distances, and encloses a volume within {@link #MESH_SHARE} of the exact one.
 */
public sealed interface Solid permits Prism, CopedTube, Turned, Compound {
  /** A mesh's volume is off by this share at most: half a percent. */
  double MESH_SHARE = 0.005;

  /** Volume, mm³. */
  double volumeMm3();

  /** Middle of the volume, mm. */
  Point3 centre();

  /** Its surface. */
  Mesh mesh();

  /** The simple solids that it is made of, each with its place in the axes of this one. */
  default List<Compound.Member> members() {
    return List.of(new Compound.Member(Place.RIDE, this));
  }
}
