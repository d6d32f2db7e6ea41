package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.planning.draft.Draft;
import trammel.reading.quantity.QuantityKind;

/**
 * What the floor sets and measures: every bracket from the frame's and the axle's own datums, never
 * one from another, and angles as the finder reads them while the frame sits on its stands.
 *
 * @param targets what to set, bracket by bracket, then the axle
 * @param angles angles of bars and pinion as the finder reads them now
 * @param struts mock-up struts that hold the axle at ride while the brackets are set
 */
public record FitUpSheet(List<Target> targets, List<FinderAngle> angles, List<Strut> struts) {
  /** A bracket is set to 1/16 in from a datum: common practice, no source (mm). */
  public static final double PLACE_MM = 25.4 / 16;

  /** A rule or square held to a datum reads to 1/32 in: common practice, no source (mm). */
  private static final double RULE_MM = 25.4 / 32;

  /** A tape over a length, and from corner to corner, reads to 1/16 in: common practice (mm). */
  private static final double TAPE_MM = 25.4 / 16;

  private static final double DIAGONAL_MM = 25.4 / 8;
  private static final double ANGLE_RAD = Math.toRadians(0.5);

  /** The group of what is read on the axle itself. */
  private static final String AXLE = "axle";

  /**
   * A bar that runs less far along the vehicle than this share of its run across rises sideways.
   */
  private static final double MOSTLY_ACROSS = 0.25;

  public FitUpSheet {
    targets = List.copyOf(targets);
    angles = List.copyOf(angles);
    struts = List.copyOf(struts);
  }

  /**
   * An angle as the finder reads it that lies along a part: its rise over its own length in plan,
   * not over what of it is seen from the side.
   *
   * @param part name of the bar, spring or shock; empty for what is not one
   * @param what what it is laid along, and which way it rises
   * @param onStandsRad what the finder reads from level as the frame sits on its stands (rad)
   * @param fromFrameRad what it reads when it is zeroed on the rails' underside (rad)
   * @param atRideRad what it will read from level at ride (rad)
   */
  public record FinderAngle(
      String part, String what, double onStandsRad, double fromFrameRad, double atRideRad) {}

  /**
   * A strut in place of a shock.
   *
   * @param name the shock it stands in for
   * @param lengthMm distance between its holes (mm)
   */
  public record Strut(String name, double lengthMm) {}

  /** The sheet of a job. */
  public static FitUpSheet of(Draft draft) {
    double standsRad =
        draft.job().measured().rake().atRideRad()
            - draft.job().measured().rake().onStands().meanRad();
    return of(draft.layout(), standsRad, draft.job().measured().tolerances().angleFinderRad());
  }

  /**
   * The sheet of a layout.
   *
   * @param noseUpOnStandsRad how much higher the finder reads on the stands than at ride (rad)
   * @param finderRad how well the angle finder reads, either way (rad)
   */
  static FitUpSheet of(Layout layout, double noseUpOnStandsRad, double finderRad) {
    FrameAxes axes = FrameAxes.of(layout.chassis().rails());
    List<Target> targets = new ArrayList<>();
    for (Mount mount : Mount.of(layout)) {
      addPlace(targets, mount, layout, axes);
    }
    for (Bar bar : layout.bars()) {
      targets.add(
          new Target(
              bar.name() + ".length",
              bar.name(),
              "joint centre to joint centre",
              QuantityKind.LENGTH,
              bar.lengthMm(),
              RULE_MM,
              RULE_MM));
    }
    addDiagonals(targets, layout);
    addAxle(targets, layout, axes, noseUpOnStandsRad, finderRad);
    return new FitUpSheet(targets, angles(layout, axes, noseUpOnStandsRad), struts(layout));
  }

  private static void addPlace(List<Target> targets, Mount mount, Layout layout, FrameAxes axes) {
    Point3 origin = origin(mount.end(), layout.chassis());
    double[] place = axes.from(origin, mount.point(layout));
    boolean frame = mount.end() == End.FRAME;
    String[] what = {
      frame
          ? "ahead of the axle mark, along the rail; behind is minus"
          : "ahead of the axle tube's centre, along the rail; behind is minus",
      "left of the centre line; right is minus",
      frame
          ? "above the line of the rail's underside, square to it; below is minus"
          : "above the axle tube's centre, square to the rail; below is minus"
    };
    for (Axis axis : Axis.values()) {
      targets.add(
          new Target(
              mount.key() + "." + axis.word(),
              mount.words(layout),
              what[axis.ordinal()],
              QuantityKind.LENGTH,
              place[axis.ordinal()],
              PLACE_MM,
              RULE_MM));
    }
  }

