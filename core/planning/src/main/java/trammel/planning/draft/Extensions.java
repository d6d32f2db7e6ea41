package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;

/**
 * The linkages and spring mounts that are installed.
 *
 * @param linkages the linkages, by id
 * @param springs the spring mounts, by id
 */
public record Extensions(List<AxleLinkage> linkages, List<SpringMount> springs) {
  public Extensions {
    linkages = List.copyOf(linkages);
    springs = List.copyOf(springs);
  }

  /**
   * The linkage of an id.
   *
   * @param where where the job asks for it
   * @throws BadInputException if it is not installed
   */
  AxleLinkage linkage(String id, Location where) {
    List<String> ids = new ArrayList<>();
    for (AxleLinkage linkage : linkages) {
      if (linkage.id().equals(id)) {
        return linkage;
      }
      ids.add(linkage.id());
    }
    throw notInstalled(id, "linkage", ids, where);
  }

  /**
   * The spring mount of an id.
   *
   * @param where where the job asks for it
   * @throws BadInputException if it is not installed
   */
  SpringMount spring(String id, Location where) {
    List<String> ids = new ArrayList<>();
    for (SpringMount spring : springs) {
      if (spring.id().equals(id)) {
        return spring;
      }
      ids.add(spring.id());
    }
    throw notInstalled(id, "spring", ids, where);
  }

  private static BadInputException notInstalled(
      String id, String kind, List<String> ids, Location where) {
    String installed = ids.isEmpty() ? "none is installed" : String.join(", ", ids);
    return new BadInputException(
        List.of(
            Problem.error(
                where,
                id,
                "an installed " + kind + ": " + installed,
                "Choose one of these, or put its plugin's jar into the plugins folder.")));
  }
}
