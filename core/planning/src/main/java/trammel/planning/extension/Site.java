package trammel.planning.extension;

import java.util.Objects;
import trammel.engine.layout.Chassis;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/**
 * What a plugin works from: the vehicle at ride, its own options as the job sets them, and the
 * catalog.
 *
 * @param chassis the vehicle at ride height
 * @param options this plugin's options
 * @param catalog what can be bought and done
 * @param units the job's units, for messages
 */
public record Site(Chassis chassis, FieldValues options, Catalog catalog, UnitSystem units) {
  public Site {
    Objects.requireNonNull(chassis, "chassis");
    Objects.requireNonNull(options, "options");
    Objects.requireNonNull(catalog, "catalog");
    Objects.requireNonNull(units, "units");
  }

  /** This site with the chassis changed. */
  public Site at(Chassis changed) {
    return new Site(changed, options, catalog, units);
  }
}
