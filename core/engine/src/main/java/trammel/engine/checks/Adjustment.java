package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;

/** Something a fabricator can change on a layout by an amount, in steps that he can measure. */
public sealed interface Adjustment {

  /** 1/16 in, the step in which mounts are set (mm). */
  double MOUNT_STEP_MM = 25.4 / 16;

  /** A quarter of a degree, the step of an angle finder (rad). */
  double ANGLE_STEP_RAD = Math.toRadians(0.25);

  /** The layout with the change made. */
  Layout apply(Layout layout, double amount);

  /** The kind of quantity that the amount is; a length unless said otherwise. */
  default Measure measure() {
    return Measure.LENGTH;
  }

  /** The step in which the amount is given, above 0; that of mounts unless said otherwise. */
  default double step() {
    return MOUNT_STEP_MM;
  }

  /** The largest amount worth trying, above 0; 6 in unless said otherwise. */
  default double largest() {
    return 152.4;
  }

  /**
   * Moves one end of bars, springs or shocks that are named.
   *
   * @param names the parts whose ends move together
   * @param end which end
   * @param direction which way is positive
   */
  record MoveEnds(Set<String> names, End end, Direction direction) implements Adjustment {
    public MoveEnds {
      names = Set.copyOf(names);
    }

    @Override
    public Layout apply(Layout layout, double amount) {
      List<Bar> bars = new ArrayList<>(layout.bars().size());
      for (Bar bar : layout.bars()) {
        bars.add(
            names.contains(bar.name())
                ? bar.withPoint(end, direction.move(bar.point(end), amount))
                : bar);
      }
      List<SpringUnit> springs = new ArrayList<>(layout.springs().size());
      for (SpringUnit spring : layout.springs()) {
        springs.add(
            names.contains(spring.name())
                ? spring.withPoint(end, direction.move(spring.point(end), amount))
                : spring);
      }
      List<ShockUnit> shocks = new ArrayList<>(layout.shocks().size());
      for (ShockUnit shock : layout.shocks()) {
        shocks.add(
            names.contains(shock.name())
                ? shock.withPoint(end, direction.move(shock.point(end), amount))
                : shock);
      }
      return layout.withBars(bars).withSprings(springs).withShocks(shocks);
    }
  }

  /**
   * Moves bars that are named by both their ends.
   *
   * @param names the bars
   * @param direction which way is positive
   */
  record MoveBars(Set<String> names, Direction direction) implements Adjustment {
    public MoveBars {
      names = Set.copyOf(names);
    }

    @Override
    public Layout apply(Layout layout, double amount) {
      Layout half = new MoveEnds(names, End.FRAME, direction).apply(layout, amount);
      return new MoveEnds(names, End.AXLE, direction).apply(half, amount);
    }
  }