  /** Where the places of one end are measured from. */
  static Point3 origin(End end, Chassis chassis) {
    return end == End.FRAME
        ? new Point3(0, 0, chassis.rails().undersideMm(0))
        : chassis.axleCentre();
  }

  /** From the frame end of each side's first long bar to the axle end of its twin. */
  private static void addDiagonals(List<Target> targets, Layout layout) {
    Optional<Diagonals> diagonals = Diagonals.of(layout);
    if (diagonals.isEmpty()) {
      return;
    }
    double leftMm = diagonals.get().leftToRightMm(layout);
    double rightMm = diagonals.get().rightToLeftMm(layout);
    targets.add(
        diagonal(
            "diagonal.left-to-right", diagonals.get().left(), diagonals.get().right(), leftMm));
    targets.add(
        diagonal(
            "diagonal.right-to-left", diagonals.get().right(), diagonals.get().left(), rightMm));
  }

  private static Target diagonal(String id, String frameOf, String axleOf, double lengthMm) {
    return new Target(
        id,
        "squareness",
        "frame joint of " + frameOf + " to axle joint of " + axleOf,
        QuantityKind.LENGTH,
        lengthMm,
        DIAGONAL_MM,
        TAPE_MM);
  }

  private static void addAxle(
      List<Target> targets,
      Layout layout,
      FrameAxes axes,
      double noseUpOnStandsRad,
      double finderRad) {
    Chassis chassis = layout.chassis();
    for (AxleReading reading : AxleReading.values()) {
      boolean angle = reading == AxleReading.PINION_ANGLE;
      double plan = reading.plan(chassis, axes);
      targets.add(
          new Target(
              reading.id(),
              AXLE,
              reading.what(),
              angle ? QuantityKind.ANGLE : QuantityKind.LENGTH,
              angle ? plan + noseUpOnStandsRad : plan,
              angle ? ANGLE_RAD : PLACE_MM,
              angle ? finderRad : TAPE_MM));
    }
  }

  /** The rail first: whoever reads it off first knows that the frame still sits as it did. */
  private static List<FinderAngle> angles(Layout layout, FrameAxes axes, double noseUpOnStandsRad) {
    Finder finder = new Finder(axes.along(), noseUpOnStandsRad);
    List<FinderAngle> angles = new ArrayList<>();
    angles.add(finder.along("", "rail's underside, rising to the front", axes.along()));
    for (Bar bar : layout.bars()) {
      Vector3 toFrame = bar.axle().to(bar.frame());
      boolean across = Math.abs(toFrame.x()) < Math.abs(toFrame.y()) * MOSTLY_ACROSS;
      boolean turned = across ? toFrame.y() < 0 : toFrame.x() < 0;
      angles.add(
          finder.along(
              bar.name(),
              bar.name() + ", rising to the " + (across ? "left" : "front"),
              toFrame.scaled(turned ? -1 : 1)));
    }
    for (ShockUnit shock : layout.shocks()) {
      angles.add(
          finder.along(
              shock.name(),
              "strut in place of " + shock.name() + ", standing up",
              shock.axle().to(shock.frame())));
    }
    double pinionRad = layout.chassis().driveline().pinionAngleRad();
    angles.add(
        finder.along(
            "", "pinion, nose up", new Vector3(Math.cos(pinionRad), 0, Math.sin(pinionRad))));
    return angles;
  }

  /** The angle of one part, if the finder can be laid along it. */
  public Optional<FinderAngle> angleOf(String part) {
    return angles.stream().filter(angle -> angle.part().equals(part)).findFirst();
  }

  /**
   * The targets as the work goes: brackets on the axle while it is on the bench, the axle set under
   * the frame, brackets on the frame, and last the bars and the diagonals that prove them.
   */
  public List<Target> inOrderOfWork() {
    return targets.stream().sorted(Comparator.comparingInt(FitUpSheet::stage)).toList();
  }

  private static int stage(Target target) {
    String id = target.id();
    if (id.contains(".axle.")) {
      return 0;
    }
    if (target.group().equals(AXLE)) {
      return 1;
    }
    return id.contains(".frame.") ? 2 : 3;
  }

  private static List<Strut> struts(Layout layout) {
    List<Strut> struts = new ArrayList<>();
    for (ShockUnit shock : layout.shocks()) {
      struts.add(new Strut(shock.name(), shock.lengthMm()));
    }
    return struts;
  }
}
