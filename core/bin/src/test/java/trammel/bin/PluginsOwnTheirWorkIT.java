package trammel.bin;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What one plugin alone works with stands in that plugin. A class reaches another if it uses it, or
 * uses one that reaches it.
 */
class PluginsOwnTheirWorkIT {
  private static final String PLUGINS = "trammel.plugins.";

  /** Where the application starts from. */
  private static final String APPLICATION = "trammel.app.";

  /** Parts that are offered to every plugin, though only one of today's composes from them. */
  private static final Map<String, String> OFFERED =
      Map.ofEntries(
          entry(
              "trammel.brackets.bar.HousingRoom",
              "keeps any bar over the housing clear of it: one upper link in the middle too"),
          entry(
              "trammel.brackets.barend.HousingBridge",
              "what holds any bar that ends over a housing"),
          entry(
              "trammel.brackets.barend.CrossmemberTabs",
              "what any bar hangs from that ends at a crossmember"),
          entry(
              "trammel.brackets.bar.UpperSpread",
              "the room of any bars that meet the rails at an angle, upper or lower"),
          entry(
              "trammel.trade.plates.SpringSeat",
              "the plate under any spring that stands on one: a coil beside its shock too"),
          entry("trammel.trade.plates.SeatArm", "carries any such plate beside the axle tube"),
          entry(
              "trammel.trade.plates.CrossmemberTab",
              "a drilled tab off a rail, for anything that is bolted to one"));

  /** Plugins by package, with what each reaches in the core. */
  private static final Map<String, Set<String>> REACHED_BY_PLUGIN = new TreeMap<>();

  private static Set<String> reachedByApplication;
  private static JavaClasses classes;

  @BeforeAll
  static void readTheClassGraph() {
    // Only classes of this project count, so none of Java's are read.
    ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("trammel");
    reachedByApplication = reached(classes, name -> name.startsWith(APPLICATION));
    Set<String> plugins =
        classes.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> name.startsWith(PLUGINS))
            .collect(Collectors.toCollection(TreeSet::new));
    for (String plugin : plugins) {
      REACHED_BY_PLUGIN.put(plugin, reached(classes, name -> name.startsWith(plugin + ".")));
    }
  }

  private static Set<String> reached(JavaClasses classes, Predicate<String> start) {
    Set<String> reached = new TreeSet<>();
    Deque<JavaClass> open = new ArrayDeque<>();
    classes.stream().filter(type -> start.test(type.getName())).forEach(open::add);
    Set<JavaClass> seen = new HashSet<>(open);
    while (!open.isEmpty()) {
      JavaClass type = open.remove();
      reached.add(outermost(type));
      type.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass().getBaseComponentType())
          .filter(target -> target.getPackageName().startsWith("trammel."))
          .filter(seen::add)
          .forEach(open::add);
    }
    reached.removeIf(name -> name.startsWith(PLUGINS));
    return reached;
  }

  /** The class in whose file it stands. */
  private static String outermost(JavaClass type) {
    JavaClass outer = type;
    while (outer.getEnclosingClass().isPresent()) {
      outer = outer.getEnclosingClass().get();
    }
    return outer.getName();
  }

  private static List<String> plugins(String type) {
    return REACHED_BY_PLUGIN.entrySet().stream()
        .filter(entry -> entry.getValue().contains(type))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Reasons are data there, which are put into units where somebody reads them. */
  @Test
  void noPluginPutsAQuantityIntoUnits() {
    noClasses()
        .that()
        .resideInAPackage(PLUGINS + ".")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("trammel.reading.quantity.QuantityPrinter")
        .check(classes);
  }

  @Test
  void everyPluginReachesTheCore() {
    assertTrue(REACHED_BY_PLUGIN.size() >= 4, REACHED_BY_PLUGIN.keySet().toString());
    REACHED_BY_PLUGIN.forEach(
        (plugin, reached) ->
            assertTrue(
                reached.contains("trammel.brackets.work.WorkPlan"), plugin + ": " + reached));
  }

  @Test
  void noClassOfTheCoreIsThereForOnePluginAlone() {
    Map<String, String> misplaced = new TreeMap<>();
    REACHED_BY_PLUGIN.values().stream()
        .flatMap(Set::stream)
        .filter(type -> !reachedByApplication.contains(type) && !OFFERED.containsKey(type))
        .filter(type -> plugins(type).size() == 1)
        .forEach(type -> misplaced.put(type, plugins(type).get(0)));
    assertTrue(
        misplaced.isEmpty(),
        () ->
            "only one plugin reaches these; move each into it:\n"
                + misplaced.entrySet().stream()
                    .map(entry -> entry.getKey() + " -> " + entry.getValue())
                    .collect(Collectors.joining("\n")));
  }

  @Test
  void whatIsOfferedIsUsedByOnePluginOnly() {
    for (String offered : OFFERED.keySet()) {
      assertTrue(
          !reachedByApplication.contains(offered) && plugins(offered).size() == 1,
          () -> offered + " is reached by " + plugins(offered) + "; take it off the list");
    }
  }
}
