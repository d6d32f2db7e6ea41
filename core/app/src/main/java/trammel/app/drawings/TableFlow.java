package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;

/** Tables one under the other, going on in the next column or on the next sheet. */
final class TableFlow {
  private static final double GAP_MM = 5;

  private final double topMm;
  private final double bottomMm;
  private final double leftMm;
  private final double rightMm;
  private final List<List<Piece>> pages = new ArrayList<>();
  private double areaX;
  private double areaY;
  private double x;
  private double y;
  private double endMm;
  private double columnMm;

  /** Sheets whose tables stand beside a picture. */
  private int besidePictures = 1;

  private record Piece(SheetTable table, int first, double x, double y, double roomMm) {}

  /**
   * @param leftMm left end of a sheet that has nothing but tables
   * @param rightMm its right end
   * @param topMm its upper end
   * @param bottomMm its lower end
   */
  TableFlow(double leftMm, double rightMm, double topMm, double bottomMm) {
    this.leftMm = leftMm;
    this.rightMm = rightMm;
    this.topMm = topMm;
    this.bottomMm = bottomMm;
  }

  /** The second sheet, too, has its tables in such an area beside a picture. */
  TableFlow twice() {
    besidePictures = 2;
    return this;
  }

  /** Begins in a free area of the first sheet, which is one column. */
  TableFlow from(double x, double y) {
    areaX = x;
    areaY = y;
    this.x = x;
    this.y = y;
    endMm = bottomMm;
    columnMm = rightMm - x;
    pages.add(new ArrayList<>());
    return this;
  }

  TableFlow add(SheetTable table) {
    int row = 0;
    while (row < table.size()) {
      int next = table.fits(row, endMm - y);
      if (next == row || table.widthMm() > columnMm + 1e-6) {
        nextColumn(table);
        continue;
      }
      pages.get(pages.size() - 1).add(new Piece(table, row, x, y, endMm - y));
      y += table.heightMm(row, next) + GAP_MM;
      row = next;
    }
    return this;
  }

  /** A second column beside the first where a sheet of tables has room, else the next sheet. */
  private void nextColumn(SheetTable table) {
    if (pages.size() < besidePictures) {
      pages.add(new ArrayList<>());
      x = areaX;
      y = areaY;
      columnMm = rightMm - areaX;
      return;
    }
    double besideMm = x + columnMm + GAP_MM;
    if (pages.size() > besidePictures && y > topMm && besideMm + table.widthMm() <= rightMm) {
      x = besideMm;
    } else {
      pages.add(new ArrayList<>());
      x = leftMm;
    }
    y = topMm;
    columnMm = table.widthMm();
  }

  int pages() {
    return pages.size();
  }

  void drawOn(Paper paper, int page) {
    pages.get(page).forEach(p -> p.table.drawOn(paper, p.x, p.y, p.first, p.roomMm));
  }
}
