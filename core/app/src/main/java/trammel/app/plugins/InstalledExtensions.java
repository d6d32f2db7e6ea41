package trammel.app.plugins;

import java.util.List;
import trammel.planning.draft.Extensions;

/**
 * What the plugins folder yields.
 *
 * @param extensions the linkages, spring mounts and additions that the jars list, by id; they run
 *     when they are asked
 * @param troubles a sentence for each jar or extension that was left out
 */
public record InstalledExtensions(Extensions extensions, List<String> troubles) {
  public InstalledExtensions {
    troubles = List.copyOf(troubles);
  }
}
