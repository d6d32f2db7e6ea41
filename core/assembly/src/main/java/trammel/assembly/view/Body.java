package trammel.assembly.view;

import java.util.Objects;
import trammel.assembly.Mesh;

/**
 * Something to be looked at.
 *
 * @param id its name
 * @param mesh its closed surface, where it stands
 * @param hides true if nothing can be seen through it
 */
public record Body(String id, Mesh mesh, boolean hides) {
  public Body {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(mesh, "mesh");
  }
}
