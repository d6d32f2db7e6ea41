package trammel.planning.extension;

import java.util.Objects;
import trammel.engine.layout.Layout;

/**
 * A finished layout for which the work is to be planned.
 *
 * @param layout the layout, overrides included
 * @param site the plugin's own options, catalog and units; its chassis is the layout's
 */
public record Commission(Layout layout, Site site) {
  public Commission {
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(site, "site");
  }
}
