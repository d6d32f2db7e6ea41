package trammel.app.plugins;

import java.util.List;
import trammel.planning.draft.Extensions;

/**
 * What the plugins folder yields.
 *
 * @param extensions the linkages and spring mounts that work, by id
 * @param troubles a sentence for each jar or extension that does not
 */
public record InstalledExtensions(Extensions extensions, List<String> troubles) {
  public InstalledExtensions {
    troubles = List.copyOf(troubles);
  }
}
