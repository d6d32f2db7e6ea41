package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.outlines.NestingProblem;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.StripProblem;
import trammel.reading.tree.Location;

/** What a cut file asks for. The cutters' millimetres stand for the unit of the file. */
public sealed interface CutTask {
  /** Pieces of one or several sections from bars. */
  record Bars(List<Section> sections) implements CutTask {
    public Bars {
      sections = List.copyOf(sections);
    }
  }

  /**
   * One section.
   *
   * @param name its name; blank where the file has only one
   * @param problem what is to be cut from what
   * @param stockPlace where its stock stands in the file
   */
  record Section(String name, BarCuttingProblem problem, Location stockPlace) {}

  /**
   * Rectangles from sheets.
   *
   * @param problem what is to be cut from what; a part's id is its position in {@code sizes}
   * @param sizes width and height of each part, digit by digit as written
   * @param stockPlace where the sheets stand in the file
   */
  record Sheets(SheetCuttingProblem problem, List<List<BigDecimal>> sizes, Location stockPlace)
      implements CutTask {
    public Sheets {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * Rectangles from the least length of a strip.
   *
   * @param problem what is to be cut; a part's id is its position in {@code sizes}
   * @param sizes width and height of each part, digit by digit as written
   * @param stockPlace where the strip stands in the file
   */
  record Strip(StripProblem problem, List<List<BigDecimal>> sizes, Location stockPlace)
      implements CutTask {
    public Strip {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * Outlines from sheets.
   *
   * @param problem what is to be cut from what
   * @param ids the ids of the parts, each as the text or the number it is in the file
   * @param stockPlace where the sheets stand in the file
   */
  record Outlines(NestingProblem problem, Map<String, Object> ids, Location stockPlace)
      implements CutTask {
    public Outlines {
      ids = Map.copyOf(ids);
    }
  }

  /**
   * Outlines from the least length of a strip.
   *
   * @param problem what is to be cut
   * @param ids the ids of the parts, each as the text or the number it is in the file
   * @param stockPlace where the strip stands in the file
   */
  record OutlineStrip(NestingStripProblem problem, Map<String, Object> ids, Location stockPlace)
      implements CutTask {
    public OutlineStrip {
      ids = Map.copyOf(ids);
    }
  }
}
