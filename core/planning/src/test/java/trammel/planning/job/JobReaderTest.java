package trammel.planning.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.PartialPosition;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;

class JobReaderTest {
  private static final Job PICKUP = JobReader.read("pickup.yaml", JobFiles.PICKUP);

  @Test
  void headerIsReadAsItIsWritten() {
    assertEquals("0417", PICKUP.header().number());
    assertEquals("2026-11-25", PICKUP.header().date().toString());
    assertEquals(UnitSystem.US, PICKUP.header().units());
    assertEquals(Optional.of("Air lines to run inside the left rail."), PICKUP.header().note());
    assertEquals(Optional.of("Paint is not in this price."), PICKUP.header().customerNote());
  }

  @Test
  void measurementsAreInMillimetresRadiansAndKilograms() {
    Measured measured = PICKUP.measured();
    assertEquals(118.5 * 25.4, measured.wheelbase().meanMm(), 1e-9);
    assertEquals(Math.toRadians(1), measured.rake().onStands().meanRad(), 1e-15);
    assertEquals(RailShape.CHANNEL, measured.rails().shape());
    assertEquals(38.03125 * 25.4, measured.rails().outsideAtAxle().meanMm(), 1e-9);
    assertEquals(4.7625, measured.rails().wallMm());
    assertEquals(new Position(279.4, 0, -38.1), measured.axle().pinion().mean());
    assertEquals(Datum.LEVEL, measured.axle().pinionAngle().from());
    assertEquals(Datum.FRAME, measured.transmission().angle().from());
    assertEquals(-12.7, measured.tyre().wheelOffsetMm());
    assertEquals(820 * 0.45359237, measured.weights().rearLeft().meanKg(), 1e-9);
    assertEquals(3835 * 0.45359237, measured.weights().totalKg(), 1e-9);
    assertFalse(measured.weights().centreOfGravityMeasured());
    // 330 lb-ft × 3.06 × 3.73 = 3766.6 lb-ft; 1 lb-ft = 1355.818 Nmm (NIST SP 811, from memory)
    assertEquals(3766.554 * 1355.818, measured.engine().get().axleTorqueNmm(), 10);
    assertEquals(2, measured.obstacles().size());
    assertEquals(ObstacleKind.TANK, measured.obstacles().get(0).kind());
  }

  @Test
  void choicesAndOverridesAreKept() {
    Chosen chosen = PICKUP.chosen();
    assertEquals("four-link-lateral", chosen.linkage());
    assertEquals("'inboard'", chosen.linkageOptions().find("mounting").get().given());
    assertEquals(88.9, chosen.ride().bumpMm(), 1e-12);
    assertEquals(Math.toRadians(3), chosen.pinionAngleRad().get(), 1e-15);
    assertEquals(List.of("lower-left", "lateral"), List.copyOf(chosen.pickups().keySet()));
    PartialPosition frame = chosen.pickups().get("lower-left").frame();
    assertEquals(new Position(1, 2, 311.15), frame.over(new Position(1, 2, 3)));
    assertTrue(chosen.pickups().get("lower-left").axle().isEmpty());
  }

  @Test
  void moneyAndPercentagesAreExactDecimals() {
    Terms terms = PICKUP.terms();
    assertEquals(new BigDecimal("95.00"), terms.labourRate().get());
    assertEquals(new BigDecimal("0.0825"), terms.tax().get().rate());
    assertEquals(List.of("parts", "steel"), terms.tax().get().taxable());
    assertEquals("USD", terms.currency().get().getCurrencyCode());
    assertEquals(Optional.of("3 deg"), terms.limits().get(0).good());
    assertEquals("terms.limits[0]", terms.limits().get(0).location().path());
  }

  @Test
  void sameJobInJsonIsTheSameJob() {
    Job json = JobReader.read("pickup.json", JobFiles.text("pickup.json"));
    assertEquals(PICKUP.header(), json.header());
    assertEquals(PICKUP.measured(), json.measured());
    assertEquals(PICKUP.chosen().ride(), json.chosen().ride());
    assertEquals(PICKUP.chosen().pinionAngleRad(), json.chosen().pinionAngleRad());
    assertEquals(frames(PICKUP), frames(json));
    assertEquals(PICKUP.terms().tax(), json.terms().tax());
    assertEquals(PICKUP.terms().deposit(), json.terms().deposit());
    assertEquals(PICKUP.assumptions(), json.assumptions());
  }

  private static TreeMap<String, PartialPosition> frames(Job job) {
    TreeMap<String, PartialPosition> frames = new TreeMap<>();
    job.chosen().pickups().forEach((name, pickup) -> frames.put(name, pickup.frame()));
    return frames;
  }

