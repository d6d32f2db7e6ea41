package trammel.planning.vehicle;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.ShaftTube;
import trammel.planning.extension.Site;
import trammel.planning.job.Job;
import trammel.planning.job.Measured;
import trammel.planning.job.Obstacle;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredAngle;
import trammel.trade.plates.Arc;
import trammel.trade.plates.NotchPlate;

/** What the vehicle itself asks for. */
public final class VehicleWork {
  private VehicleWork() {}

  /**
   * The work of a vehicle whose bars and springs are planned already.
   *
   * @param layout the finished layout
   * @param site catalog and units; its chassis and options are not looked at
   * @param mounts the work of its linkage and springs, whose welds are to be dressed and whose
   *     reasons are not repeated here
   * @param job how the driveline was found, and what is moved out of the way
   */
  public static WorkPlan plan(Layout layout, Site site, WorkPlan mounts, Job job) {
    Measured measured = job.measured();
    Set<String> names = Set.copyOf(job.chosen().movedAway());
    List<Obstacle> movedAway =
        measured.obstacles().stream().filter(one -> names.contains(one.name())).toList();
    return plan(
        layout,
        site,
        mounts,
        new ChosenWork(
            Optional.of(asFound(layout, measured)),
            newShaft(layout, site.catalog(), job),
            job.chosen().shaftLongerMm(),
            shimRad(layout, job),
            movedAway));
  }

  /**
   * The arc that is cut out of each rail over the axle: x along the rail from the middle of the
   * notch, y up from the rail's lower edge; empty where there is no notch.
   *
   * @throws IllegalArgumentException where the notch leaves too little of the rail
   */
  public static Optional<Arc> notch(Layout layout, Site site) {
    return new NotchWork(layout, site.catalog()).notch().map(NotchPlate::cut);
  }

  /** The work of a vehicle by itself, its driveline taken as found. */
  public static WorkPlan plan(Layout layout, Site site) {
    return plan(layout, site, new WorkPlan.Builder().build(), Optional.empty());
  }

  /** The driveshaft of the catalog whose tube the layout has and the vehicle has not. */
  private static Optional<ShaftTube> newShaft(Layout layout, Catalog catalog, Job job) {
    Driveline driveline = layout.chassis().driveline();
    boolean isAsMeasured =
        job.measured()
            .driveshaft()
            .filter(shaft -> isTube(driveline, shaft.tubeDiameterMm(), shaft.tubeWallMm()))
            .isPresent();
    return isAsMeasured && job.chosen().shaftTube().isEmpty()
        ? Optional.empty()
        : catalog.shaftTubes().values().stream()
            .filter(tube -> isTube(driveline, tube.outsideMm(), tube.wallMm()))
            .findFirst();
  }

  private static boolean isTube(Driveline driveline, double outsideMm, double wallMm) {
    return driveline.shaftDiameterMm().equals(OptionalDouble.of(outsideMm))
        && driveline.shaftWallMm().equals(OptionalDouble.of(wallMm));
  }

  /** How far the transmission is tilted from where it was found, front up positive (rad). */
  private static double shimRad(Layout layout, Job job) {
    MeasuredAngle read = job.measured().transmission().angle();
    double onStandsRad = job.measured().rake().onStands().meanRad();
    double fromLevelRad =
        read.from() == Datum.FRAME ? read.meanRad() - onStandsRad : read.meanRad();
    double foundRad = fromLevelRad + onStandsRad - job.measured().rake().atRideRad();
    return layout.chassis().driveline().transmissionAngleRad() - foundRad;
  }

  /**
   * The work of a vehicle.
   *
   * @param layout the finished layout
   * @param site catalog and units; its chassis and options are not looked at
   * @param mounts the work of linkage and springs
   * @param asFound the driveline with the pinion as it was found, if it is known
   */
  public static WorkPlan plan(
      Layout layout, Site site, WorkPlan mounts, Optional<Driveline> asFound) {
    return plan(layout, site, mounts, new ChosenWork(asFound, Optional.empty(), 0, 0, List.of()));
  }

  private static WorkPlan plan(Layout layout, Site site, WorkPlan mounts, ChosenWork chosen) {
    LayoutAnalysis analysis = new LayoutAnalysis(layout, site.catalog().analysis());
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new NotchWork(layout, site.catalog()).addTo(plan);
    new DrivelineWork(analysis, site.catalog()).addTo(plan, chosen);
    new ObstacleWork(analysis, mounts.plus(plan.build()).welds()).addTo(plan, chosen.movedAway());
    WorkPlan own = plan.build();
    return new WorkPlan.Builder()
        .add(new EveryJob(layout).work(mounts.plus(own).welds()))
        .add(own)
        .build();
  }

  /** The driveline of a layout with its pinion turned back to where it was read. */
  private static Driveline asFound(Layout layout, Measured measured) {
    MeasuredAngle read = measured.axle().pinionAngle();
    double readRad =
        read.from() == Datum.FRAME
            ? read.meanRad() - measured.rake().onStands().meanRad()
            : read.meanRad();
    Driveline now = layout.chassis().driveline();
    return now.withPinionTurned(layout.chassis().axleCentre(), readRad - now.pinionAngleRad());
  }
}
