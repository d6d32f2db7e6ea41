package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BinaryOperator;
import org.junit.jupiter.api.Tag;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Check;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Payload;
import trammel.engine.loads.LoadCase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

/** Every verdict on vehicles drawn at random: a number, a reason, and the same in the mirror. */
class DrawnVerdictsIT {
  private static final Catalog CATALOG =
      CatalogReader.read(List.of(Path.of("..", "..", "catalogs", "standard")));
  private static final Drafting DRAFTING = new Drafting(OwnPlugins.extensions(), CATALOG);

  @Seeds(30)
  void everyVerdictHasANumberAndAReasonAndMirrors(Draw draw) {
    hold(draw);
  }

  @Seeds(1000)
  @Tag("long")
  void aThousandVehicles(Draw draw) {
    hold(draw);
  }

  private static void hold(Draw draw) {
    AxleLinkage linkage = draw.oneOf(OwnPlugins.linkages());
    String spring = draw.oneOf("coil-spring", "air-spring");
    String text = JobText.of(PlausibleVehicle.draw(draw), "R-" + draw.seed(), linkage.id(), spring);
    Draft draft;
    try {
      draft = DRAFTING.draft(JobReader.read("drawn.yaml", text), UnitSystem.US);
    } catch (UnworkableLayoutException refused) {
      return;
    }
    AnalysisSettings settings = draft.judge().settings();
    Layout layout = carrying(draft.layout(), draw);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, settings);
    for (Check check : draft.judge().checks()) {
      String what = "seed " + draw.seed() + ", " + check.id();
      hold(check.read(analysis), what);
    }
    if (layout.guide().isPlain() && layout.guide().solids().isEmpty()) {
      holdInTheMirror(draft, layout, settings, draw);
    }
  }

  /** Half of them carry something, up to a third of what the rear weighs. */
  private static Layout carrying(Layout layout, Draw draw) {
    Masses masses = layout.chassis().masses();
    double rearKg = Math.max(0, draw.between(-1.0, 1.0)) / 3 * masses.rearAxleKg();
    return layout.withChassis(
        layout
            .chassis()
            .withMasses(
                new Masses(
                    masses.frontAxleKg(),
                    masses.rearLeftKg(),
                    masses.rearRightKg(),
                    masses.rearUnsprungKg(),
                    masses.centreOfGravityHeightMm(),
                    masses.frontRollNmmPerRad(),
                    masses.frontWheelNPerMm(),
                    rearKg == 0 ? Payload.NONE : new Payload(rearKg / 4, rearKg))));
  }

  private static void hold(Reading reading, String what) {
    if (reading instanceof Reading.Value value) {
      assertFalse(Double.isNaN(value.value()), what);
      for (Detail detail : value.details()) {
        assertTrue(Double.isFinite(detail.value()), what + ": " + detail.words());
        assertFalse(detail.words().isBlank(), what);
      }
    } else if (reading instanceof Reading.Unknown unknown) {
      assertTrue(unknown.reason().toString().length() > 8, what);
    } else {
      assertTrue(((Reading.NotApplicable) reading).reason().length() > 8, what);
    }
  }

  /** Without drive: the engine turns one way only, and presses one tyre down. */
  private static void holdInTheMirror(
      Draft draft, Layout layout, AnalysisSettings settings, Draw draw) {
    List<LoadCase> undriven =
        settings.loadCases().stream().filter(one -> one.driveMultiplier() == 0).toList();
    AnalysisSettings even =
        new AnalysisSettings(settings.designSpeedMPerS(), undriven)
            .withHardCases(settings.hardCases());
    // What is in the way stands where it stands.
    Layout free = layout.withChassis(layout.chassis().withObstacles(List.of()));
    LayoutAnalysis one = new LayoutAnalysis(free, even);
    LayoutAnalysis other = new LayoutAnalysis(mirrored(free), even);
    LayoutAnalysis renamed = new LayoutAnalysis(renamed(mirrored(free)), even);
    for (Check check : draft.judge().checks()) {
      // Parts stand by what their side is called, all else where its points are.
      boolean goesByNames = check.id().equals("parts-apart");
      if (check.read(one) instanceof Reading.Value value) {
        Reading.Value mirrored =
            assertInstanceOf(
                Reading.Value.class,
                check.read(goesByNames ? renamed : other),
                "seed " + draw.seed() + ", " + check.id());
        assertEquals(
            value.value(),
            mirrored.value(),
            1e-4 * (1 + Math.abs(value.value())),
            "seed " + draw.seed() + ", " + check.id());
      }
    }
  }

  private static Layout mirrored(Layout layout) {
    List<Bar> bars =
        layout.bars().stream()
            .map(bar -> bar.withPoint(End.FRAME, bar.frame().mirrored()))
            .map(bar -> bar.withPoint(End.AXLE, bar.axle().mirrored()))
            .toList();
    return layout
        .withBars(bars)
        .withSprings(
            layout.springs().stream()
                .map(one -> one.withPoint(End.FRAME, one.frame().mirrored()))
                .map(one -> one.withPoint(End.AXLE, one.axle().mirrored()))
                .toList())
        .withShocks(
            layout.shocks().stream()
                .map(one -> one.withPoint(End.FRAME, one.frame().mirrored()))
                .map(one -> one.withPoint(End.AXLE, one.axle().mirrored()))
                .toList())
        .withChassis(mirrored(layout.chassis()));
  }

  /** Left and right of springs and of shocks change places. */
  private static Layout renamed(Layout layout) {
    return layout
        .withSprings(
            swapped(
                layout.springs(),
                (one, other) ->
                    one.withPoint(End.FRAME, other.frame()).withPoint(End.AXLE, other.axle())))
        .withShocks(
            swapped(
                layout.shocks(),
                (one, other) ->
                    one.withPoint(End.FRAME, other.frame()).withPoint(End.AXLE, other.axle())));
  }

  private static <T> List<T> swapped(List<T> pair, BinaryOperator<T> placed) {
    assertEquals(2, pair.size());
    return List.of(placed.apply(pair.get(0), pair.get(1)), placed.apply(pair.get(1), pair.get(0)));
  }

  private static Chassis mirrored(Chassis chassis) {
    Masses masses = chassis.masses();
    return new Chassis(
        chassis.wheelbaseRightMm(),
        chassis.wheelbaseLeftMm(),
        new Masses(
            masses.frontAxleKg(),
            masses.rearRightKg(),
            masses.rearLeftKg(),
            masses.rearUnsprungKg(),
            masses.centreOfGravityHeightMm(),
            masses.frontRollNmmPerRad(),
            masses.frontWheelNPerMm(),
            masses.payload()),
        chassis.traction(),
        chassis.tyre(),
        chassis.axle(),
        chassis.rails(),
        mirrored(chassis.driveline()),
        List.of(),
        chassis.travel());
  }

  private static Driveline mirrored(Driveline driveline) {
    return new Driveline(
        driveline.pinionJoint().mirrored(),
        driveline.pinionAxis().mirrored(),
        driveline.transmissionJoint().mirrored(),
        driveline.transmissionAxis().mirrored(),
        driveline.shaftDiameterMm(),
        driveline.shaftWallMm(),
        driveline.slipEngagementMm(),
        driveline.slipRoomMm());
  }
}