  /** A job file of before knows no additions; {@code --vary} can put one in. */
  @Test
  void additionsAreKeptInTheOrderOfTheFileWithTheirOptions() {
    assertTrue(PICKUP.chosen().additions().isEmpty());
    Chosen chosen =
        JobReader.read(
                JobDocument.of("pickup.yaml", JobFiles.PICKUP)
                    .withValue("chosen.additions", "{straps: {reserve: 1/2 in}, bar: {}}")
                    .withValue("chosen.additions.loop.size", "3 in"))
            .chosen();
    assertEquals(List.of("straps", "bar", "loop"), List.copyOf(chosen.additions().keySet()));
    assertEquals("'1/2 in'", chosen.additions().get("straps").find("reserve").get().given());
    assertTrue(chosen.additions().get("bar").members().isEmpty());
    assertEquals("'3 in'", chosen.additions().get("loop").find("size").get().given());
  }

  @Test
  void metricJobTakesBareNumbersInMillimetresAndKilograms() {
    Job sedan = JobReader.read("sedan-metric.yml", JobFiles.text("sedan-metric.yml"));
    Measured measured = sedan.measured();
    assertEquals(2846, measured.wheelbase().meanMm());
    assertEquals(457.2, measured.rails().undersideAtFrontMounts().meanMm());
    assertEquals(710, measured.rails().frontMountsForward().meanMm());
    assertEquals(665, measured.tyre().diameterMm());
    assertEquals(Optional.of(178.0), measured.tyre().rimWidthMm());
    assertEquals(3, measured.weights().rearLeft().count());
    assertEquals(1, measured.rails().depth().tolerance());
    assertEquals(Math.toRadians(0.1), measured.axle().pinionAngle().reading().tolerance(), 1e-15);
    assertTrue(measured.engine().isEmpty());
    assertTrue(sedan.chosen().linkageOptions().members().isEmpty());
    assertTrue(sedan.terms().labourRate().isEmpty());
  }

  @Test
  void everyDefaultThatWasTakenIsStated() {
    assertEquals(
        List.of(
            "measured.tyre.passenger_on_truck: false",
            "measured.drive.stall_ratio: 2",
            "measured.drive.low_range: 1",
            "measured.brakes.front_share: 65 %",
            "measured.loads: none",
            "measured.hoses: none",
            "measured.tolerance.tape: 1/16 in",
            "measured.tolerance.angle_finder: 0.20 deg",
            "measured.tolerance.scales: 5.0 lb"),
        PICKUP.assumptions());
  }

  @Test
  void repeatsThatDifferByMoreThanTheInstrumentAskToMeasureAgain() {
    Job job =
        JobReader.read(
            "pickup.yaml",
            JobFiles.pickupWith("[38 in, 38 1/16 in]", "[37 15/16 in, 38 in, 38 1/16 in]"));
    Measurement outside = job.measured().rails().outsideAtAxle();
    assertEquals(965.2, outside.meanMm(), 1e-9);
    assertEquals(3.175, outside.spread(), 1e-9);
    assertEquals(1, job.warnings().size());
    Problem warning = job.warnings().get(0);
    assertEquals(Problem.Severity.WARNING, warning.severity());
    assertEquals("measured.rails.outside_at_axle", warning.field());
    assertTrue(warning.text().contains("1/8 in"), warning.text());
    assertTrue(warning.remedy().startsWith("Measure again"), warning.remedy());
    assertTrue(PICKUP.warnings().isEmpty());
  }

  @Test
  void fiveFaultsAreReportedAtOnceInTheOrderOfTheLines() {
    String text =
        JobFiles.PICKUP
            .replace("flange: 3 in", "flange: 30 in")
            .replace("bump:", "bmup:")
            .replace("2.6 deg from level", "2.6 deg")
            .replace("255/70R16", "255R16")
            .replace("valid_days: 30", "valid_days: never");
    BadInputException refused =
        assertThrows(BadInputException.class, () -> JobReader.read("pickup.yaml", text));
    assertEquals(
        List.of(
            "measured.rails.flange",
            "measured.axle.pinion_angle[1]",
            "measured.tyre.size",
            "chosen.ride.bmup",
            "terms.valid_days"),
        refused.problems().stream().map(Problem::field).toList());
    assertEquals(5, refused.getMessage().lines().count());
  }

  @Test
  void fileIsReadFromDiskWithOrWithoutByteOrderMark(@TempDir Path folder) throws IOException {
    Path plain = Files.writeString(folder.resolve("job.yaml"), JobFiles.PICKUP);
    Path marked = Files.writeString(folder.resolve("job.yml"), "\ufeff" + JobFiles.PICKUP);
    assertEquals(PICKUP.measured(), JobReader.read(plain).measured());
    assertEquals(PICKUP.measured(), JobReader.read(marked).measured());
  }

  @Test
  void windowsLineEndsChangeNothing() {
    Job job = JobReader.read("pickup.yaml", JobFiles.PICKUP.replace("\n", "\r\n"));
    assertEquals(PICKUP.measured(), job.measured());
  }

