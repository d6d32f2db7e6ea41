package trammel.app.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Dependencies run one way, from the app down, and libraries stay where they belong. */
@AnalyzeClasses(packages = "trammel", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
  @ArchTest
  static final ArchRule ENGINE_KNOWS_ONLY_ITSELF_AND_MATHEMATICS =
      classes()
          .that()
          .resideInAPackage("trammel.engine..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.engine..",
              "java.lang..",
              "java.util..",
              "java.math..",
              "org.apache.commons.math3..");

  @ArchTest
  static final ArchRule CUTTING_KNOWS_NOTHING_ELSE =
      classes()
          .that()
          .resideInAPackage("trammel.cutting..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("trammel.cutting..", "java..");

  @ArchTest
  static final ArchRule WHAT_THE_CUTTERS_SHARE_IS_THEIR_OWN =
      noClasses()
          .that()
          .resideOutsideOfPackage("trammel.cutting..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("trammel.cutting.internal..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("trammel.cutting.bars.FillingCover");

  @ArchTest
  static final ArchRule READING_KNOWS_ONLY_ITSELF_ITS_PARSER_AND_WHAT_IT_PUTS_INTO_UNITS =
      classes()
          .that()
          .resideInAPackage("trammel.reading..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.reading..", "trammel.engine.quantity..", "java..", "tools.jackson..");

  @ArchTest
  static final ArchRule TRADE_KNOWS_ONLY_ITSELF_AND_MATHEMATICS =
      classes()
          .that()
          .resideInAPackage("trammel.trade..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.trade..", "trammel.engine..", "java..", "org.apache.commons.math3..");

  @ArchTest
  static final ArchRule PLANNING_KNOWS_NOTHING_OF_THE_APP =
      noClasses()
          .that()
          .resideInAPackage("trammel.planning..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("trammel.app..", "trammel.plugins..", "org.pf4j..", "picocli..");

  @ArchTest
  static final ArchRule PLANNING_KNOWS_NO_LEDGER =
      noClasses()
          .that()
          .resideInAnyPackage("trammel.planning..", "trammel.engine..", "trammel.plugins..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("trammel.ledger..");

  @ArchTest
  static final ArchRule THE_LEDGER_KNOWS_PLANNING_AND_SQL =
      classes()
          .that()
          .resideInAPackage("trammel.ledger..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.ledger..",
              "trammel.planning..",
              "trammel.trade..",
              "trammel.engine.quantity..",
              "java..",
              "org.sqlite..");

  @ArchTest
  static final ArchRule SQL_IS_WRITTEN_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideOutsideOfPackage("trammel.ledger..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..");

  @ArchTest
  static final ArchRule THE_ASSEMBLY_KNOWS_GEOMETRY_ONLY =
      classes()
          .that()
          .resideInAPackage("trammel.assembly..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.assembly..",
              "trammel.trade.plates..",
              "trammel.trade.steel..",
              "trammel.trade.tubes..",
              "trammel.trade.welding..",
              "trammel.trade.given..",
              "trammel.engine.geometry..",
              "trammel.engine.quantity..",
              "java.lang..",
              "java.util..");

  @ArchTest
  static final ArchRule BRACKETS_KNOW_NO_JOB_NO_CATALOG_FILE_AND_NO_EXTENSION_POINT =
      classes()
          .that()
          .resideInAPackage("trammel.brackets..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "trammel.brackets..",
              "trammel.assembly..",
              "trammel.trade..",
              "trammel.reading.quantity..",
              "trammel.engine..",
              "java.lang..",
              "java.util..",
              "java.math..");

  @ArchTest
  static final ArchRule REASONS_OF_BRACKETS_ARE_PUT_INTO_UNITS_WHERE_THEY_ARE_READ =
      noClasses()
          .that()
          .resideInAnyPackage("trammel.brackets..", "trammel.planning.vehicle..")
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("trammel.reading.quantity.QuantityPrinter");

  @ArchTest
  static final ArchRule NOTHING_BELOW_BRACKETS_KNOWS_THEM =
      noClasses()
          .that()
          .resideInAnyPackage(
              "trammel.cutting..",
              "trammel.engine..",
              "trammel.reading..",
              "trammel.trade..",
              "trammel.assembly..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("trammel.brackets..", "trammel.planning..");

  @ArchTest
  static final ArchRule CORE_HAS_NO_WORD_OF_ANY_PLUGIN =
      noClasses()
          .that()
          .resideOutsideOfPackage("trammel.plugins..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("trammel.plugins..");

  @ArchTest
  static final ArchRule FILES_ARE_PARSED_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideInAnyPackage("trammel.planning..", "trammel.reading..")
          .and()
          .resideOutsideOfPackage("trammel.reading.tree..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tools.jackson..");

  @ArchTest
  static final ArchRule JSON_IS_WRITTEN_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideInAPackage("trammel.app..")
          .and()
          .resideOutsideOfPackage("trammel.app.json..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tools.jackson..");

  @ArchTest
  static final ArchRule PACKAGES_OF_THE_APP_FORM_NO_CYCLES =
      slices().matching("trammel.app.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule PAPER_IS_MADE_IN_TWO_PLACES =
      // Lines and points of java.awt.geom are plain numbers, which nothing is drawn with.
      noClasses()
          .that()
          .resideInAPackage("trammel..")
          .and()
          .resideOutsideOfPackages("trammel.app.paper..", "trammel.app.documents..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.apache.pdfbox..",
              "org.apache.fontbox..",
              "com.openhtmltopdf..",
              "com.github.mustachejava..",
              "java.awt",
              "java.awt.font..",
              "java.awt.image..",
              "java.awt.print..");

  @ArchTest
  static final ArchRule PLUGINS_ARE_FOUND_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideOutsideOfPackage("trammel.app.plugins..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.pf4j..");

  @ArchTest
  static final ArchRule THE_COMMAND_LINE_IS_READ_IN_ONE_PLACE =
      noClasses()
          .that()
          .resideOutsideOfPackage("trammel.app.commandline..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule PACKAGES_OF_THE_ENGINE_FORM_NO_CYCLES =
      slices().matching("trammel.engine.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule PACKAGES_OF_PLANNING_FORM_NO_CYCLES =
      slices().matching("trammel.planning.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule PACKAGES_OF_BRACKETS_FORM_NO_CYCLES =
      slices().matching("trammel.brackets.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule PACKAGES_OF_READING_FORM_NO_CYCLES =
      slices().matching("trammel.reading.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule PACKAGES_OF_TRADE_FORM_NO_CYCLES =
      slices().matching("trammel.trade.(*)..").should().beFreeOfCycles();
}
