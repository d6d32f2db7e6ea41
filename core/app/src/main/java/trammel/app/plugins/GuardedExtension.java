package trammel.app.plugins;

import java.util.List;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Extension;
import trammel.reading.fields.Field;

/**
 * An extension of a plugin, known by what its jar lists and run only when it is asked.
 *
 * @param <T> the kind of extension
 */
abstract class GuardedExtension<T extends Extension> implements Extension {
  /** The plugin's code, every call of it guarded. */
  final PluginCode<T> code;

  GuardedExtension(PluginCode<T> code) {
    this.code = code;
  }

  @Override
  public final String id() {
    return code.id();
  }

  @Override
  public final String title() {
    return code.askText("its title", Extension::title);
  }

  @Override
  public final String summary() {
    return code.askText("its summary", Extension::summary);
  }

  @Override
  public final List<Field<?>> options(Catalog catalog) {
    return code.askList("its options", extension -> extension.options(catalog));
  }
}
