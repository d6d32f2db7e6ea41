package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.checks.Detail;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.NewShaft;
import trammel.planning.draft.TransmissionShim;
import trammel.planning.job.BoxedStretch;
import trammel.planning.job.Obstacle;
import trammel.planning.job.ObstacleKind;
import trammel.planning.options.JointPair;

/**
 * Mends what can be worked out without a search: the shaft's length, the transmission's shims, the
 * axle's square, what is moved out of the way, joints and plates that are too weak.
 */
final class Mending {
  static final String SHAFT_LONGER = "chosen.shaft_longer";
  static final String SHAFT_TUBE = "chosen.shaft_tube";
  static final String TRANSMISSION_ANGLE = "chosen.transmission_angle";
  static final String PINION_ANGLE = "chosen.pinion_angle";
  static final String WHEELBASE = "chosen.wheelbase";
  static final String MOVED_AWAY = "chosen.moved_away";
  static final String FRAME_END = Dials.LINKAGE_OPTIONS + ".frame_end";
  static final String AXLE_END = Dials.LINKAGE_OPTIONS + ".axle_end";

  private static final String BOXED_BEHIND = "chosen.boxing.behind";
  private static final String BOXED_AHEAD = "chosen.boxing.ahead";
  private static final String BRACKET_PLATE = Dials.LINKAGE_OPTIONS + ".bracket_plate";
  private static final double INCH_MM = 25.4;

  /** Kept off a limit of lengths, 1/16 in. */
  private static final double CLEAR_MM = INCH_MM / 16;

  /** Share of a joint's rating that is relied on when it is chosen. */
  private static final double TRUSTED_SHARE = 0.95;

  private static final double SAME_PLATE_MM = 0.1;

  private final TrialBench bench;
  private final Wishes wishes;
  private final ShopStep step;
  private final Catalog catalog;

  Mending(TrialBench bench, Wishes wishes, ShopStep step, Catalog catalog) {
    this.bench = bench;
    this.wishes = wishes;
    this.step = step;
    this.catalog = catalog;
  }

  /** The changes of a trial with all that can be mended at once; its own where nothing can. */
  Edits mended(Trial trial) {
    if (trial.draft().isEmpty()) {
      return trial.edits();
    }
    Draft draft = trial.draft().get();
    Edits edits = trial.edits();
    for (Judge.Finding finding : trial.open()) {
      edits =
          switch (finding.check().id()) {
            case "slip-room", "slip-engagement" -> shaft(edits, finding);
            case "shaft-critical-speed" -> stouter(edits, draft, finding);
            case "wheelbase-square" -> square(edits, draft, finding);
            case "bump-travel" -> bump(edits, finding);
            case "front-joint-angle", "rear-joint-angle" -> tilted(edits, draft, finding);
            case "pinion-parallel" -> parallel(edits, draft, finding);
            case "clearance-obstacles" -> movedAway(edits, draft, finding);
            case "joint-rating",
                "joint-rating-hard",
                "joint-rating-loaded",
                "bolt-strength",
                "bolt-strength-hard" ->
                jointed(edits, draft, finding);
            case "bracket-tabs", "bracket-welds", "bracket-tabs-hard", "bracket-welds-hard" ->
                plated(edits, draft, finding);
            case "rail-twist", "rail-twist-hard", "rail-twist-loaded" ->
                boxed(edits, draft, finding);
            default -> edits;
          };
    }
    return edits;
  }

  private Edits put(Edits edits, String path, String text, Judge.Finding finding) {
    return wishes.keeps(path) ? edits : edits.with(path, text, reason(finding));
  }

  /** Why a change is made: the check that asked for it. */
  static String reason(Judge.Finding finding) {
    return (finding.verdict() == Verdict.STOP ? "STOP: " : "look again: ")
        + finding.check().title();
  }

  private Optional<String> written(Edits edits, String path) {
    Optional<String> edited = edits.text(path);
    return edited.isPresent() ? edited : Dials.written(bench.document(), path);
  }

  private Edits shaft(Edits edits, Judge.Finding finding) {
    double lackMm = finding.limit().goodMin() - finding.value() + CLEAR_MM;
    double moreMm = step.up(Dial.Kind.LENGTH, lackMm);
    double wasMm =
        written(edits, SHAFT_LONGER).map(text -> step.value(Dial.Kind.LENGTH, text)).orElse(0.0);
    double longerMm = wasMm + (finding.check().id().equals("slip-room") ? -moreMm : moreMm);
    return put(edits, SHAFT_LONGER, step.text(Dial.Kind.LENGTH, longerMm), finding);
  }

  /** A shaft of the slenderest tube that does not whirl; one of two pieces is not planned. */
  private Edits stouter(Edits edits, Draft draft, Judge.Finding finding) {
    if (draft.job().measured().driveshaft().flatMap(shaft -> shaft.centreJoint()).isPresent()) {
      return edits;
    }
    return NewShaft.slenderest(
            draft.layout().chassis(),
            catalog.shaftTubes().values(),
            draft.judge().settings(),
            finding.limit().goodMin())
        .map(tube -> put(edits, SHAFT_TUBE, tube.key(), finding))
        .orElse(edits);
  }

  /** Open rails that mounts twist, closed further. */
  private Edits boxed(Edits edits, Draft draft, Judge.Finding finding) {
    Optional<BoxedStretch> wider = new BoxingReach(draft).next(finding);
    if (wider.isEmpty() || wishes.keeps(BOXED_BEHIND) || wishes.keeps(BOXED_AHEAD)) {
      return edits;
    }
    return put(
        put(edits, BOXED_BEHIND, length(wider.get().behindMm()), finding),
        BOXED_AHEAD,
        length(wider.get().aheadMm()),
        finding);
  }

