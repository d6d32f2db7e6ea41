package trammel.planning.extension;

import java.util.List;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.Field;

/**
 * What every extension says of itself. Implementations hold no state: one object serves every job.
 */
public interface Extension {

  /** Unique name in lower case with hyphens, written in job files; never reused for another. */
  String id();

  /** What it is, in a few words. */
  String title();

  /** What it is good for, in a sentence or two. */
  String summary();

  /**
   * The options that a job may set. Every option is optional or has a default.
   *
   * @param catalog gives the keys that an option may choose from
   */
  List<Field<?>> options(Catalog catalog);
}
