package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.job.Hose;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.Position;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Hoses, a hitch and a shaft of two pieces, on the demonstration pickup, worked by hand. */
class MeasuredExtrasTest {
  private static final double INCH_MM = 25.4;
  private static final double POUND_KG = 0.45359237;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final JobDocument PICKUP =
      JobDocument.load(Path.of("..", "..", "catalogs", "demo", "pickup.yaml"));

  private static LayoutAnalysis analysis(Chassis chassis) {
    AnalysisSettings settings = CATALOG.analysis();
    return new LayoutAnalysis(
        new Layout(
            chassis,
            SampleVehicle.bars(chassis),
            SampleVehicle.springs(chassis),
            SampleVehicle.shocks(chassis)),
        settings);
  }

  private static HoseReach hose(Optional<Double> lengthMm) {
    Chassis pickup = SampleVehicle.pickup();
    Point3 onFrame = new Point3(0, 0, pickup.axleCentre().zMm() + 8 * INCH_MM);
    Position onAxle = new Position(0, 0, 2 * INCH_MM);
    return new HoseReach(
        List.of(new Hose("brake hose", onAxle, onAxle, lengthMm)), List.of(onFrame));
  }

  /** Fittings 6 in apart at ride and 9 in at 3 in of droop: with 8 % slack 9.72 in are ordered. */
  @Test
  void aHoseIsOrderedForTheLongestWayWithSlack() {
    LayoutAnalysis pickup = analysis(SampleVehicle.pickup());
    Reading.Unknown open = (Reading.Unknown) hose(Optional.empty()).read(pickup);
    assertTrue(
        open.reason().in(new QuantityPrinter(UnitSystem.US)).contains("9 23/32 in"),
        open.reason().in(new QuantityPrinter(UnitSystem.US)));

    Reading.Value tight = (Reading.Value) hose(Optional.of(9.2 * INCH_MM)).read(pickup);
    assertEquals(9 / 9.2, tight.value(), 0.002);
    Limit limit = CATALOG.limits().get(PlanCheck.HOSES.id());
    assertEquals(Verdict.STOP, limit.verdict(tight.value()));
    Reading.Value slack = (Reading.Value) hose(Optional.of(9.72 * INCH_MM)).read(pickup);
    assertEquals(Verdict.GOOD, limit.verdict(slack.value()));
  }

  /**
   * 300 lb on a ball 47.2 in behind the axle, wheelbase 118: 120 lb off the front, 420 on the rear.
   */
  @Test
  void aTongueCountsAmongTheLoadsByTheLeverRule() {
    JobDocument towing =
        PICKUP
            .withValue("measured.loads", "[]")
            .withValue("measured.hitch", "{behind: 47.2 in, tongue: 300 lb, trailer: 2400 lb}");
    Job job = JobReader.read(towing);
    Chassis chassis = new MeasuredChassis(job).chassis();

    assertEquals(420 * POUND_KG, chassis.masses().payload().rearKg(), 0.1);
    assertEquals(-120 * POUND_KG, chassis.masses().payload().frontKg(), 0.1);
    Reading.Value share =
        (Reading.Value) new HitchLoad(job.measured().hitch()).read(analysis(chassis));
    assertEquals(0.125, share.value(), 1e-9);
    assertEquals(Verdict.GOOD, CATALOG.limits().get(PlanCheck.HITCH.id()).verdict(share.value()));
  }

  /**
   * On the stands the transmission's joint is 23 7/8 in up, 60 in ahead, its output 2.9 deg tail
   * down. A centre joint 30 in further back, 30 in x tan 2.9 deg = 1.520 in lower, runs straight
   * on.
   */
  @Test
  void ofTwoPiecesTheRearOneIsJudgedAndTheFrontJointByItself() {
    JobDocument straight =
        PICKUP.withValue(
            "measured.driveshaft.centre_joint", "{forward: 30 in, left: 0 in, up: 22.355 in}");
    MeasuredChassis measured = new MeasuredChassis(JobReader.read(straight));
    FrontShaft front = measured.frontShaft().orElseThrow();
    Driveline rear = measured.chassis().driveline();

    assertEquals(0, Math.toDegrees(front.angleRad()), 0.01);
    assertEquals(Math.hypot(30, 1.520) * INCH_MM, front.lengthMm(), 0.1);
    assertEquals(0, rear.transmissionJoint().distanceMm(front.centreJoint()), 1e-9);
    assertEquals(0, rear.transmissionAxis().angleToLineRad(front.axis()), 1e-9);

    // An inch too high is atan(1/30) = 1.909 deg.
    JobDocument high =
        PICKUP.withValue(
            "measured.driveshaft.centre_joint", "{forward: 30 in, left: 0 in, up: 23.355 in}");
    MeasuredChassis shimmed = new MeasuredChassis(JobReader.read(high));
    FrontShaftAngle check = new FrontShaftAngle(shimmed.frontShaft());
    Reading.Value angle = (Reading.Value) check.read(analysis(shimmed.chassis()));
    assertEquals(1.909, Math.toDegrees(angle.value()), 0.02);
    Limit limit = CATALOG.limits().get(PlanCheck.FRONT_SHAFT_ANGLE.id());
    assertEquals(Verdict.LOOK_AGAIN, limit.verdict(angle.value()));
    assertEquals(
        Reading.NotApplicable.class,
        new FrontShaftSpeed(Optional.empty(), Optional.empty())
            .read(analysis(shimmed.chassis()))
            .getClass());
  }
}
