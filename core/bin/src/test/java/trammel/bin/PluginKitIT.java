package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;

/**
 * The kit with which somebody outside writes a plugin, and the page that goes with it: the linkage
 * that the page shows is built from the page, by the kit alone, and quotes a job.
 */
class PluginKitIT {
  private static final String MAIN = "src/main/java/example/torquearm/PlainTorqueArm.java";
  private static final String CATALOG = "src/main/resources/META-INF/trammel-catalog.yaml";
  private static final String CLASS = "example.torquearm.PlainTorqueArm";
  private static final String ID = "plain-torque-arm";

  /** What only the application calls on promised types; the page says so. */
  private static final Set<String> OF_THE_APPLICATION =
      Set.of(
          "trammel.planning.catalog.CatalogReader$Written",
          "trammel.planning.catalog.ListPrice",
          "trammel.planning.catalog.Shop",
          "trammel.reading.fields.Field",
          "trammel.reading.fields.FieldReader",
          "trammel.reading.fields.FieldValues");

  @TempDir static Path folder;
  private static Path kit;
  private static Path project;
  private static String page;
  private static Map<String, String> files;

  @BeforeAll
  static void unpackTheKit() throws IOException {
    Workbench.unpack(Path.of(System.getProperty("plugin.kit.zip")), folder);
    kit = folder.resolve("trammel-plugin-kit");
    project = kit.resolve("linkage");
    page = Files.readString(kit.resolve("write-a-plugin.md"));
    files = filesOfThePage();
  }

  /** Each block of code that stands under the name of a file of the project. */
  private static Map<String, String> filesOfThePage() {
    Map<String, String> blocks = new LinkedHashMap<>();
    Matcher block = Pattern.compile("(?ms)^`(src/[^`]+)`\n\n```\\w*\n(.*?)^```$").matcher(page);
    while (block.find()) {
      blocks.put(block.group(1), block.group(2));
    }
    return blocks;
  }

