package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trammel.app.drawings.ArrangementSheet;
import trammel.app.drawings.Drawing;
import trammel.app.drawings.LayoutView;
import trammel.app.drawings.PartWords;
import trammel.app.drawings.ShopDrawings;
import trammel.app.drawings.ShopJob;
import trammel.app.drawings.ViewKey;
import trammel.app.drawings.Viewpoint;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.Measure;
import trammel.planning.estimate.BoltLine;
import trammel.planning.fitup.AxleFoot;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.RailFoot;
import trammel.planning.fitup.Target;
import trammel.planning.vehicle.NotchCut;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.welding.SeamEstimate;
import trammel.trade.welding.WeldSeam;

/** What the floor works from: drawings, fit-up sheet, welds, torques, order of work, cautions. */
public final class FloorDocument {
  private static final String BLANK = "";
  private static final int ANGLE_PLACES = 1;

  /** Gaps below this many times their good limit are called out. */
  private static final double TIGHT = 2;

  private final JobPaper paper;
  private final FitUpSheet sheet;
  private final PartWords words;
  private final ShopJob drawn;

  /**
   * @param paper the job
   * @param sheet where its brackets go
   */
  public FloorDocument(JobPaper paper, FitUpSheet sheet) {
    this.paper = paper;
    this.sheet = sheet;
    words = paper.words();
    drawn = shopJob(paper);
  }

  /** The document. */
  public PaperDocument document() {
    DocumentModel model = paper.model("Floor packet");
    List<Map<String, Object>> views = new ArrayList<>();
    for (LayoutView view : views(paper)) {
      views.add(model.figure(view, view.viewpoint().title() + " of the finished vehicle"));
    }
    model.put("views", views);
    model.put("key", key());
    model.put("tight", tightTable());
    model.put("notch", notch());
    model.put("leftRail", rail(true));
    model.put("rightRail", rail(false));
    model.put("axleTube", axleTube());
    model.put("order", DocumentModel.texts(OrderOfWork.of(paper)));
    model.put("struts", struts());
    model.put("angles", angles());
    FitUpBlocks blocks = new FitUpBlocks(paper, sheet);
    model.put("rake", blocks.rake());
    List<Map<String, Object>> brackets = blocks.blocks(model);
    int first = Math.min(1, brackets.size());
    model.put("firstBracket", brackets.subList(0, first));
    model.put("brackets", brackets.subList(first, brackets.size()));
    model.put("welds", welds());
    model.put("bolts", bolts());
    return paper.document("floor", model);
  }

  /** The three views of a job with its tight places marked. */
  public static List<LayoutView> views(JobPaper paper) {
    Map<String, String> marks = new LinkedHashMap<>();
    char letter = 'A';
    for (Judged judged : tight(paper)) {
      marks.put(
          Character.toString(letter++), firstNamed(paper, judged.where().in(paper.printer())));
    }
    List<LayoutView> views = new ArrayList<>();
    for (Viewpoint viewpoint : Viewpoint.values()) {
      views.add(
          new LayoutView(
              paper.draft().layout(),
              paper.scene(),
              viewpoint,
              paper.printer(),
              marks,
              paper.stops().line()));
    }
    return views;
  }

  /** What the numbers and letters in the three views stand for. */
  public static ViewKey viewKey(JobPaper paper) {
    PartWords words = paper.words();
    List<String> entries = new ArrayList<>();
    entries.add(
        paper.numbers().names().stream()
            .map(name -> paper.numbers().of(name) + " " + words.in(name))
            .collect(Collectors.joining(", ")));
    char letter = 'A';
    for (Judged judged : tight(paper)) {
      String room = paper.amounts().value(judged.measure(), judged.value());
      entries.add(letter++ + " " + room + ": " + judged.title());
    }
    return new ViewKey(entries);
  }

  /** All three views on one sheet. */
  public static ArrangementSheet arrangement(JobPaper paper) {
    return new ArrangementSheet(
        paper.draft().layout(),
        paper.scene(),
        paper.printer(),
        paper.block("arrangement of", 1, 1),
        paper.stops().line());
  }

