package trammel.bin;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.Check;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.motion.AxlePose;
import trammel.engine.uncertainty.UncertaintyResult;
import trammel.engine.uncertainty.UncertaintyStudy;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.draft.JobUncertainty;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Estimating;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.plugins.airspring.AirSpringMount;
import trammel.plugins.coilspring.CoilSpringMount;
import trammel.plugins.fourlinklateral.FourLinkLateral;
import trammel.plugins.triangulated.Triangulated;
import trammel.reading.quantity.UnitSystem;

/** Times of whole steps of the demo pickup's job, warm. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class JobBenchmark {
  private static final int SAMPLES = 2000;
  private static final long SEED = 1;
  private static final Set<String> BY_GEOMETRY =
      Set.of(
          "wheelbase-square",
          "lower-bar-angle",
          "upper-bar-angle",
          "lower-bar-match",
          "upper-bar-match",
          "lateral-bar-angle",
          "lateral-shift",
          "linkage-reach",
          "joint-misalignment",
          "bump-travel",
          "axle-to-rail",
          "spring-lean",
          "shock-travel-bump",
          "shock-travel-droop",
          "pinion-parallel",
          "front-joint-angle",
          "rear-joint-angle",
          "torsional-acceleration",
          "slip-room",
          "slip-engagement",
          "anti-squat",
          "roll-steer");

  private Catalog catalog;
  private Draft draft;
  private Judge geometry;

  /** Reads catalog and job and draws the layout. */
  @Setup
  public void draft() {
    Path catalogs = Path.of("..", "..", "catalogs");
    catalog = CatalogReader.read(List.of(catalogs.resolve("standard")));
    Extensions extensions =
        new Extensions(
            List.of(new FourLinkLateral(), new Triangulated()),
            List.of(new CoilSpringMount(), new AirSpringMount()));
    draft =
        new Drafting(extensions, catalog)
            .draft(
                JobReader.read(JobDocument.load(catalogs.resolve("demo").resolve("pickup.yaml"))),
                UnitSystem.US);
    Judge whole = draft.judge();
    List<Check> checks =
        whole.checks().stream().filter(check -> BY_GEOMETRY.contains(check.id())).toList();
    geometry = new Judge(checks, catalog.limits(), whole.settings());
  }

  /** The poses of the travel envelope, each wheel through its travel. */
  @Benchmark
  public List<AxlePose> envelope() {
    return new LayoutAnalysis(draft.layout(), catalog.analysis()).envelope();
  }

  /** What angles, lengths and travel alone tell: no load case, no clearance, no plan. */
  @Benchmark
  public List<CheckResult> verdictByGeometry() {
    return geometry.verdicts(draft.layout());
  }

  /** Every check under every load case and state, on the plan of the whole job; nothing tried. */
  @Benchmark
  public List<CheckResult> verdict() {
    return draft.judge().verdicts(draft.layout());
  }

  /** Every check, with changes tried for what is not good. */
  @Benchmark
  public List<CheckResult> fullCheck() {
    return draft.judge().judge(draft.layout());
  }

  /** Work plan, cutting plans, hours and price. */
  @Benchmark
  public Estimate estimate() {
    WorkPlan plan = draft.work();
    return new Estimating(
            catalog,
            catalog.shop().termsFor(draft.job().terms()),
            catalog.shop().hoursCorrelation())
        .estimate(draft, plan);
  }

  /** How sure the checks are, by 2,000 samples on both processors. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 2)
  @Measurement(iterations = 3)
  public UncertaintyResult uncertainty() {
    return new UncertaintyStudy(draft.judge(), JobUncertainty.figures(draft))
        .run(draft.layout(), SAMPLES, SEED);
  }
}
