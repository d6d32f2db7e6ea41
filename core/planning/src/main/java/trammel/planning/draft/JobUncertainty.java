package trammel.planning.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.uncertainty.BuildEffects;
import trammel.engine.uncertainty.ChassisEffects;
import trammel.engine.uncertainty.Effect;
import trammel.engine.uncertainty.Figure;
import trammel.engine.uncertainty.FigureOrigin;
import trammel.planning.job.Measured;
import trammel.planning.job.Weights;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * What is uncertain about a job: its measurements, as well as its instruments read and its repeats
 * agree, and what the shop makes, sets and tacks.
 */
public final class JobUncertainty {
  private static final double INCH_MM = 25.4;

  /** A bar is set to 1/32 in between its bolts: common practice, no source (mm). */
  private static final double BAR_LENGTH_MM = INCH_MM / 32;

  /** A mount is tacked to 1/16 in each way: common practice, no source (mm). */
  private static final double MOUNT_MM = INCH_MM / 16;

  /** The pinion is set to 1/4 deg: common practice, no source (rad). */
  private static final double PINION_RAD = Math.toRadians(0.25);

  /** The frame is set to its ride height to 1/8 in: common practice, no source (mm). */
  private static final double RIDE_HEIGHT_MM = INCH_MM / 8;

  /**
   * A centre of gravity that is only estimated may be 3 in off: common practice, no source (mm).
   */
  private static final double ESTIMATED_HEIGHT_MM = 3 * INCH_MM;

