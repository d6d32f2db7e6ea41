package trammel.planning.vehicle;

import java.util.Optional;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.planning.extension.Site;
import trammel.planning.job.Measured;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.QuantityPrinter;

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
   * @param measured how the driveline was found
   */
  public static WorkPlan plan(Layout layout, Site site, WorkPlan mounts, Measured measured) {
    return plan(layout, site, mounts, Optional.of(asFound(layout, measured)));
  }

  /** The work of a vehicle by itself, its driveline taken as found. */
  public static WorkPlan plan(Layout layout, Site site) {
    return plan(layout, site, new WorkPlan.Builder().build(), Optional.empty());
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
    QuantityPrinter print = new QuantityPrinter(site.units());
    LayoutAnalysis analysis = new LayoutAnalysis(layout, site.catalog().analysis());
    WorkPlan.Builder plan = new WorkPlan.Builder();
    new NotchWork(layout, site.catalog(), print).addTo(plan);
    new DrivelineWork(analysis, site.catalog(), print).addTo(plan, asFound);
    new ObstacleWork(analysis, print).addTo(plan);
    WorkPlan own = plan.build();
    return new WorkPlan.Builder()
        .add(new EveryJob(layout, print).work(mounts.plus(own).welds()))
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