  /** The set of sheets from which the floor builds. */
  public static List<Drawing> shopDrawings(JobPaper paper) {
    return ShopDrawings.of(shopJob(paper), arrangement(paper));
  }

  private static ShopJob shopJob(JobPaper paper) {
    return ShopJob.of(
        paper.scene().assembly(),
        paper.draft().layout(),
        paper.estimate().plan(),
        paper.estimate().materials().bolts(),
        NotchCut.of(paper.draft().layout(), paper.draft().linkageSite()),
        paper.printer());
  }

  /** The part of the layout that a check names first; empty if it names none. */
  private static String firstNamed(JobPaper paper, String where) {
    String first = "";
    int least = where.length();
    for (String name : paper.numbers().names()) {
      int at = where.indexOf(name);
      if (at >= 0 && at < least) {
        least = at;
        first = name;
      }
    }
    return first;
  }

  private static List<Judged> tight(JobPaper paper) {
    List<Judged> tight = new ArrayList<>();
    for (CheckResult result : paper.results()) {
      if (result instanceof Judged judged
          && judged.measure() == Measure.LENGTH
          && isClearance(judged.id())
          && judged.value() < TIGHT * judged.limit().goodMin()) {
        tight.add(judged);
      }
    }
    return tight;
  }

  private static boolean isClearance(String id) {
    return id.startsWith("clearance-") || id.equals("spring-to-tube") || id.equals("axle-to-rail");
  }

  private Grid key() {
    Grid grid = new Grid("blr", new int[] {8, 62, 30}, "no.", "part", "joint to joint");
    FitUpSheet of = sheet;
    for (String name : paper.numbers().names()) {
      String length = "";
      for (Target target : of.targets()) {
        if (target.id().equals(name + ".length")) {
          length = value(target, target.plan());
        }
      }
      for (FitUpSheet.Strut strut : of.struts()) {
        if (strut.name().equals(name)) {
          length = paper.printer().length(strut.lengthMm());
        }
      }
      grid.row(paper.numbers().of(name), words.in(name), length);
    }
    return grid;
  }

  private Grid tightTable() {
    Grid grid = new Grid("brl", new int[] {8, 18, 74}, "", "room", "where it is tight");
    char letter = 'A';
    for (Judged judged : tight(paper)) {
      grid.row(
          Character.toString(letter++),
          paper.amounts().value(judged.measure(), judged.value()),
          judged.title()
              + ": "
              + words.in(judged.where().in(paper.printer()))
              + "; good "
              + paper.amounts().good(judged.measure(), judged.limit()));
    }
    return grid;
  }

  private Grid notch() {
    Grid grid =
        new Grid("lb", new int[] {70, 30}, "notch in each rail, over the axle mark", "size");
    NotchCut.of(paper.draft().layout(), paper.draft().linkageSite())
        .ifPresent(cut -> addNotch(grid, cut));
    return grid;
  }

  private void addNotch(Grid grid, NotchCut cut) {
    QuantityPrinter printer = paper.printer();
    grid.row("cut up from the rail's underside", printer.length(cut.cutDepthMm()));
    grid.row("ahead of the axle mark, along the underside", printer.length(cut.reachMm()));
    grid.row("behind the axle mark, along the underside", printer.length(cut.reachMm()));
    grid.row("length of the cut in all", printer.length(cut.lengthMm()));
    grid.row("radius of the cut", printer.length(cut.radiusMm()));
    grid.row("rail that stays above the cut", printer.length(cut.keptMm()));
    grid.row("thickness of the strip that lines it", printer.length(cut.stripMm()));
    grid.row("deep in the clear, strip in place", printer.length(cut.clearDepthMm()));
    if (cut.riseMm() > 0) {
      grid.row("side plates above the rail's top, in the middle", printer.length(cut.riseMm()));
    }
  }

