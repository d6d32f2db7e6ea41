package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.drawings.JointPicture;
import trammel.app.drawings.JointScene;
import trammel.app.drawings.PartWords;
import trammel.engine.geometry.Point3;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.FitUpSheet.FinderAngle;
import trammel.planning.fitup.Mount;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;

/**
 * The fit-up sheet bracket by bracket in the order of work: a picture of the joint, what to set it
 * to, what the finder reads along its part, room for what it became, and a line to sign.
 */
final class FitUpBlocks {
  private static final String BLANK = "";
  private static final int ANGLE_PLACES = 1;

  private final JobPaper paper;
  private final FitUpSheet sheet;
  private final PartWords words;
  private final JointScene scene;
  private final Map<String, Mount> mounts = new LinkedHashMap<>();

  FitUpBlocks(JobPaper paper, FitUpSheet sheet) {
    this.paper = paper;
    this.sheet = sheet;
    words = paper.words();
    scene = new JointScene(paper.scene().assembly());
    for (Mount mount : Mount.of(paper.draft().layout())) {
      mounts.put(mount.words(paper.draft().layout()), mount);
    }
  }

  /** The blocks; their pictures are put into the document. */
  List<Map<String, Object>> blocks(DocumentModel model) {
    Map<String, List<Target>> groups = new LinkedHashMap<>();
    for (Target target : sheet.inOrderOfWork()) {
      groups.computeIfAbsent(target.group(), unknown -> new ArrayList<>()).add(target);
    }
    List<Map<String, Object>> blocks = new ArrayList<>();
    List<Target> proofs = new ArrayList<>();
    groups.forEach(
        (group, targets) -> {
          if (mounts.containsKey(group)) {
            blocks.add(bracket(group, targets, model));
          } else if (targets.get(0).id().endsWith(".length") || group.equals("squareness")) {
            proofs.addAll(targets);
          } else {
            blocks.add(block(group + ", set under the frame", grid(targets), BLANK));
          }
        });
    blocks.add(block("bars and diagonals, which prove the brackets", proven(proofs), BLANK));
    return blocks;
  }

  private Map<String, Object> bracket(String group, List<Target> targets, DocumentModel model) {
    Mount mount = mounts.get(group);
    String number = paper.numbers().of(mount.part());
    Map<String, Object> block =
        block(
            words.in(group) + (number.isEmpty() ? "" : ", part no. " + number),
            grid(targets),
            sheet.angleOf(mount.part()).map(this::finder).orElse(BLANK));
    block.put(
        "joint",
        model.figure(
            picture(mount.point(paper.draft().layout())), "Picture of the " + words.in(group)));
    return block;
  }

  /** A joint between the rails is looked at from the middle, one beyond them from outside. */
  private JointPicture picture(Point3 joint) {
    double innerFaceMm = paper.draft().layout().chassis().rails().innerFaceMm(joint.xMm());
    boolean between = Math.abs(joint.yMm()) < innerFaceMm;
    return new JointPicture(scene, joint, joint.yMm() > 0 != between);
  }

  private static Map<String, Object> block(String title, Grid grid, String finder) {
    Map<String, Object> block = new LinkedHashMap<>();
    block.put("title", title);
    block.put("rows", grid.model());
    block.put("finder", finder);
    block.put("joint", BLANK);
    return block;
  }

  private String finder(FinderAngle angle) {
    return "Finder along "
        + words.in(angle.what())
        + ": "
        + paper.printer().angle(angle.onStandsRad(), ANGLE_PLACES)
        + " on the stands now, "
        + paper.printer().angle(angle.fromFrameRad(), ANGLE_PLACES)
        + " zeroed on the rail.";
  }

  private static Grid empty() {
    return new Grid(
        "brlll",
        new int[] {22, 18, 36, 12, 12},
        "set to",
        "within",
        "measured from where",
        "tacked",
        "again");
  }

  private Grid grid(List<Target> targets) {
    Grid grid = empty();
    for (Target target : targets) {
      add(grid, target, words.in(target.what()));
    }
    return grid;
  }

  private Grid proven(List<Target> targets) {
    Grid grid = empty();
    for (Target target : targets) {
      boolean bar = target.id().endsWith(".length");
      String what = bar ? target.group() + ", " + target.what() : target.what();
      add(grid, target, words.in(what));
    }
    return grid;
  }

  private void add(Grid grid, Target target, String what) {
    grid.row(
        value(target, target.plan()), "± " + value(target, target.tolerance()), what, BLANK, BLANK);
  }

  private String value(Target target, double value) {
    return target.kind() == QuantityKind.ANGLE
        ? paper.printer().angle(value)
        : paper.printer().length(value);
  }

  /** How the frame sits now against the road, in a sentence to check before anything is read. */
  String rake() {
    Optional<FinderAngle> rail = sheet.angles().stream().findFirst();
    return rail.map(
            angle ->
                "The frame must sit as it was measured: a finder along the rail's underside reads "
                    + paper.printer().angle(angle.onStandsRad(), ANGLE_PLACES)
                    + " now, rising to the front ("
                    + paper.printer().angle(angle.atRideRad(), ANGLE_PLACES)
                    + " at ride). Every angle \"on the stands now\" counts on it.")
        .orElse(BLANK);
  }
}
