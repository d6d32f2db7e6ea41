package trammel.app.handout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.files.Csv;
import trammel.app.files.FileSet;
import trammel.app.json.EstimateJson;
import trammel.app.json.Json;
import trammel.app.text.Stops;
import trammel.assembly.Prism;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.planning.catalog.CutFileUnits;
import trammel.planning.drawings.CheckSquare;
import trammel.planning.drawings.DxfDrawing;
import trammel.planning.drawings.DxfUnits;
import trammel.planning.drawings.NestDrawing;
import trammel.planning.drawings.SvgDrawing;
import trammel.planning.drawings.WrapTemplate;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;

/**
 * What the saw and the cutting table need: a drawing of every plate and of every sheet, templates
 * for coped tubes, and both cut lists.
 */
public final class CutFiles {
  private static final int PLACES = 2;

  private final Estimate estimate;
  private final Stops stops;
  private final DxfUnits units;
  private final CheckSquare square;
  private final Set<String> taken = new HashSet<>();

  /**
   * @param estimate the job with its cutting plans
   * @param stops what its checks say stop to
   * @param shown the units of whoever reads the templates
   */
  public CutFiles(Estimate estimate, Stops stops, UnitSystem shown) {
    this.estimate = estimate;
    square = CheckSquare.of(shown);
    this.stops = stops;
    CutFileUnits asked = estimate.draft().linkageSite().catalog().cutting().cutFileUnits();
    units =
        asked.areInches(estimate.draft().job().header().units())
            ? DxfUnits.INCHES
            : DxfUnits.MILLIMETRES;
  }

  /** Adds all files to a set. */
  public void addTo(FileSet files) {
    addPlates(files);
    addNests(files);
    addTemplates(files);
    files.add("tubes.csv", tubes());
    files.add("plates.csv", plates());
    files.add("cut-lists.json", Json.text(EstimateJson.cutLists(estimate, stops)) + "\n");
  }

  /** Adds every plate as a solid to print in plastic and try on the vehicle before it is cut. */
  public void addPrintsTo(FileSet files) {
    for (PlateCut cut : estimate.materials().plates()) {
      for (PlateNeed need : cut.needs()) {
        Plate plate = need.plate();
        String name = free("prints/" + FileSet.safeName(plate.name()));
        Prism solid = Prism.plate(plate.outline(), plate.thicknessMm());
        files.add(name + "-mm.stl", StlFile.of(plate.name(), solid.mesh()));
      }
    }
  }

  private void addPlates(FileSet files) {
    for (PlateCut cut : estimate.materials().plates()) {
      for (PlateNeed need : cut.needs()) {
        String name = free("plates/" + FileSet.safeName(need.plate().name()));
        files.add(dxf(name), DxfDrawing.of(need.plate(), units).text());
        files.add(name + ".svg", SvgDrawing.of(need.plate().outline()).text());
      }
    }
  }

  private void addNests(FileSet files) {
    for (PlateCut cut : estimate.materials().plates()) {
      Map<String, Plate> plates = new HashMap<>();
      for (PlateNeed need : cut.needs()) {
        plates.put(need.plate().name(), need.plate());
      }
      List<CutSheet> sheets = cut.plan().sheets();
      for (int i = 0; i < sheets.size(); i++) {
        String title =
            stops.before(cut.material().title())
                + ", sheet "
                + (i + 1)
                + " of "
                + sheets.size()
                + ", "
                + sheets.get(i).stock().id()
                + ", lengths in "
                + units.word();
        NestDrawing nest = new NestDrawing(sheets.get(i), plates, title);
        String name = free("sheets/" + FileSet.safeName(cut.material().key()) + "-" + (i + 1));
        files.add(dxf(name), nest.dxf(units).text());
        files.add(name + ".svg", nest.svg().text());
      }
    }
  }

  private void addTemplates(FileSet files) {
    for (SectionCut section : estimate.materials().sections()) {
      for (TubeNeed need : section.needs()) {
        for (int i = 0; i < need.copes().size(); i++) {
          String title =
              stops.before(need.name()) + ", cope " + (i + 1) + " of " + need.copes().size();
          String name = free("templates/" + FileSet.safeName(need.name()) + "-cope-" + (i + 1));
          files.add(
              name + ".svg", new WrapTemplate(title, need.copes().get(i), square).svg().text());
        }
      }
    }
  }

  /** A name that says what the numbers in it mean to a table that does not read it off. */
  private String dxf(String name) {
    return name + "-" + units.word() + ".dxf";
  }

  /** Two parts may have names that come to the same file name. */
  private String free(String name) {
    String free = name;
    for (int i = 2; !taken.add(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }

  private String tubes() {
    Csv csv =
        new Csv()
            .row(
                "section",
                "stick",
                "stick_mm",
                "piece",
                "at_mm",
                "cut_mm",
                "ends",
                "left_mm",
                "stops");
    for (SectionCut section : estimate.materials().sections()) {
      Map<String, String> ends = new HashMap<>();
      for (TubeNeed need : section.needs()) {
        ends.put(need.name(), need.ends().in(estimate.draft().printer()));
      }
      int stick = 0;
      for (CutBar bar : section.plan().bars()) {
        stick++;
        for (PlacedPiece piece : bar.pieces()) {
          csv.row(
              section.material().title(),
              stick,
              mm(bar.stock().lengthMm()),
              piece.pieceId(),
              mm(piece.atMm()),
              mm(piece.lengthMm()),
              ends.get(piece.pieceId()),
              mm(bar.offcutMm()),
              stops.line());
        }
      }
    }
    return csv.text();
  }

  private String plates() {
    Csv csv =
        new Csv()
            .row(
                "plate",
                "sheet",
                "sheet_mm",
                "part",
                "x_mm",
                "y_mm",
                "turned",
                "width_mm",
                "height_mm",
                "area_mm2",
                "cut_mm",
                "holes",
                "stops");
    for (PlateCut cut : estimate.materials().plates()) {
      Map<String, Outline> outlines = new HashMap<>();
      for (PlateNeed need : cut.needs()) {
        outlines.put(need.plate().name(), need.plate().outline());
      }
      int number = 0;
      for (CutSheet sheet : cut.plan().sheets()) {
        number++;
        for (PlacedPart part : sheet.parts()) {
          Outline outline = outlines.get(part.partId());
          csv.row(
              cut.material().title(),
              number,
              sheet.stock().id(),
              part.partId(),
              mm(part.xMm()),
              mm(part.yMm()),
              part.turnDeg() == 0 ? "no" : part.turnDeg() + " deg",
              mm(part.widthMm()),
              mm(part.heightMm()),
              mm(outline.areaMm2()),
              mm(outline.cutLengthMm()),
              outline.holes().size(),
              stops.line());
        }
      }
    }
    return csv.text();
  }

  private static String mm(double value) {
    return DecimalText.fixed(value, PLACES);
  }
}
