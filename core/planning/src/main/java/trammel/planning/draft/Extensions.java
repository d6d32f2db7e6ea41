package trammel.planning.draft;

import java.util.List;
import java.util.function.Function;
import trammel.planning.extension.Addition;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;

/**
 * The linkages, spring mounts and additions that are installed.
 *
 * @param linkages the linkages, by id
 * @param springs the spring mounts, by id
 * @param additions what can be added to both, by id
 */
public record Extensions(
    List<AxleLinkage> linkages, List<SpringMount> springs, List<Addition> additions) {
  public Extensions {
    linkages = List.copyOf(linkages);
    springs = List.copyOf(springs);
    additions = List.copyOf(additions);
  }

  /** Linkages and spring mounts to which nothing can be added. */
  public Extensions(List<AxleLinkage> linkages, List<SpringMount> springs) {
    this(linkages, springs, List.of());
  }

  /**
   * The linkage of an id.
   *
   * @param where where the job asks for it
   * @throws BadInputException if it is not installed
   */
  AxleLinkage linkage(String id, Location where) {
    return installed(linkages, AxleLinkage::id, "linkage", id, where);
  }

  /**
   * The spring mount of an id.
   *
   * @param where where the job asks for it
   * @throws BadInputException if it is not installed
   */
  SpringMount spring(String id, Location where) {
    return installed(springs, SpringMount::id, "spring", id, where);
  }

  /**
   * The addition of an id.
   *
   * @param where where the job asks for it
   * @throws BadInputException if it is not installed
   */
  Addition addition(String id, Location where) {
    return installed(additions, Addition::id, "addition", id, where);
  }

  private static <T> T installed(
      List<T> all, Function<T, String> name, String kind, String id, Location where) {
    for (T one : all) {
      if (name.apply(one).equals(id)) {
        return one;
      }
    }
    throw notInstalled(id, kind, all.stream().map(name).toList(), where);
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
