package trammel.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.app.motionfile.MotionFile;
import trammel.app.motionfile.MotionLayout;
import trammel.app.motionfile.MotionStudy;
import trammel.engine.geometry.Point3;
import trammel.engine.mechanism.BodyTurn;
import trammel.engine.mechanism.ElasticLink;
import trammel.engine.mechanism.ExactJoint;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.MechanismPose;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.RideFigures;
import trammel.engine.motion.ShaftReading;
import trammel.engine.motion.SpringPoint;
import trammel.engine.motion.SpringReading;
import trammel.engine.motion.TravelLimits;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.TextNode;

/** The motion of a bare linkage on a screen. */
public final class MotionText {
  private static final String NONE = "-";

  private final MotionFile file;
  private final MotionStudy study;
  private final MotionLayout layout;
  private final QuantityPrinter printer;

  /**
   * @param file what was read
   * @param study what came out
   * @param units the units of the reader
   */
  public MotionText(MotionFile file, MotionStudy study, UnitSystem units) {
    this.file = file;
    this.study = study;
    layout = study.layout();
    printer = new QuantityPrinter(units);
  }

  /** Heading, figures at ride, limits of travel, then every pose. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append(heading());
    text.append("\nAT RIDE\n").append(figures());
    text.append("\nLINKS at ride, from axle end to frame end\n").append(links());
    text.append("\nLIMITS OF TRAVEL within ")
        .append(length(file.travel().heaveMm()))
        .append(" of heave and ")
        .append(printer.angle(Math.toRadians(file.travel().rollDeg()), 1))
        .append(" of roll\n")
        .append(limits());
    if (!study.poses().isEmpty()) {
      text.append("\nPOSES, bump and left wheel up positive\n").append(poses());
      text.append("\nLENGTHS AND STRETCH at the poses\n").append(lengths());
    }
    return text.toString();
  }

  private String heading() {
    String name = word("name").orElse("linkage");
    Optional<String> title = word("title");
    String kind =
        layout.mechanism().closesExactly()
            ? "they close exactly: no bushing has to give"
            : "more links than freedoms: bushings give where a stretch is shown";
    return "MOTION "
        + name
        + (title.isPresent() ? "  " + title.get() : "")
        + "\n  "
        + parts()
        + "; "
        + kind
        + "\n";
  }

  private String parts() {
    Mechanism mechanism = layout.mechanism();
    return mechanism.links().size()
        + " links"
        + counted(mechanism.bodies().size(), "further body", "further bodies")
        + counted(mechanism.joints().size(), "exact joint", "exact joints")
        + counted(mechanism.bushes().size(), "bush", "bushes");
  }

  private static String counted(int count, String one, String more) {
    return count == 0 ? "" : ", " + count + " " + (count == 1 ? one : more);
  }

  private Optional<String> word(String key) {
    Optional<DocumentNode> node = file.document().find(key);
    return node.isPresent() && node.get() instanceof TextNode text
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }

  // Ride

  private String figures() {
    RideFigures figures = study.figures();
    double heightMm = layout.sprungCentreOfGravityHeightMm();
    Table table = new Table("lrl");
    Optional<Point3> centre = figures.instantCentreFromMotion();
    table.row(
        "instant centre",
        centre.isPresent() ? length(centre.get().xMm()) : "at infinity",
        centre.isPresent() ? "ahead, " + length(centre.get().zMm()) + " up" : "");
    table.row(
        "anti-squat",
        fixed(figures.antiSquatPercent(heightMm, layout.wheelbaseMm()), 1) + " %",
        "");
    table.row(
        "anti-lift braking",
        fixed(figures.antiLiftPercent(layout.frontBrakeShare(), heightMm, layout.wheelbaseMm()), 1)
            + " %",
        "");
    table.row("roll centre", length(figures.rollCentreHeightMm()), "up");
    table.row(
        "roll steer",
        fixed(100 * Math.abs(figures.rollSteerRadPerRad()), 2) + " %",
        figures.rollSteerSense().name().toLowerCase(Locale.ROOT));
    table.row("roll axis", printer.angle(figures.rollAxisAngleRad(), 2), "rising to the front +");
    springs(table);
    return table.text("  ");
  }

  private void springs(Table table) {
    if (layout.springs().isEmpty()) {
      return;
    }
    for (SpringReading spring : study.rates().springs()) {
      table.row(
          spring.name(),
          printer.rate(spring.rateNPerMm()),
          "motion ratio "
              + fixed(spring.motionRatioHeave(), 3)
              + " in heave, "
              + fixed(spring.motionRatioRoll(), 3)
              + " in roll");
    }
    table.row("wheel rate", printer.rate(study.rates().heaveNPerMm()), "each wheel");
    table.row(
        "roll stiffness", fixed(study.rates().rollNmPerDegree(), 1) + " Nm/deg", "of springs");
    table.row(
        "ride frequency",
        fixed(study.rates().rideFrequencyHz(layout.sprungMassPerCornerKg()), 3) + " Hz",
        "");
  }

  private String links() {
    Table table = new Table("lrrrr");
    table.row("", "length", "side view", "plan view", "elevation");
    for (LinkReading link : study.ride().links()) {
      table.row(
          link.name(),
          length(link.lengthMm()),
          angle(link.sideViewRad()),
          angle(link.planViewRad()),
          printer.angle(link.elevationRad(), 2));
    }
    return table.text("  ");
  }

  private String limits() {
    if (!layout.mechanism().closesExactly()) {
      return "  none is defined for links that bind: their bushings give instead\n";
    }
    TravelLimits limits = study.limits();
    Table table = new Table("lr");
    table.row("droop", limit(limits.heaveMinMm(), true));
    table.row("bump", limit(limits.heaveMaxMm(), true));
    table.row("left wheel down", limit(limits.rollMinRad(), false));
    table.row("left wheel up", limit(limits.rollMaxRad(), false));
    return table.text("  ");
  }

  private String limit(OptionalDouble limit, boolean heave) {
    if (limit.isEmpty()) {
      return "no limit in this range";
    }
    return heave ? length(limit.getAsDouble()) : printer.angle(limit.getAsDouble(), 2);
  }

  // Poses

  private String poses() {
    Table table = new Table("lrrrrrrrrrr");
    table.row(
        "set",
        "heave",
        "roll",
        "forward",
        "shift",
        "yaw",
        "nose up",
        "pinion",
        "front joint",
        "rear joint",
        "shaft");
    StringBuilder remarks = new StringBuilder();
    for (MotionStudy.Solved solved : study.poses()) {
      Optional<AxlePose> pose = solved.result().found();
      if (pose.isPresent()) {
        table.row(poseCells(solved, pose.get()));
      } else {
        table.row(missingCells(solved, 11));
        remarks.append("  ").append(solved.result().sentence()).append('\n');
      }
    }
    return table.text("  ") + remarks;
  }

  private String[] poseCells(MotionStudy.Solved solved, AxlePose pose) {
    Optional<ShaftReading> shaft = study.shaft(pose);
    return new String[] {
      solved.wanted().set(),
      length(pose.heaveMm()),
      printer.angle(pose.rollRad(), 1),
      length(pose.forwardMm()),
      length(pose.lateralMm()),
      printer.angle(pose.yawRad(), 3),
      printer.angle(pose.pitchNoseUpRad(), 2),
      shaft.isPresent() ? printer.angle(shaft.get().pinionElevationRad(), 2) : NONE,
      shaft.isPresent() ? printer.angle(shaft.get().frontJointRad(), 2) : NONE,
      shaft.isPresent() ? printer.angle(shaft.get().rearJointRad(), 2) : NONE,
      shaft.isPresent() ? length(shaft.get().lengthMm()) : NONE
    };
  }

  private String[] missingCells(MotionStudy.Solved solved, int columns) {
    String[] cells = new String[columns];
    for (int i = 0; i < columns; i++) {
      cells[i] = NONE;
    }
    cells[0] = solved.wanted().set();
    cells[1] = length(solved.wanted().heaveMm());
    cells[2] = printer.angle(Math.toRadians(solved.wanted().rollDeg()), 1);
    cells[3] = solved.result() instanceof PoseResult.OutOfReach ? "out of reach" : "not found";
    return cells;
  }

  private String lengths() {
    List<String> heads = new ArrayList<>(List.of("set", "heave", "roll"));
    for (FurtherBody body : layout.mechanism().bodies()) {
      heads.add(body.name() + " turns");
    }
    for (ExactJoint.Slide slide : slides()) {
      heads.add(slide.name() + " slides");
    }
    for (SpringPoint spring : layout.springs()) {
      heads.add(spring.name());
    }
    for (SpringPoint shock : layout.shocks()) {
      heads.add(shock.name());
    }
    boolean stretches = !layout.mechanism().closesExactly();
    if (stretches) {
      for (ElasticLink link : layout.mechanism().links()) {
        heads.add(link.name());
      }
    }
    Table table = new Table("l" + "r".repeat(heads.size() - 1));
    table.row(heads.toArray(new String[0]));
    for (MotionStudy.Solved solved : study.poses()) {
      table.row(
          solved.pose().isPresent()
              ? lengthCells(solved, solved.pose().get(), stretches)
              : missingLengths(solved, heads.size()));
    }
    return table.text("  ");
  }

  private String[] missingLengths(MotionStudy.Solved solved, int columns) {
    String[] cells = missingCells(solved, Math.max(4, columns));
    return columns < cells.length ? new String[] {cells[0], cells[1], cells[2]} : cells;
  }

  private List<ExactJoint.Slide> slides() {
    return layout.mechanism().joints().stream()
        .filter(ExactJoint.Slide.class::isInstance)
        .map(ExactJoint.Slide.class::cast)
        .toList();
  }

  private String[] lengthCells(MotionStudy.Solved solved, MechanismPose whole, boolean stretches) {
    AxlePose pose = whole.axle();
    List<String> cells = new ArrayList<>();
    cells.add(solved.wanted().set());
    cells.add(length(pose.heaveMm()));
    cells.add(printer.angle(pose.rollRad(), 1));
    for (BodyTurn turn : whole.turns()) {
      cells.add(printer.angle(turn.angleRad(), 2));
    }
    for (ExactJoint.Slide slide : slides()) {
      cells.add(length(whole.travelMm(slide)));
    }
    for (SpringPoint spring : layout.springs()) {
      cells.add(length(spring.lengthMm(pose)));
    }
    for (SpringPoint shock : layout.shocks()) {
      cells.add(length(shock.lengthMm(pose)));
    }
    if (stretches) {
      for (LinkReading link : whole.links()) {
        cells.add(length(link.stretchMm()));
      }
    }
    return cells.toArray(new String[0]);
  }

  // Values

  /** Hundredths of a millimetre or thousandths of an inch: a fraction would hide the motion. */
  private String length(double lengthMm) {
    return printer.decimalLength(lengthMm, 3);
  }

  private String angle(OptionalDouble angleRad) {
    return angleRad.isPresent() ? printer.angle(angleRad.getAsDouble(), 2) : NONE;
  }

  private static String fixed(double value, int places) {
    return Amounts.fixed(value, places);
  }
}