  /** One that is measured by lifting an axle, 1 in: from memory (mm). */
  private static final double MEASURED_HEIGHT_MM = INCH_MM;

  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);

  private final Layout layout;
  private final Measured measured;
  private final QuantityPrinter print;
  private final List<Figure> figures = new ArrayList<>();

  private JobUncertainty(Measured measured, Layout layout, UnitSystem units) {
    this.measured = measured;
    this.layout = layout;
    print = new QuantityPrinter(units);
  }

  /** The uncertain figures of a job, each with what it does to the layout. */
  public static List<Figure> figures(Draft draft) {
    return figures(draft.job().measured(), draft.layout(), draft.linkageSite().units());
  }

  /**
   * The uncertain figures of a vehicle that is measured and a layout that is to be built.
   *
   * @param measured what was measured, with the instruments' tolerances
   * @param layout the layout
   * @param units the units in which tolerances are told
   */
  static List<Figure> figures(Measured measured, Layout layout, UnitSystem units) {
    JobUncertainty job = new JobUncertainty(measured, layout, units);
    job.addMeasuredFrame();
    job.addMeasuredDriveline();
    job.addScales();
    job.addMade();
    return List.copyOf(job.figures);
  }

  private void addMeasuredFrame() {
    read("wheelbase.left", measured.wheelbase().left(), ChassisEffects.leftWheelbase());
    read("wheelbase.right", measured.wheelbase().right(), ChassisEffects.rightWheelbase());
    read(
        "rails.outside_at_axle",
        measured.rails().outsideAtAxle(),
        ChassisEffects.railWidthAtAxle());
    read(
        "rails.outside_at_front_mounts",
        measured.rails().outsideAtFrontMounts(),
        ChassisEffects.railWidthAtFront());
    // Everything else on the frame is measured from the floor and set down by what this one reads.
    Effect lower =
        ChassisEffects.railHeightAtFront()
            .and(1, ChassisEffects.transmissionJoint(UP))
            .and(1, ChassisEffects.obstacleHeight());
    read(
        "rails.underside_at_axle",
        measured.rails().undersideAtAxle(),
        (before, mm) -> lower.apply(before, -mm));
    read(
        "rails.underside_at_front_mounts",
        measured.rails().undersideAtFrontMounts(),
        ChassisEffects.railHeightAtFront());
    read("rake.on_stands", measured.rake().onStands(), rakeOnStands());
    read("tyre.loaded_radius", measured.tyre().loadedRadius(), BuildEffects.tyreLoadedRadius());
  }

  /** A rake that is read too small puts everything ahead of the axle too low at ride. */
  private Effect rakeOnStands() {
    double frontMm = layout.chassis().rails().frontMountsForwardMm();
    double jointMm = layout.chassis().driveline().transmissionJoint().xMm();
    double turns = measured.transmission().angle().from() == Datum.FRAME ? 0 : 1;
    Effect front = ChassisEffects.railHeightAtFront();
    return ((Effect) (before, rad) -> front.apply(before, frontMm * rad))
        .and(jointMm, ChassisEffects.transmissionJoint(UP))
        .and(turns, ChassisEffects.transmissionAngle());
  }

  private void addMeasuredDriveline() {
    MeasuredPosition joint = measured.transmission().joint();
    readJoint("transmission.joint.forward", joint.forward(), FORWARD);
    readJoint("transmission.joint.left", joint.left(), LEFT);
    readJoint("transmission.joint.up", joint.up(), UP);
    read(
        "transmission.angle",
        measured.transmission().angle().reading(),
        ChassisEffects.transmissionAngle());
    MeasuredPosition pinion = measured.axle().pinion();
    read("axle.pinion.forward", pinion.forward(), ChassisEffects.pinionJoint(FORWARD));
    read("axle.pinion.left", pinion.left(), ChassisEffects.pinionJoint(LEFT));
    read("axle.pinion.up", pinion.up(), ChassisEffects.pinionJoint(UP));
    if (measured.driveshaft().isPresent()) {
      double tapeMm = measured.tolerances().tapeMm();
      measuredWithin("driveshaft.slip_room", tapeMm, ChassisEffects.slipRoom());
      measuredWithin("driveshaft.slip_engagement", tapeMm, ChassisEffects.slipEngagement());
    }
  }

  private void readJoint(String field, Measurement reading, Vector3 direction) {
    read(field, reading, ChassisEffects.transmissionJoint(direction));
  }

  private void addScales() {
    Weights weights = measured.weights();
    read("weights.front_left", weights.frontLeft(), ChassisEffects.frontAxleMass());
    read("weights.front_right", weights.frontRight(), ChassisEffects.frontAxleMass());
    read("weights.rear_left", weights.rearLeft(), ChassisEffects.leftRearMass());
    read("weights.rear_right", weights.rearRight(), ChassisEffects.rightRearMass());
    double scalesKg = 2 * measured.tolerances().scalesKg();
    figures.add(
        Figure.within(
            field("weights.unsprung_rear"),
            FigureOrigin.MEASURED,
            "to " + print.mass(scalesKg) + ", weighed in parts",
            scalesKg,
            ChassisEffects.rearUnsprungMass()));
    double heightMm = weights.centreOfGravityMeasured() ? MEASURED_HEIGHT_MM : ESTIMATED_HEIGHT_MM;
    figures.add(
        Figure.within(
            field("weights.centre_of_gravity_height"),
            FigureOrigin.MEASURED,
            (weights.centreOfGravityMeasured() ? "measured to " : "estimated to ")
                + print.length(heightMm),
            heightMm,
            ChassisEffects.centreOfGravityHeight()));
  }

  private void addMade() {
    made(
        "pinion angle as set",
        PINION_RAD,
        print.angle(PINION_RAD, 2),
        ChassisEffects.pinionAngle());
    made(
        "ride height as set",
        RIDE_HEIGHT_MM,
        print.length(RIDE_HEIGHT_MM),
        BuildEffects.rideHeight());
    for (Bar bar : layout.bars()) {
      made(
          "length of " + bar.name(),
          BAR_LENGTH_MM,
          print.length(BAR_LENGTH_MM),
          BuildEffects.barLength(bar.name()));
    }
    addMounts(End.FRAME, "frame");
    addMounts(End.AXLE, "axle");
  }

  private void addMounts(End end, String side) {
    for (Bar bar : layout.bars()) {
      for (Direction way : Direction.values()) {
        if (end == End.AXLE || way != alongBar(bar)) {
          madeMount(side, bar.name(), way, BuildEffects.barMount(bar.name(), end, way));
        }
      }
    }
    for (Set<String> names : mounts(end).values()) {
      for (Direction way : Direction.values()) {
        madeMount(side, String.join(" and ", names), way, BuildEffects.mount(names, end, way));
      }
    }
  }

  /** The way in which the bar itself, by its length, says where its frame mount is tacked. */
  private static Direction alongBar(Bar bar) {
    return bar.isAcross() ? Direction.OUTBOARD : Direction.FORWARD;
  }

  private void madeMount(String side, String part, Direction way, Effect effect) {
    String shown =
        switch (way) {
          case FORWARD -> "fore and aft";
          case OUTBOARD -> "across";
          case UP -> "height";
        };
    String name = side + " mount of " + part + ", " + shown;
    made(name, MOUNT_MM, print.length(MOUNT_MM), effect);
  }

  /** The springs and shocks at each mount: a coil spring shares its shock's. */
  private Map<Point3, Set<String>> mounts(End end) {
    Map<Point3, Set<String>> mounts = new LinkedHashMap<>();
    for (SpringUnit spring : layout.springs()) {
      sharing(mounts, spring.point(end)).add(spring.name());
    }
    for (ShockUnit shock : layout.shocks()) {
      sharing(mounts, shock.point(end)).add(shock.name());
    }
    return mounts;
  }

  private static Set<String> sharing(Map<Point3, Set<String>> mounts, Point3 point) {
    Set<String> names = mounts.get(point);
    if (names == null) {
      names = new LinkedHashSet<>();
      mounts.put(point, names);
    }
    return names;
  }

  private void made(String name, double tolerance, String shown, Effect effect) {
    figures.add(Figure.within(name, FigureOrigin.MADE, "to " + shown, tolerance, effect));
  }

  private void measuredWithin(String field, double tapeMm, Effect effect) {
    figures.add(
        Figure.within(
            field(field), FigureOrigin.MEASURED, "to " + print.length(tapeMm), tapeMm, effect));
  }

  private void read(String field, Measurement reading, Effect effect) {
    String times = reading.count() == 1 ? "once" : reading.count() + " times";
    figures.add(
        new Figure(
            field(field),
            FigureOrigin.MEASURED,
            "to " + tolerance(reading) + ", read " + times,
            standardDeviation(reading),
            effect));
  }

  private String tolerance(Measurement reading) {
    if (reading.kind() == QuantityKind.ANGLE) {
      return print.angle(reading.tolerance(), 2);
    }
    return reading.kind() == QuantityKind.MASS
        ? print.mass(reading.tolerance())
        : print.length(reading.tolerance());
  }

  /**
   * Half the tolerance over the root of the number of readings; where the readings themselves
   * scatter more than that, the deviation of their mean.
   */
  static double standardDeviation(Measurement reading) {
    double root = Math.sqrt(reading.count());
    double squares = 0;
    for (double value : reading.readings()) {
      squares += (value - reading.mean()) * (value - reading.mean());
    }
    double scatter = reading.count() < 2 ? 0 : Math.sqrt(squares / (reading.count() - 1));
    return Math.max(reading.tolerance() / 2, scatter) / root;
  }

  private static String field(String path) {
    return "measured." + path;
  }
}
