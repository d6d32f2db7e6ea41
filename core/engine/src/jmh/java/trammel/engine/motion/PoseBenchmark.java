package trammel.engine.motion;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import trammel.engine.geometry.Point3;

/**
 * Time of a pose over a travel grid of 9,849 poses: heave -100 to 100 mm by 1 mm, roll -6 to 6
 * degrees by a quarter. Every figure is the time of one pose.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(1)
public class PoseBenchmark {

  private static final int HEAVES = 201;
  private static final int ROLLS = 49;
  private static final int POSES = HEAVES * ROLLS;

  private static final double INCH = 25.4;

  /** Invented layouts: four bars and a lateral bar, and triangulated upper bars. */
  @Param({"lateral bar", "triangulated"})
  private String layout;

  private PoseSolver solver;
  private Linkage linkage;
  private final double[] heavesMm = new double[HEAVES];
  private final double[] rollsRad = new double[ROLLS];

  /** Builds the linkage and the grid. */
  @Setup
  public void prepare() {
    linkage = layout.equals("triangulated") ? triangulated() : lateralBar();
    solver = new PoseSolver(linkage);
    for (int i = 0; i < HEAVES; i++) {
      heavesMm[i] = i - 100;
    }
    for (int j = 0; j < ROLLS; j++) {
      rollsRad[j] = Math.toRadians(0.25 * (j - 24));
    }
  }

  /** Each pose by itself, from nothing but heave and roll. */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void cold(Blackhole sink) {
    for (double roll : rollsRad) {
      for (double heave : heavesMm) {
        sink.consume(solver.solve(heave, roll));
      }
    }
  }

  /** Each pose from the one beside it. */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void neighbour(Blackhole sink) {
    for (double roll : rollsRad) {
      AxlePose pose = solver.solve(heavesMm[0], roll).required();
      for (double heave : heavesMm) {
        pose = solver.solveNear(pose, heave, roll).required();
        sink.consume(pose);
      }
    }
  }

  /** The grid as a whole. */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public PoseGrid grid() {
    return solver.sweep(heavesMm, rollsRad);
  }

  /** The grid, and the readings of all links at each of its poses. */
  @Benchmark
  @OperationsPerInvocation(POSES)
  public void gridWithLinks(Blackhole sink) {
    PoseGrid grid = solver.sweep(heavesMm, rollsRad);
    for (int j = 0; j < ROLLS; j++) {
      for (int i = 0; i < HEAVES; i++) {
        sink.consume(LinkReading.of(linkage, grid.result(i, j).required()));
      }
    }
  }

  private static Linkage lateralBar() {
    return new Linkage(
        60 * INCH,
        13 * INCH,
        List.of(
            link("lower_left", 25.25, 21, 10.5, 0.25, 21, 9.5),
            link("lower_right", 25.25, -21, 10.5, 0.25, -21, 9.5),
            link("upper_left", 18.5, 19, 15.25, 1, 19, 16.75),
            link("upper_right", 18.5, -19, 15.25, 1, -19, 16.75),
            link("lateral_bar", -6, 17, 15, -6, -16, 13)));
  }

  private static Linkage triangulated() {
    return new Linkage(
        58.5 * INCH,
        12.5 * INCH,
        List.of(
            link("lower_left", 19.5, 19, 9.75, 0, 19, 8.5),
            link("lower_right", 19.5, -19, 9.75, 0, -19, 8.5),
            link("upper_left", 13.5, 17, 15, -1, 6, 17),
            link("upper_right", 13.5, -17, 15, -1, -6, 17)));
  }

  private static Link link(
      String name, double fx, double fy, double fz, double ax, double ay, double az) {
    return new Link(
        name,
        LinkKind.LONGITUDINAL,
        new Point3(fx * INCH, fy * INCH, fz * INCH),
        new Point3(ax * INCH, ay * INCH, az * INCH),
        10000);
  }
}