  /** Turns the pinion about the axle's line, nose up positive. */
  record TurnPinion() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      Chassis chassis = layout.chassis();
      return layout.withChassis(
          chassis.withDriveline(
              chassis.driveline().withPinionTurned(chassis.axleCentre(), amount)));
    }

    @Override
    public Measure measure() {
      return Measure.ANGLE;
    }

    @Override
    public double step() {
      return ANGLE_STEP_RAD;
    }

    @Override
    public double largest() {
      return Math.toRadians(15);
    }
  }

  /**
   * Shims the transmission about its output joint and turns the pinion with it, so that the two
   * stay as they are to each other; output higher at its front positive.
   */
  record TiltTransmission() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      Chassis chassis = layout.chassis();
      return layout.withChassis(
          chassis.withDriveline(
              chassis
                  .driveline()
                  .withTransmissionTilted(amount)
                  .withPinionTurned(chassis.axleCentre(), amount)));
    }

    @Override
    public Measure measure() {
      return Measure.ANGLE;
    }

    @Override
    public double step() {
      return ANGLE_STEP_RAD;
    }

    @Override
    public double largest() {
      return Math.toRadians(6);
    }
  }

  /** Asks for other bump travel, more being positive. */
  record ChangeBump() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      Travel travel = layout.chassis().travel();
      return layout.withChassis(
          layout.chassis().withTravel(new Travel(travel.bumpMm() + amount, travel.droopMm())));
    }

    @Override
    public double largest() {
      return 76.2;
    }
  }

  /** Asks for other droop travel, more being positive. */
  record ChangeDroop() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      Travel travel = layout.chassis().travel();
      return layout.withChassis(
          layout.chassis().withTravel(new Travel(travel.bumpMm(), travel.droopMm() + amount)));
    }

    @Override
    public double largest() {
      return 76.2;
    }
  }

  /**
   * Makes the driveshaft of another length, longer being positive: what the slip yoke gains in room
   * it loses in spline.
   */
  record ChangeShaft() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      Chassis chassis = layout.chassis();
      return layout.withChassis(
          chassis.withDriveline(chassis.driveline().withShaftLengthened(amount)));
    }
  }

  /** Fits springs of another rate; the amount is the change in N/mm. */
  record ChangeRate() implements Adjustment {
    /** 5 lb/in in N/mm, the step in which rates are offered. */
    private static final double STEP_N_PER_MM = 5 * 4.4482216152605 / 25.4;

    @Override
    public Layout apply(Layout layout, double amount) {
      List<SpringUnit> springs = new ArrayList<>(layout.springs().size());
      for (SpringUnit spring : layout.springs()) {
        springs.add(spring.withRate(spring.rateNPerMm() + amount));
      }
      return layout.withSprings(springs);
    }

    @Override
    public Measure measure() {
      return Measure.FACTOR;
    }

    @Override
    public double step() {
      return STEP_N_PER_MM;
    }

    @Override
    public double largest() {
      return 60 * STEP_N_PER_MM;
    }
  }

  /** Cuts the brackets of every bar from thicker plate. */
  record ThickenBrackets() implements Adjustment {
    @Override
    public Layout apply(Layout layout, double amount) {
      List<Bar> bars = new ArrayList<>(layout.bars().size());
      for (Bar bar : layout.bars()) {
        bars.add(
            bar.bracket().isPresent()
                ? bar.withBracket(bar.bracket().get().thickerBy(amount))
                : bar);
      }
      return layout.withBars(bars);
    }

    @Override
    public double largest() {
      return 3.175;
    }
  }

  /**
   * Fits one joint to all ends of bars whose joints are rated lower; done or not done, so the
   * amount is 1. A wider joint stands further from the rail: bars along the rails move away from
   * them by half of what the widest joint gains. Springs are placed anew beside such bars and
   * change the forces, so a fifth of the joint's rating is kept in reserve when it is tried.
   *
   * @param joint the joint to fit
   */
  record FitJoint(Joint joint) implements Adjustment {
    /** Share of the rating that a trial relies on: our own choice, held by the demo jobs only. */
    private static final double TRUSTED_SHARE = 0.8;

    @Override
    public Layout apply(Layout layout, double amount) {
      if (amount != 1) {
        throw new IllegalArgumentException("a joint is fitted or not; the amount is 1.");
      }
      List<Bar> bars = new ArrayList<>(layout.bars().size());
      for (Bar bar : layout.bars()) {
        bars.add(fitted(bar, layout.chassis().rails()));
      }
      return layout.withBars(bars);
    }

    private Bar fitted(Bar bar, Rails rails) {
      Bar after = bar.withJoints(better(bar.frameJoint()), better(bar.axleJoint()));
      if (bar.isAcross()) {
        return after;
      }
      double outMm = Math.abs(bar.frame().yMm());
      double awayMm = (widestMm(after) - widestMm(bar)) / 2;
      double byMm = outMm > rails.outerFaceMm(bar.frame().xMm()) ? awayMm : -awayMm;
      return after
          .withPoint(End.FRAME, Direction.OUTBOARD.move(bar.frame(), byMm))
          .withPoint(End.AXLE, Direction.OUTBOARD.move(bar.axle(), byMm));
    }

    private static double widestMm(Bar bar) {
      return Math.max(bar.frameJoint().widthMm(), bar.axleJoint().widthMm());
    }

    private Joint better(Joint fitted) {
      return fitted.workingN() < joint.workingN() ? joint.rated(TRUSTED_SHARE) : fitted;
    }

    @Override
    public Measure measure() {
      return Measure.FACTOR;
    }

    @Override
    public double step() {
      return 1;
    }

    @Override
    public double largest() {
      return 1;
    }
  }
}
