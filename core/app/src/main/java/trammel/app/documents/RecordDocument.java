package trammel.app.documents;

import trammel.brackets.work.TubeNeed;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.SectionCut;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;

/** The record of what was really built, to be filled in and kept with the vehicle's papers. */
public final class RecordDocument {
  private final JobPaper paper;
  private final FitUpSheet sheet;

  /**
   * @param paper the job
   * @param sheet where its brackets were to go
   */
  public RecordDocument(JobPaper paper, FitUpSheet sheet) {
    this.paper = paper;
    this.sheet = sheet;
  }

  /** The document. */
  public PaperDocument document() {
    DocumentModel model = paper.customerModel("As-built record");
    model.put("targets", targets());
    model.put("welds", welds());
    model.put("bolts", bolts());
    model.put("road", road());
    return paper.document("record", model);
  }

  private Grid targets() {
    Grid grid =
        new Grid("rlll", new int[] {15, 45, 20, 20}, "planned", "from where", "as built", "by");
    String group = "";
    for (Target target : sheet.targets()) {
      if (!target.group().equals(group)) {
        group = target.group();
        grid.group(group);
      }
      String value =
          target.kind() == QuantityKind.ANGLE
              ? paper.printer().angle(target.plan())
              : paper.printer().length(target.plan());
      grid.row(value, target.what(), "", "");
    }
    return grid;
  }

  private Grid welds() {
    Grid grid =
        new Grid(
            "llll", new int[] {40, 20, 20, 20}, "material", "heat or lot no.", "welder", "date");
    for (SectionCut cut : paper.estimate().materials().sections()) {
      StringBuilder names = new StringBuilder();
      for (TubeNeed need : cut.needs()) {
        names.append(names.length() == 0 ? "" : ", ").append(need.name());
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