  /** A length in whole steps, as it stands in a job file. */
  private String length(double lengthMm) {
    return step.text(Dial.Kind.LENGTH, step.stepped(Dial.Kind.LENGTH, lengthMm));
  }

  private Edits square(Edits edits, Draft draft, Judge.Finding finding) {
    double middleMm = draft.layout().chassis().wheelbaseMm();
    double steppedMm = step.stepped(Dial.Kind.LENGTH, middleMm);
    return put(edits, WHEELBASE, step.text(Dial.Kind.LENGTH, steppedMm), finding);
  }

  private Edits bump(Edits edits, Judge.Finding finding) {
    double wantedMm = step.up(Dial.Kind.LENGTH, finding.limit().goodMin());
    return put(edits, Dials.BUMP, step.text(Dial.Kind.LENGTH, wantedMm), finding);
  }

  private Edits parallel(Edits edits, Draft draft, Judge.Finding finding) {
    double angleRad = draft.layout().chassis().driveline().transmissionAngleRad();
    double steppedRad = step.stepped(Dial.Kind.ANGLE, angleRad);
    return put(edits, PINION_ANGLE, step.text(Dial.Kind.ANGLE, steppedRad), finding);
  }

  /** Transmission and pinion turned alike, by no more than brings both joints into their range. */
  private Edits tilted(Edits edits, Draft draft, Judge.Finding finding) {
    Optional<Double> wantedRad =
        TransmissionShim.angleRad(draft.layout().chassis(), finding.limit());
    if (wantedRad.isEmpty()) {
      return edits;
    }
    String angle = step.text(Dial.Kind.ANGLE, wantedRad.get());
    Edits tilted = put(edits, TRANSMISSION_ANGLE, angle, finding);
    return written(edits, PINION_ANGLE).isPresent()
        ? put(tilted, PINION_ANGLE, angle, finding)
        : tilted;
  }

  /**
   * All that is struck at once: with one of two moved away the check may say the same as before.
   */
  private Edits movedAway(Edits edits, Draft draft, Judge.Finding finding) {
    List<String> moved = new ArrayList<>(draft.job().chosen().movedAway());
    List<Detail> struck =
        finding.check().details(new LayoutAnalysis(draft.layout(), draft.judge().settings()));
    for (Obstacle obstacle : draft.job().measured().obstacles()) {
      boolean isStruck =
          finding.where().mentions(obstacle.name())
              || struck.stream().anyMatch(one -> one.words().contains("the " + obstacle.name()));
      if (isMovable(obstacle) && isStruck && !moved.contains(obstacle.name())) {
        moved.add(obstacle.name());
      }
    }
    return moved.size() == draft.job().chosen().movedAway().size()
        ? edits
        : put(edits, MOVED_AWAY, list(moved), finding);
  }

  static boolean isMovable(Obstacle obstacle) {
    return obstacle.kind() == ObstacleKind.EXHAUST
        || obstacle.kind() == ObstacleKind.TANK
        || obstacle.kind() == ObstacleKind.BED_FLOOR;
  }

  /** Names as a list of a job file; quotes keep signs that mean something there. */
  static String list(List<String> names) {
    return names.stream()
        .map(
            name ->
                name.matches("[A-Za-z][A-Za-z0-9 -]*")
                    ? name
                    : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"')
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** The weakest pair of joints that is strong enough, else the strongest. */
  private Edits jointed(Edits edits, Draft draft, Judge.Finding finding) {
    if (wishes.keeps(FRAME_END) || wishes.keeps(AXLE_END)) {
      return edits;
    }
    double workingN = JointPair.of(draft.linkageSite()).map(JointPair::workingN).orElse(0.0);
    boolean isShare = finding.check().id().startsWith("joint-rating");
    double neededN =
        isShare
            ? workingN * finding.value() / (TRUSTED_SHARE * finding.limit().goodMax())
            : workingN * 1.01;
    List<JointPair> stronger =
        JointPair.all(catalog).stream().filter(pair -> pair.workingN() > workingN).toList();
    Optional<JointPair> enough =
        stronger.stream()
            .filter(pair -> pair.workingN() >= neededN)
            .findFirst()
            .or(() -> stronger.stream().reduce((first, second) -> second));
    if (workingN == 0 || enough.isEmpty()) {
      return edits;
    }
    return put(
        put(edits, FRAME_END, enough.get().frame().key(), finding),
        AXLE_END,
        enough.get().axle().key(),
        finding);
  }

  /** Brackets of the next thicker plate. */
  private Edits plated(Edits edits, Draft draft, Judge.Finding finding) {
    double wasMm =
        draft.layout().bars().stream()
            .filter(bar -> bar.bracket().isPresent())
            .mapToDouble(bar -> bar.bracket().get().thicknessMm())
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    Optional<PlateMaterial> thicker =
        catalog.plates().values().stream()
            .filter(plate -> plate.form().thicknessMm() > wasMm + SAME_PLATE_MM)
            .min(
                (one, other) ->
                    Double.compare(one.form().thicknessMm(), other.form().thicknessMm()));
    return thicker.isPresent() ? put(edits, BRACKET_PLATE, thicker.get().key(), finding) : edits;
  }
}
