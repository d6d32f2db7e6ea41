package trammel.app.plugins;

import java.nio.file.Path;
import org.pf4j.JarPluginManager;
import org.pf4j.PluginStatusProvider;

/** PF4J's manager of jars. Whatever lies in the folder counts: no list switches single jars off. */
final class FolderManager extends JarPluginManager {
  FolderManager(Path folder) {
    super(folder);
  }

  @Override
  protected PluginStatusProvider createPluginStatusProvider() {
    return new AllOn();
  }

  private static final class AllOn implements PluginStatusProvider {
    @Override
    public boolean isPluginDisabled(String id) {
      return false;
    }

    @Override
    public void disablePlugin(String id) {
      throw new UnsupportedOperationException("Take the jar of " + id + " out of the folder.");
    }

    @Override
    public void enablePlugin(String id) {
      // Every plugin of the folder is on.
    }
  }
}
