package trammel.bin;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Builds a plugin's jar from one source, as somebody outside the project would. */
final class PluginJar {
  private PluginJar() {}

  /**
   * Compiles the source against an installed copy and packs it.
   *
   * @param kind linkage, spring or addition
   * @param className full name of the extension class in the source
   * @param id the extension's id, which is the plugin's too
   */
  static void build(
      Path home, String kind, String className, String source, String id, Path jar, Path work)
      throws IOException {
    Files.createDirectories(work);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    List<String> options =
        List.of("-proc:none", "-d", work.toString(), "-cp", classPath(home), "--release", "17");
    boolean compiled =
        compiler
            .getTask(messages, null, null, options, null, List.of(file(className, source)))
            .call();
    if (!compiled) {
      throw new IOException("the plugin does not compile: " + messages);
    }
    pack(kind + " " + id + " " + className + "\n", id, jar, work);
  }

  private static JavaFileObject file(String className, String source) {
    URI uri = URI.create("string:///" + className.replace('.', '/') + ".java");
    return new SimpleJavaFileObject(uri, JavaFileObject.Kind.SOURCE) {
      @Override
      public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return source;
      }
    };
  }

  private static String classPath(Path home) throws IOException {
    try (Stream<Path> jars = Files.list(home.resolve("lib"))) {
      List<String> paths = new ArrayList<>();
      jars.forEach(path -> paths.add(path.toString()));
      return String.join(":", paths);
    }
  }

  /** Packs classes with a list of what is in them; with a blank one, the jar has none. */
  static void pack(String list, String id, Path jar, Path work) throws IOException {
    Manifest manifest = new Manifest();
    Attributes attributes = manifest.getMainAttributes();
    attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    attributes.putValue("Plugin-Id", id + "-plugin");
    attributes.putValue("Plugin-Version", "1.0.0");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(file, manifest);
        Stream<Path> classes = Files.walk(work)) {
      for (Path path : classes.filter(Files::isRegularFile).toList()) {
        packed.putNextEntry(new JarEntry(work.relativize(path).toString()));
        packed.write(Files.readAllBytes(path));
      }
      if (!list.isBlank()) {
        packed.putNextEntry(new JarEntry("META-INF/trammel.idx"));
        packed.write(list.getBytes(StandardCharsets.UTF_8));
      }
    }
  }
}