  @Test
  void fileThatIsNotTextIsRefused(@TempDir Path folder) throws IOException {
    Path latin = folder.resolve("latin.yaml");
    Files.write(
        latin, JobFiles.pickupWith("Example", "Müller").getBytes(StandardCharsets.ISO_8859_1));
    BadInputException refused = assertThrows(BadInputException.class, () -> JobReader.read(latin));
    assertEquals(7, refused.problems().get(0).line());
    assertTrue(refused.getMessage().contains("UTF-8"), refused.getMessage());
    assertRefused(folder.resolve("none.yaml"), "no such file");
    assertRefused(Files.createDirectory(folder.resolve("folder.yaml")), "a folder");
    Path large = folder.resolve("large.yaml");
    Files.writeString(large, "#".repeat(1_000_001));
    assertRefused(large, "1000 kB");
  }

  private static void assertRefused(Path file, String given) {
    BadInputException refused = assertThrows(BadInputException.class, () -> JobReader.read(file));
    assertTrue(refused.getMessage().contains(given), refused.getMessage());
  }

  /** Rim diameter and two section heights; the code's parts are those of ETRTO and ISO 4000-1. */
  @ParameterizedTest
  @CsvSource({
    "255/70R16,    255, 763.4",
    "P235/75R15,   235, 733.5",
    "LT245/75R17,  245, 799.3",
    "275/40ZR18,   275, 677.2",
    "205/55-16,    205, 631.9",
    "225/70R19.5,  225, 810.3"
  })
  void metricTyreCodeGivesWidthAndDiameter(String code, int widthMm, double diameterMm) {
    TyreSize size = TyreSize.parse(code).get();
    assertEquals(widthMm, size.widthMm());
    assertEquals(diameterMm, size.diameterMm(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "R",
        "/",
        "255",
        "255/70",
        "255/70R",
        "255/70R1",
        "255/7R16",
        "31x10.50R15",
        "255/70R16 111S",
        "255/70R160",
        "999/70R16",
        "255/70R99",
        "255/ZR16",
        "-/70R16",
        "R16/255",
        "255/70X16"
      })
  void otherTyreCodesAreNotTakenForMetric(String code) {
    assertTrue(TyreSize.parse(code).isEmpty());
  }

  @Test
  void jobsThatDifferOnlyInWhatTheyAreCalledAskForTheSameWork() {
    JobDocument document = JobDocument.of("pickup.yaml", JobFiles.PICKUP);
    JobDocument called =
        JobDocument.of("other.yaml", "# moved down a line\n" + JobFiles.PICKUP)
            .withValue("job.number", "Z-9")
            .withValue("job.vehicle", "another one");

    assertEquals(document.work(), called.work());
    assertNotEquals(
        document.work(), document.withValue("measured.rails.outside_at_axle", "38 in").work());
    assertNotEquals(
        document.work(), document.withValue("measured.obstacles[1].name", "side pipe").work());
    assertNotEquals(document.work(), document.withValue("terms.start", "2027-01-04").work());
  }

  @Test
  void oneFieldCanBeVariedBeforeReading() {
    JobDocument document = JobDocument.of("pickup.yaml", JobFiles.PICKUP);
    Job wide =
        JobReader.read(
            document
                .withValue("measured.rails.outside_at_axle", "38 3/16 in")
                .withValue("chosen.linkage_options.mounting", "outboard")
                .withValue("measured.obstacles[1].name", "side pipe")
                .withValue("measured.brakes.front_share", "70 %"));
    assertEquals(969.9625, wide.measured().rails().outsideAtAxle().meanMm(), 1e-9);
    assertEquals("'outboard'", wide.chosen().linkageOptions().find("mounting").get().given());
    assertEquals("side pipe", wide.measured().obstacles().get(1).name());
    assertEquals(0.7, wide.measured().frontBrakeShare());
    assertEquals(PICKUP.measured(), JobReader.read(document).measured());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "measured.rails.depth       | 3 deg        | measured.rails.depth",
        "measured.rails.deppth      | 6 in         | measured.rails.deppth",
        "measured.rails.depth.more  | 6 in         | measured.rails.depth.more",
        "measured.obstacles[7].name | x            | measured.obstacles[7].name",
        "measured.obstacles[x].name | x            | measured.obstacles[x].name",
        "measured..rails            | x            | measured..rails",
        "wheels.left                | x            | wheels",
        "measured.rails.depth       | '[6 in, 7 in' | measured.rails.depth",
        "measured.rails.depth       | ''           | measured.rails.depth"
      })
  void problemWithAVariedFieldNamesTheOption(String path, String value, String field) {
    JobDocument document = JobDocument.of("pickup.yaml", JobFiles.PICKUP);
    BadInputException refused =
        assertThrows(
            BadInputException.class, () -> JobReader.read(document.withValue(path, value)));
    assertEquals(1, refused.problems().size(), refused.getMessage());
    assertTrue(refused.getMessage().startsWith("--vary, " + field), refused.getMessage());
  }
}
