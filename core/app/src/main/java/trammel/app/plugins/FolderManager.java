package trammel.app.plugins;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.pf4j.DependencyResolver;
import org.pf4j.JarPluginLoader;
import org.pf4j.JarPluginManager;
import org.pf4j.ManifestPluginDescriptorFinder;
import org.pf4j.PluginDescriptor;
import org.pf4j.PluginDescriptorFinder;
import org.pf4j.PluginLoader;
import org.pf4j.PluginRepository;
import org.pf4j.PluginStatusProvider;
import org.pf4j.PluginWrapper;

/**
 * PF4J's manager of jars, with the plainest of each of its parts: a plugin is a jar with a
 * manifest, it is loaded by its path, and no list switches single ones off.
 */
final class FolderManager extends JarPluginManager {
  FolderManager(Path folder) {
    super(folder);
  }

  @Override
  protected PluginLoader createPluginLoader() {
    return new JarPluginLoader(this);
  }

  @Override
  protected PluginDescriptorFinder createPluginDescriptorFinder() {
    return new ManifestPluginDescriptorFinder();
  }

  @Override
  protected PluginRepository createPluginRepository() {
    return new ByPathOnly();
  }

  @Override
  protected PluginStatusProvider createPluginStatusProvider() {
    return new AllOn();
  }

  /** PF4J's own answer, which collects the same plugins by streams, only where one is not right. */
  @Override
  protected DependencyResolver.Result resolveDependencies() {
    List<PluginDescriptor> descriptors = new ArrayList<>(plugins.size());
    for (PluginWrapper plugin : plugins.values()) {
      descriptors.add(plugin.getDescriptor());
    }
    DependencyResolver.Result result = dependencyResolver.resolve(descriptors);
    return result.isOK() ? result : super.resolveDependencies();
  }

  /** Finds nothing by itself: {@link PluginFolder} names every jar. */
  private static final class ByPathOnly implements PluginRepository {
    @Override
    public List<Path> getPluginPaths() {
      return List.of();
    }

    @Override
    public boolean deletePluginPath(Path path) {
      return false;
    }
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
