package trammel.engine.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.engine.checks.Adjustment;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Tyre;

/** Effects of how a layout is built, and of the axle standing higher or lower. Lengths in mm. */
public final class BuildEffects {
  private static final Vector3 UP = new Vector3(0, 0, 1);

  private BuildEffects() {}

  /**
   * A bar is made longer. The axle is set where it belongs and the bracket on the frame is tacked
   * to the bar, so that its frame end moves out along the bar.
   *
   * @param name name of the bar
   */
  public static Effect barLength(String name) {
    return (layout, mm) -> {
      List<Bar> bars = new ArrayList<>(layout.bars());
      bars.replaceAll(bar -> bar.name().equals(name) ? longer(bar, mm) : bar);
      return layout.withBars(bars);
    };
  }

  private static Bar longer(Bar bar, double mm) {
    Vector3 along = bar.axle().to(bar.frame()).normalized();
    return bar.withPoint(End.FRAME, bar.frame().plus(along.scaled(mm)));
  }

  /**
   * A mount of a bar is tacked elsewhere. The bar keeps the length it was made to: its frame end
   * gives way along it, because the last bracket is tacked to the bar.
   *
   * @param name name of the bar
   * @param end which end
   * @param direction which way is positive
   */
  public static Effect barMount(String name, End end, Direction direction) {
    return (layout, mm) -> {
      List<Bar> bars = new ArrayList<>(layout.bars());
      bars.replaceAll(bar -> bar.name().equals(name) ? tacked(bar, end, direction, mm) : bar);
      return layout.withBars(bars);
    };
  }

  private static Bar tacked(Bar bar, End end, Direction direction, double mm) {
    Bar moved = bar.withPoint(end, direction.move(bar.point(end), mm));
    return longer(moved, bar.lengthMm() - moved.lengthMm());
  }

  /**
   * Mounts of springs and shocks are tacked elsewhere.
   *
   * @param names the springs and shocks that share the mount
   * @param end which end
   * @param direction which way is positive
   */
  public static Effect mount(Set<String> names, End end, Direction direction) {
    return new Adjustment.MoveEnds(names, end, direction)::apply;
  }

  /**
   * The loaded tyre is higher. The frame is set to its ride height all the same, so that the axle
   * with all that is welded to it stands higher under it.
   */
  public static Effect tyreLoadedRadius() {
    return BuildEffects::withTyreHigher;
  }

  /** The frame, with all that is fixed to it, is set higher over the axle and the road. */
  public static Effect rideHeight() {
    return ChassisEffects.railHeightAtAxle()
        .and(1, ChassisEffects.railHeightAtFront())
        .and(1, ChassisEffects.transmissionJoint(UP))
        .and(1, ChassisEffects.obstacleHeight())
        .and(1, BuildEffects::withFrameMountsHigher);
  }

  private static Layout withFrameMountsHigher(Layout layout, double mm) {
    return withMountsHigher(layout, End.FRAME, mm);
  }

  private static Layout withMountsHigher(Layout layout, End end, double mm) {
    List<Bar> bars = new ArrayList<>(layout.bars());
    bars.replaceAll(bar -> bar.withPoint(end, Direction.UP.move(bar.point(end), mm)));
    List<SpringUnit> springs = new ArrayList<>(layout.springs());
    springs.replaceAll(spring -> spring.withPoint(end, Direction.UP.move(spring.point(end), mm)));
    List<ShockUnit> shocks = new ArrayList<>(layout.shocks());
    shocks.replaceAll(shock -> shock.withPoint(end, Direction.UP.move(shock.point(end), mm)));
    return layout.withBars(bars).withSprings(springs).withShocks(shocks);
  }

  private static Layout withTyreHigher(Layout layout, double mm) {
    Chassis chassis = layout.chassis();
    double loadedMm = chassis.tyre().loadedRadiusMm() + mm;
    Tyre tyre =
        new Tyre(
            Math.max(chassis.tyre().freeRadiusMm(), loadedMm), loadedMm, chassis.tyre().widthMm());
    Driveline old = chassis.driveline();
    Driveline driveline =
        new Driveline(
            old.pinionJoint().plus(UP.scaled(mm)),
            old.pinionAxis(),
            old.transmissionJoint(),
            old.transmissionAxis(),
            old.shaftDiameterMm(),
            old.shaftWallMm(),
            old.slipEngagementMm(),
            old.slipRoomMm());
    return withMountsHigher(
        layout.withChassis(chassis.withTyre(tyre).withDriveline(driveline)), End.AXLE, mm);
  }
}
