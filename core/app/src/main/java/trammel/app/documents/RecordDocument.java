package trammel.app.documents;

import trammel.app.drawings.PartWords;
import trammel.brackets.work.TubeNeed;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.SectionCut;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;
import trammel.trade.welding.SeamEstimate;
import trammel.trade.welding.WeldSeam;

/** The record of what was really built, to be filled in and kept with the vehicle's papers. */
public final class RecordDocument {
  /** Deepest undercut in material under 1 in: 1/32 in (AWS D1.1, visual, from memory). */
  private static final double UNDERCUT_MM = 25.4 / 32;

  private final JobPaper paper;
  private final FitUpSheet sheet;
  private final PartWords words;

  /**
   * @param paper the job
   * @param sheet where its brackets were to go
   */
  public RecordDocument(JobPaper paper, FitUpSheet sheet) {
    this.paper = paper;
    this.sheet = sheet;
    words = paper.words();
  }

  /** The document. */
  public PaperDocument document() {
    DocumentModel model = paper.customerModel("As-built record");
    model.put("steps", steps());
    model.put("targets", targets());
    model.put("material", material());
    model.put("welds", welds());
    model.put("revisions", revisions());
    model.put("undercut", paper.printer().length(UNDERCUT_MM));
    model.put("bolts", bolts());
    model.put("road", road());
    return paper.document("record", model);
  }

  /** The order of work, each step with who did it and when. */
  private Grid steps() {
    Grid grid =
        new Grid("rlll", new int[] {6, 58, 20, 16}, "step", "what is done", "done by", "date");
    int step = 1;
    for (String what : OrderOfWork.of(paper)) {
      grid.row(Integer.toString(step++), what, "", "");
    }
    return grid;
  }

  /** Every line of the weld list, looked over by eye before paint. */
  private Grid welds() {
    Grid grid =
        new Grid(
            "brlllll",
            new int[] {7, 9, 20, 28, 14, 12, 10},
            "weld",
            "how many",
            "kind and size",
            "where",
            "good, or what was mended",
            "looked at by",
            "date");
    int number = 0;
    for (SeamEstimate line : paper.estimate().welds().lines()) {
      WeldSeam seam = line.seam();
      grid.row(
          WeldNumbers.of(number++),
          Integer.toString(seam.count()),
          seam.joint().title()
              + " "
              + paper.printer().length(seam.joint().sizeMm())
              + ", "
              + seam.place().title(),
          seam.name(),
          "",
          "",
          "");
    }
    return grid;
  }

  /** Changes to what was agreed, each signed by both before it is done. */
  static Grid revisions() {
    Grid grid =
        new Grid(
            "lllll",
            new int[] {8, 14, 44, 17, 17},
            "revision",
            "date",
            "what changes, its price and its days",
            "shop signs",
            "customer signs");
    for (String revision : new String[] {"A", "B", "C", "D"}) {
      grid.row(revision, "", "", "", "");
    }
    return grid;
  }

  private Grid targets() {
    Grid grid =
        new Grid("rlll", new int[] {15, 45, 20, 20}, "planned", "from where", "as built", "by");
    String group = "";
    for (Target target : sheet.inOrderOfWork()) {
      if (!target.group().equals(group)) {
        group = target.group();
        grid.group(words.in(group));
      }
      String value =
          target.kind() == QuantityKind.ANGLE
              ? paper.printer().angle(target.plan())
              : paper.printer().length(target.plan());
      grid.row(value, words.in(target.what()), "", "");
    }
    return grid;
  }

  private Grid material() {
    Grid grid =
        new Grid("llll", new int[] {40, 20, 20, 20}, "material", "heat or lot", "welder", "date");
    for (SectionCut cut : paper.estimate().materials().sections()) {
      StringBuilder names = new StringBuilder();
      for (TubeNeed need : cut.needs()) {
        names.append(names.length() == 0 ? "" : ", ").append(words.in(need.name()));
      }
      grid.row(cut.material().title() + ": " + names, "", "", "");
    }
    paper
        .estimate()
        .materials()
        .plates()
        .forEach(cut -> grid.row(cut.material().title(), "", "", ""));
    return grid;
  }

  private Grid bolts() {
    Grid grid =
        new Grid(
            "rlblll",
            new int[] {9, 26, 16, 18, 18, 13},
            "how many",
            "bolt",
            "torque, dry",
            "first",
            "after first drive",
            "by");
    for (BoltLine bolt : paper.estimate().materials().bolts()) {
      grid.row(
          Integer.toString(bolt.quantity()),
          bolt.size().title() + " x " + paper.printer().length(bolt.choice().lengthMm()),
          paper.printer().torque(bolt.torqueNmm()),
          "",
          "",
          "");
    }
    return grid;
  }

  private static Grid road() {
    Grid grid =
        new Grid(
            "llll", new int[] {46, 18, 18, 18}, "on the finished vehicle", "left", "right", "by");
    grid.row("ride height, ground to frame's underside at the axle", "", "", "");
    grid.row("weight on the rear wheel", "", "", "");
    grid.row("wheelbase", "", "", "");
    grid.row("shock or spring length at ride", "", "", "");
    grid.row("least room found over the whole travel, and where", "", "", "");
    grid.row("pinion angle and transmission angle, from level", "", "", "");
    grid.row("brake hose and lines free at full droop", "", "", "");
    return grid;
  }
}
