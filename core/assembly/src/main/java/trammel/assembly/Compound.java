package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;

/**
 * Several solids that are one part: a rail of web and flanges, a joint of barrel and shank.
 *
 * @param members the solids with their places in the part's own axes; they touch and do not overlap
 */
public record Compound(List<Member> members) implements Solid {
  /**
   * One of them.
   *
   * @param place where it stands in the axes of the whole
   * @param solid its form
   */
  public record Member(Place place, Solid solid) {}

  public Compound {
    members = List.copyOf(members);
    if (members.isEmpty()) {
      throw new IllegalArgumentException("A compound has no solids; give one at least.");
    }
  }

  @Override
  public double volumeMm3() {
    return members.stream().mapToDouble(member -> member.solid.volumeMm3()).sum();
  }

  @Override
  public Point3 centre() {
    double volume = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    for (Member member : members) {
      double mm3 = member.solid.volumeMm3();
      Point3 centre = member.place.apply(member.solid.centre());
      volume += mm3;
      x += mm3 * centre.xMm();
      y += mm3 * centre.yMm();
      z += mm3 * centre.zMm();
    }
    return new Point3(x / volume, y / volume, z / volume);
  }

  @Override
  public Mesh mesh() {
    List<Mesh> meshes = new ArrayList<>(members.size());
    for (Member member : members) {
      meshes.add(member.solid.mesh().placed(member.place));
    }
    return Mesh.together(meshes);
  }
}