  /** What is set on one rail, by the axle mark and the underside. */
  private Grid rail(boolean left) {
    Grid grid =
        new Grid(
            "sllrrrr",
            new int[] {7, 32, 13, 12, 12, 12, 12},
            "mark",
            left ? "left rail" : "right rail",
            "on its",
            "rear edge",
            "front edge",
            "lower edge",
            "upper edge");
    QuantityPrinter printer = paper.printer();
    Map<String, String> marks = ShopDrawings.railMarks(drawn, left);
    for (RailFoot foot :
        RailFoot.of(paper.scene().assembly(), paper.draft().layout().chassis().rails(), left)) {
      grid.row(
          marks.getOrDefault(foot.part(), ""),
          foot.part(),
          foot.face().words(),
          printer.length(foot.rearMm()),
          printer.length(foot.frontMm()),
          printer.length(foot.lowerMm()),
          printer.length(foot.upperMm()));
    }
    return grid;
  }

  /** What is set on the axle tube, by its middle and its turn. */
  private Grid axleTube() {
    Grid grid =
        new Grid(
            "slrrrrl",
            new int[] {7, 31, 13, 13, 11, 12, 13},
            "mark",
            "axle tube",
            "right edge",
            "left edge",
            "turned",
            "out",
            "to its");
    QuantityPrinter printer = paper.printer();
    Map<String, String> marks = ShopDrawings.axleMarks(drawn);
    for (AxleFoot foot :
        AxleFoot.of(paper.scene().assembly(), paper.draft().layout().chassis().axleCentre())) {
      grid.row(
          marks.getOrDefault(foot.part(), ""),
          foot.part(),
          printer.length(foot.rightMm()),
          printer.length(foot.leftMm()),
          printer.angle(foot.turnRad(), ANGLE_PLACES),
          printer.length(foot.outMm()),
          foot.mark().words());
    }
    return grid;
  }

  private Grid struts() {
    Grid grid = new Grid("lb", new int[] {70, 30}, "mock-up strut in place of", "hole to hole");
    for (FitUpSheet.Strut strut : sheet.struts()) {
      grid.row(words.in(strut.name()), paper.printer().length(strut.lengthMm()));
    }
    return grid;
  }

  private Grid angles() {
    Grid grid =
        new Grid(
            "lbrr",
            new int[] {46, 18, 18, 18},
            "angle finder",
            "on the stands now",
            "from the rail",
            "at ride");
    for (FitUpSheet.FinderAngle angle : sheet.angles()) {
      grid.row(
          words.in(angle.what()),
          paper.printer().angle(angle.onStandsRad(), ANGLE_PLACES),
          paper.printer().angle(angle.fromFrameRad(), ANGLE_PLACES),
          paper.printer().angle(angle.atRideRad(), ANGLE_PLACES));
    }
    return grid;
  }

  private String value(Target target, double value) {
    return target.kind() == QuantityKind.ANGLE
        ? paper.printer().angle(value)
        : paper.printer().length(value);
  }

  private Grid welds() {
    Grid grid =
        new Grid(
            "brlrrll",
            new int[] {7, 9, 15, 10, 13, 16, 30},
            "weld",
            "how many",
            "kind",
            "size",
            "length each",
            "position",
            "where");
    int number = 0;
    for (SeamEstimate line : paper.estimate().welds().lines()) {
      WeldSeam seam = line.seam();
      grid.noted(
          6,
          seam.starts() > 1
              ? "in "
                  + seam.starts()
                  + " steps, each pulled back towards where the seam begins, never right through"
              : "",
          WeldNumbers.of(number++),
          Integer.toString(seam.count()),
          seam.joint().title(),
          paper.printer().length(seam.joint().sizeMm()),
          seam.lengthMm() > 0 ? paper.printer().length(seam.lengthMm()) : "",
          seam.position().title() + ", " + seam.place().title(),
          seam.name());
    }
    return grid;
  }

  private Grid bolts() {
    Grid grid =
        new Grid(
            "blbrll",
            new int[] {9, 23, 15, 10, 35, 8},
            "how many",
            "bolt",
            "torque, dry",
            "grip",
            "where",
            "done");
    for (BoltLine bolt : paper.estimate().materials().bolts()) {
      grid.row(
          Integer.toString(bolt.quantity()),
          bolt.size().title() + " x " + paper.printer().length(bolt.choice().lengthMm()),
          paper.printer().torque(bolt.torqueNmm()),
          paper.printer().length(bolt.gripMm()),
          words.in(bolt.where()),
          BLANK);
    }
    return grid;
  }
}
