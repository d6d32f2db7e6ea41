package trammel.app.plugins;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.pf4j.PluginManager;
import org.pf4j.PluginState;
import org.pf4j.PluginWrapper;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.Addition;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.ExtensionList;
import trammel.planning.extension.SpringMount;

/**
 * Finds the extensions in every jar of the plugins folder by what each jar lists, and runs none of
 * their code. A jar that is broken is reported by name and the rest go on: jars are loaded one by
 * one, by name, because a plugin manager left to itself only logs what fails.
 */
public final class PluginFolder {
  private static final String JAR = ".jar";

  private final Path folder;
  private final String version;
  private final List<AxleLinkage> linkages = new ArrayList<>();
  private final List<SpringMount> springs = new ArrayList<>();
  private final List<Addition> additions = new ArrayList<>();
  private final List<PluginCatalog> catalogs = new ArrayList<>();
  private final List<String> troubles = new ArrayList<>();

  /**
   * @param folder the plugins folder
   * @param version the version of Trammel that the plugins are held against
   */
  public PluginFolder(Path folder, String version) {
    this.folder = folder;
    this.version = version;
  }

  /** What the folder's jars list. */
  public InstalledExtensions load() {
    List<Path> jars = jars();
    FolderManager manager = new FolderManager(folder);
    if (Character.isDigit(version.charAt(0))) {
      manager.setSystemVersion(release(version));
    }
    for (Path jar : jars) {
      load(manager, jar);
    }
    linkages.sort((a, b) -> a.id().compareTo(b.id()));
    springs.sort((a, b) -> a.id().compareTo(b.id()));
    additions.sort((a, b) -> a.id().compareTo(b.id()));
    return new InstalledExtensions(
        new Extensions(linkages, springs, additions), catalogs, troubles);
  }

  private List<Path> jars() {
    List<Path> jars = new ArrayList<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
      for (Path file : found) {
        if (file.getFileName().toString().endsWith(JAR)) {
          jars.add(file);
        }
      }
    } catch (IOException unreadable) {
      troubles.add("the plugins folder " + folder + " cannot be read; no linkage is installed.");
    }
    Collections.sort(jars);
    return jars;
  }

  /** A development build counts as the release that it leads to. */
  private static String release(String version) {
    int suffix = version.indexOf('-');
    return suffix < 0 ? version : version.substring(0, suffix);
  }

  private void load(PluginManager manager, Path jar) {
    String name = jar.getFileName().toString();
    try {
      String id = manager.loadPlugin(jar);
      if (id == null) {
        troubles.add("plugin " + name + " was left out: it could not be loaded. Replace the jar.");
        return;
      }
      collect(manager, manager.getPlugin(id), jar);
    } catch (IllegalArgumentException unlisted) {
      troubles.add(
          "plugin "
              + name
              + " was left out: "
              + unlisted.getMessage()
              + ". Get the plugin that goes with this version.");
    } catch (Exception | LinkageError | StackOverflowError broken) {
      troubles.add(
          "plugin " + name + " was left out: " + PluginCode.reason(broken) + ". Replace the jar.");
    }
  }

  private void collect(PluginManager manager, PluginWrapper plugin, Path jar) throws IOException {
    String name = jar.getFileName().toString();
    if (plugin.getPluginState() == PluginState.DISABLED) {
      troubles.add(
          "plugin "
              + name
              + " was left out: it needs Trammel "
              + plugin.getDescriptor().getRequires()
              + " and this is "
              + version
              + ". Get the plugin that goes with this version.");
      return;
    }
    JarIndex index = JarIndex.read(jar);
    index.catalog().ifPresent(text -> catalogs.add(new PluginCatalog(name, text)));
    for (ExtensionList.Entry entry : index.list().entries()) {
      if (isOwn(entry.id(), name)) {
        Callable<Object> making = () -> make(manager, plugin, entry.className());
        switch (entry.kind()) {
          case LINKAGE -> linkages.add(new GuardedLinkage(new PluginCode<>(entry, name, making)));
          case SPRING -> springs.add(new GuardedSpring(new PluginCode<>(entry, name, making)));
          case ADDITION ->
              additions.add(new GuardedAddition(new PluginCode<>(entry, name, making)));
        }
      }
    }
  }

  /** Starts the plugin, unless it is started, and makes one of its class. */
  private static Object make(PluginManager manager, PluginWrapper plugin, String className)
      throws Exception {
    synchronized (manager) {
      if (!manager.startPlugin(plugin.getPluginId()).isStarted()) {
        throw new IllegalStateException("it did not start", plugin.getFailedException());
      }
    }
    return plugin.getPluginClassLoader().loadClass(className).getConstructor().newInstance();
  }

  private boolean isOwn(String id, String jar) {
    boolean taken = false;
    for (AxleLinkage linkage : linkages) {
      taken |= linkage.id().equals(id);
    }
    for (SpringMount spring : springs) {
      taken |= spring.id().equals(id);
    }
    for (Addition addition : additions) {
      taken |= addition.id().equals(id);
    }
    if (taken) {
      troubles.add(
          "'"
              + id
              + "' of plugin "
              + jar
              + " was left out: another plugin has that name. Remove one of the two jars.");
    }
    return !taken;
  }
}
