package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trammel.trade.plates.Bounds;

/**
 * A template that is larger than a sheet, cut into tiles that overlap. A seam is moved so that
 * every hole lies whole on one tile. Two tiles that join show two crosses of the same names.
 */
public final class Tiling {
  /** How far two sheets overlap at least (mm). */
  public static final double OVERLAP_MM = 12;

  /** Paper that is left about a hole (mm). */
  private static final double ABOUT_A_HOLE_MM = 3;

  private static final double[] ALONG_A_SEAM = {0.25, 0.75};

  private final TrueScaleTemplate template;
  private final List<double[]> columns;
  private final List<double[]> rows;
  private final List<Mark> marks = new ArrayList<>();

  /**
   * A cross at which two tiles are joined.
   *
   * @param name its name
   * @param xMm to the right (mm)
   * @param yMm up (mm)
   * @param first number of one of the two tiles
   * @param second number of the other
   */
  public record Mark(String name, double xMm, double yMm, int first, int second) {}

  /**
   * A tile.
   *
   * @param number its number, counted from 1, row by row from the upper left
   * @param shown what of the template it shows
   * @param marks the crosses on it
   */
  public record Tile(int number, Bounds shown, List<Mark> marks) {
    /** Copies the list. */
    public Tile {
      marks = List.copyOf(marks);
    }
  }

  /**
   * @param template what is tiled
   * @param acrossMm room across a sheet
   * @param upMm room up a sheet
   */
  public Tiling(TrueScaleTemplate template, double acrossMm, double upMm) {
    this.template = template;
    Bounds whole = template.bounds();
    columns = spans(whole.minXMm(), whole.maxXMm(), acrossMm, Bounds::minXMm, Bounds::maxXMm);
    // From above down: heights are turned over and back.
    List<double[]> down =
        spans(-whole.maxYMm(), -whole.minYMm(), upMm, one -> -one.maxYMm(), one -> -one.minYMm());
    rows = down.stream().map(span -> new double[] {-span[1], -span[0]}).toList();
    addMarks();
  }

  /**
   * From one end to the other, each span as long as a sheet, beginning before a hole it would cut.
   */
  private List<double[]> spans(
      double from,
      double to,
      double roomMm,
      ToDoubleFunction<Bounds> least,
      ToDoubleFunction<Bounds> most) {
    List<double[]> spans = new ArrayList<>();
    double start = from;
    while (start + roomMm < to) {
      double end = start + roomMm;
      double next = end - OVERLAP_MM;
      for (TrueScaleTemplate.Opening hole : template.holes()) {
        double holeFrom = least.applyAsDouble(hole.bounds()) - ABOUT_A_HOLE_MM;
        double holeTo = most.applyAsDouble(hole.bounds()) + ABOUT_A_HOLE_MM;
        if (holeTo > end && holeFrom < next && holeFrom > start) {
          next = holeFrom;
        }
      }
      spans.add(new double[] {start, end});
      start = next;
    }
    spans.add(new double[] {start, to});
    return spans;
  }

  private void addMarks() {
    char name = 'A';
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < columns.size(); column++) {
        int number = number(row, column);
        if (column + 1 < columns.size() && bothDrawn(number, number + 1)) {
          double x = (columns.get(column)[1] + columns.get(column + 1)[0]) / 2;
          double[] span = rows.get(row);
          for (int i = 0; i < 2; i++) {
            double y = span[0] + ALONG_A_SEAM[i] * (span[1] - span[0]);
            marks.add(new Mark("" + name + (i + 1), x, y, number, number + 1));
          }
          name++;
        }
        int below = number + columns.size();
        if (row + 1 < rows.size() && bothDrawn(number, below)) {
          double y = (rows.get(row)[0] + rows.get(row + 1)[1]) / 2;
          double[] span = columns.get(column);
          for (int i = 0; i < 2; i++) {
            double x = span[0] + ALONG_A_SEAM[i] * (span[1] - span[0]);
            marks.add(new Mark("" + name + (i + 1), x, y, number, below));
          }
          name++;
        }
      }
    }
  }

  private int number(int row, int column) {
    return row * columns.size() + column + 1;
  }

  private boolean bothDrawn(int one, int other) {
    return !isBlank(shown(one)) && !isBlank(shown(other));
  }

  private Bounds shown(int number) {
    double[] column = columns.get((number - 1) % columns.size());
    double[] row = rows.get((number - 1) / columns.size());
    return new Bounds(column[0], row[0], column[1], row[1]);
  }

  /** How many tiles there are, blank ones among them. */
  public int count() {
    return rows.size() * columns.size();
  }

  /** The tiles on which something is drawn. */
  public List<Tile> drawn() {
    List<Tile> tiles = new ArrayList<>();
    for (int number = 1; number <= count(); number++) {
      Bounds shown = shown(number);
      int mine = number;
      if (!isBlank(shown)) {
        tiles.add(
            new Tile(
                number,
                shown,
                marks.stream()
                    .filter(mark -> mark.first() == mine || mark.second() == mine)
                    .toList()));
      }
    }
    return tiles;
  }

  /** The numbers of the tiles on which nothing is drawn; they need no sheet. */
  public List<Integer> blank() {
    List<Integer> blank = new ArrayList<>();
    for (int number = 1; number <= count(); number++) {
      if (isBlank(shown(number))) {
        blank.add(number);
      }
    }
    return blank;
  }

  private boolean isBlank(Bounds shown) {
    boolean crossed =
        template.lines().stream()
            .anyMatch(line -> TrueScalePage.pieces(line, shown).findAny().isPresent());
    return !crossed
        && template.holes().stream().noneMatch(hole -> TrueScalePage.isWhole(hole, shown));
  }
}