  @Test
  void theProjectOfTheKitIsTheOneOfThePage() throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      assertEquals(
          file.getValue(), Files.readString(project.resolve(file.getKey())), file.getKey());
    }
    try (Stream<Path> sources = Files.walk(project.resolve("src"))) {
      assertEquals(files.size(), sources.filter(Files::isRegularFile).count());
    }
  }

  /** About 150 lines; what is imported, said in remarks or blank does not count. */
  @Test
  void theLinkageOfThePageIsSmall() {
    long lines =
        files
            .get(MAIN)
            .lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty() && !line.matches("(import|//|/\\*|\\*).*"))
            .count();
    assertTrue(lines <= 150, lines + " lines");
  }

  /** Sedan with closed rails: four bars, eight bolts; brackets, bolts and seams by name. */
  @Test
  void thePageIsBuiltByTheKitAloneAndQuotesAJobWithEveryBracketBoltAndSeam() throws Exception {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(project.resolve(file.getKey()), file.getValue());
    }
    Launch.Ended built =
        Launch.of(System.getProperty("maven.program"))
            .with("HOME", System.getProperty("user.home"))
            .in(project)
            .run(
                "-o",
                "-B",
                "-q",
                "-Dmaven.repo.local=" + System.getProperty("maven.repository"),
                "verify");
    assertEquals(0, built.exitCode(), built.out() + built.err());
    Path jar = project.resolve("target/plain-torque-arm.jar");
    try (JarFile packed = new JarFile(jar.toFile())) {
      assertTrue(
          packed.stream()
              .map(entry -> entry.getName())
              .allMatch(name -> name.matches("(META-INF|example)/.*")),
          "a plugin's jar holds its own classes only");
    }

    InstalledCopy copy = InstalledCopy.unpackedInto(folder.resolve("copy"));
    Files.copy(jar, copy.home().resolve("plugins/plain-torque-arm.jar"));
    Path job =
        InstalledCopy.write(
            folder.resolve("job.json"),
            copy.demoTree("sedan")
                .with("chosen.linkage", ID)
                .with("chosen.linkage_options", Map.of()));
    Launch.Ended quote = copy.run("quote", "--full", job.toString());
    assertEquals(1, quote.exitCode(), quote.err());
    assertTrue(quote.out().contains("TOTAL"), quote.out());
    assertTrue(quote.out().contains("set the arm square on the axle tube"), quote.out());

    Tree assembly = copy.json(1, "plan", job).at("assembly");
    Set<String> parts =
        assembly.list("parts").stream().map(part -> part.text("id")).collect(Collectors.toSet());
    Map<String, Long> seams =
        assembly.list("seams").stream()
            .collect(Collectors.groupingBy(seam -> seam.text("line"), Collectors.counting()));
    for (String bar : List.of("lower-left", "lower-right", "lateral-bar", "drop-link")) {
      assertTrue(parts.contains(bar), bar);
      assertTrue(parts.contains("bolt of " + bar + " frame end"), bar);
      assertTrue(parts.contains("bolt of " + bar + " axle end"), bar);
    }
    for (String pair :
        List.of(
            "lower-left frame bracket side",
            "lower-right frame bracket side",
            "lower-left axle bracket side",
            "lower-right axle bracket side",
            "drop-link axle bracket side",
            "drop-link frame tab")) {
      assertTrue(parts.containsAll(List.of(pair + ", outer", pair + ", inner")), pair);
    }
    assertTrue(
        parts.containsAll(
            List.of(
                "lateral-bar frame bracket side, front",
                "lateral-bar frame bracket side, rear",
                "lateral-bar axle bracket face, front",
                "lateral-bar axle bracket face, rear",
                "torque arm crossmember")),
        parts.toString());
    // Two plates, both faces; two ends of the crossmember.
    assertEquals(4, seams.get("lower-left axle bracket to tube"));
    assertEquals(4, seams.get("drop-link axle bracket to tube"));
    assertEquals(4, seams.get("drop-link frame tab to crossmember"));
    assertEquals(4, seams.get("lateral-bar frame bracket to rail"));
    assertEquals(1, seams.get("lower-right frame bracket to rail"));
    assertEquals(2, seams.get("torque arm crossmember to rail"));
  }

  @ParameterizedTest
  @CsvSource({
    "'    plan.add(new AxleBracket(link, basis).plan());\n', axle end of drop-link",
    "'    plan.add(new CrossmemberTabs(link, crossmember, basis).plan());\n',"
        + " frame end of drop-link"
  })
  void aPlanWithOneBracketLeftOutIsRefusedByName(String bracket, String named) throws Exception {
    String source = files.get(MAIN);
    assertTrue(source.contains(bracket), bracket);
    Path work = Files.createDirectories(folder.resolve("without " + named));
    Path jar = work.resolve("plugin.jar");
    PluginJar.build(
        kit, "linkage", CLASS, source.replace(bracket, ""), ID, jar, work.resolve("classes"));
    CatalogReader catalog = CatalogReader.begin(kit.resolve("catalogs/standard"));
    catalog.bring(new PluginCatalog("plugin.jar", files.get(CATALOG)));
    try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()})) {
      AxleLinkage linkage =
          (AxleLinkage) loader.loadClass(CLASS).getDeclaredConstructor().newInstance();
      LinkageContract contract =
          new LinkageContract(linkage, catalog.finish(List.of()), SampleVehicle.pickup());
      String message = assertThrows(AssertionError.class, contract::verify).getMessage();
      assertEquals(
          "In the plan of plain-torque-arm the "
              + named
              + " has no bolt or pin through its middle.",
          message);
    }
  }

  private static Set<String> promisedPackages() {
    String list = page.substring(page.indexOf("## What is promised from version to version"));
    return list.lines()
        .filter(line -> line.matches("trammel[.a-z]*"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void theKitHoldsSourcesAndJavadocOfExactlyWhatIsPromised() throws IOException {
    assertEquals(promisedPackages(), packagesIn(kit.resolve("sources"), ".java"));
    assertEquals(promisedPackages(), packagesIn(kit.resolve("javadoc/trammel"), ".html"));
  }

  private static Set<String> packagesIn(Path root, String ending) throws IOException {
    Path top = root.endsWith("trammel") ? root.getParent() : root;
    try (Stream<Path> found = Files.walk(root)) {
      return found
          .filter(file -> file.getFileName().toString().endsWith(ending))
          .filter(file -> !file.getParent().getFileName().toString().equals("class-use"))
          .map(file -> top.relativize(file.getParent()).toString().replace(File.separatorChar, '.'))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** Whoever uses what is promised needs nothing that is not. */
  @Test
  void whatIsPromisedShowsOnlyWhatIsPromised() {
    // Only classes of this project count, so none of Java's are read.
    ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    Set<String> promised = promisedPackages();
    Map<String, Set<String>> leaks = new TreeMap<>();
    for (JavaClass type : new ClassFileImporter().importPackages("trammel")) {
      if (!promised.contains(type.getPackageName())
          || !isPublic(type)
          || OF_THE_APPLICATION.contains(type.getName())) {
        continue;
      }
      shown(type)
          .flatMap(shown -> shown.getAllInvolvedRawTypes().stream())
          .map(JavaClass::getBaseComponentType)
          .filter(shown -> shown.getPackageName().startsWith("trammel"))
          .filter(shown -> !promised.contains(shown.getPackageName()) || !isPublic(shown))
          .forEach(
              shown ->
                  leaks
                      .computeIfAbsent(type.getName(), name -> new TreeSet<>())
                      .add(shown.getName()));
    }
    assertTrue(leaks.isEmpty(), leaks.toString());
  }

  private static boolean isPublic(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(PluginKitIT::isPublic).orElse(true);
  }

  /** Types in the signatures that others can call. */
  private static Stream<JavaType> shown(JavaClass type) {
    Stream<JavaType> called =
        type.getCodeUnits().stream()
            .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC))
            .flatMap(PluginKitIT::shown);
    Stream<JavaType> read =
        type.getFields().stream()
            .filter(field -> field.getModifiers().contains(JavaModifier.PUBLIC))
            .map(JavaField::getType);
    return Stream.concat(called, read);
  }

  private static Stream<JavaType> shown(JavaCodeUnit unit) {
    return Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()));
  }
}
