package trammel.app.documents;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.NestPicture;
import trammel.app.drawings.PlateBoard;
import trammel.app.drawings.StickPicture;
import trammel.app.text.Amounts;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.sheets.CutSheet;
import trammel.planning.drawings.NestDrawing;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;

/** What to saw and what to cut, with pictures. */
public final class CutDocument {
  private final JobPaper paper;
  private final DocumentModel model;

  /**
   * @param paper the job
   */
  public CutDocument(JobPaper paper) {
    this.paper = paper;
    model = paper.model("Cut lists");
  }

  /** The document. */
  public PaperDocument document() {
    List<Map<String, Object>> sections = new ArrayList<>();
    for (SectionCut cut : paper.estimate().materials().sections()) {
      sections.add(section(cut));
    }
    model.put("sections", sections);
    List<Map<String, Object>> plates = new ArrayList<>();
    for (PlateCut cut : paper.estimate().materials().plates()) {
      plates.add(plate(cut));
    }
    model.put("plates", plates);
    return paper.document("cut", model);
  }

  private Map<String, Object> section(SectionCut cut) {
    Grid grid =
        new Grid("rblrl", new int[] {7, 16, 26, 7, 44}, "", "saw to", "part", "no.", "ends");
    for (TubeNeed need : cut.needs()) {
      grid.row(
          Integer.toString(need.quantity()),
          paper.printer().length(need.cutLengthMm()),
          paper.words().in(need.name()),
          paper.numbers().of(need.name()),
          need.ends().in(paper.printer()));
    }
    Map<String, Object> section = new LinkedHashMap<>();
    section.put("material", cut.material().title());
    section.put("lines", grid.model());
    section.put(
        "sticks",
        model.figure(
            new StickPicture(cut.plan().bars(), paper.printer()),
            "Sticks of " + cut.material().title() + " and where each is sawn"));
    section.put("proof", Amounts.proven(cut.plan().status(), cut.plan().lowerBound()));
    return section;
  }

  private Map<String, Object> plate(PlateCut cut) {
    List<PlateBoard.Entry> entries = new ArrayList<>();
    Map<String, Plate> byName = new HashMap<>();
    for (PlateNeed need : cut.needs()) {
      byName.put(need.plate().name(), need.plate());
      Outline outline = need.plate().outline();
      Bounds bounds = outline.bounds();
      String size =
          paper.printer().length(bounds.widthMm())
              + " x "
              + paper.printer().length(bounds.heightMm())
              + ", "
              + Counts.of(outline.holes().size(), "hole");
      entries.add(
          new PlateBoard.Entry(outline, need.quantity() + " x " + need.plate().name(), size));
    }
    List<Map<String, Object>> boards = new ArrayList<>();
    for (int from = 0; from < entries.size(); from += PlateBoard.MOST) {
      int to = Math.min(entries.size(), from + PlateBoard.MOST);
      boards.add(
          model.figure(
              new PlateBoard(entries.subList(from, to)),
              "Plates of " + cut.material().title() + ", each with its name and size"));
    }
    List<Map<String, Object>> nests = new ArrayList<>();
    for (CutSheet sheet : cut.plan().sheets()) {
      Map<String, Object> nest =
          model.figure(
              new NestPicture(new NestDrawing(sheet, byName, cut.material().title())),
              "How the plates lie on a sheet of " + cut.material().title());
      nest.put("size", size(sheet));
      nests.add(nest);
    }
    Map<String, Object> plate = new LinkedHashMap<>();
    plate.put("material", cut.material().title());
    plate.put("boards", boards);
    plate.put("nests", nests);
    plate.put("proof", Amounts.proven(cut.plan().status(), cut.plan().lowerBound()));
    return plate;
  }

  private String size(CutSheet sheet) {
    return paper.printer().length(sheet.stock().widthMm())
        + " x "
        + paper.printer().length(sheet.stock().heightMm());
  }
}
