package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;

/** Outlines lying on sheets, possibly overlapping while a search is at work; mm. */
final class Nest {
  /** Per item: its shapes, one for each way it may lie. */
  final OutlineShape[][] shapes;

  /** Usable area of each sheet, margins taken off. */
  final double[] sheetWidth;

  final double[] sheetHeight;
  final int[] way;
  final int[] sheet;
  final double[] x;
  final double[] y;

  /** Per item the number of its shape and the box around it, for quick looks at all items. */
  final int[] shapeNumber;

  final double[] lowX;
  final double[] highX;
  final double[] lowY;
  final double[] highY;

  /** Which items lie where, for quick looks at few of them. */
  final NestBands along;

  final NestBands across;

  Nest(OutlineShape[][] shapes, double[] sheetWidth, double[] sheetHeight) {
    this.shapes = shapes;
    this.sheetWidth = sheetWidth;
    this.sheetHeight = sheetHeight;
    int n = shapes.length;
    this.way = new int[n];
    this.sheet = new int[n];
    this.x = new double[n];
    this.y = new double[n];
    this.shapeNumber = new int[n];
    this.lowX = new double[n];
    this.highX = new double[n];
    this.lowY = new double[n];
    this.highY = new double[n];
    this.along = new NestBands(n, longest(sheetWidth));
    this.across = new NestBands(n, longest(sheetHeight));
    for (int i = 0; i < n; i++) {
      put(i, 0, 0, 0, 0);
    }
  }

  /** One item for each copy of each part, in order of the parts. */
  static OutlineShape[][] items(List<OutlinePart> parts) {
    List<OutlineShape[]> items = new ArrayList<>();
    int number = 0;
    for (OutlinePart part : parts) {
      OutlineForm form = new OutlineForm(part);
      OutlineShape[] ways = new OutlineShape[part.turnsDeg().size()];
      for (int w = 0; w < ways.length; w++) {
        ways[w] = new OutlineShape(form, new OutlineTurn(part.turnsDeg().get(w)), number++);
      }
      for (int i = 0; i < part.quantity(); i++) {
        items.add(ways);
      }
    }
    return items.toArray(new OutlineShape[0][]);
  }

  int items() {
    return shapes.length;
  }

  OutlineShape shape(int item) {
    return shapes[item][way[item]];
  }

  boolean fits(OutlineShape shape, int onSheet) {
    return shape.width() <= sheetWidth[onSheet] + 1e-9
        && shape.height() <= sheetHeight[onSheet] + 1e-9;
  }

  void put(int item, int newWay, int newSheet, double newX, double newY) {
    OutlineShape shape = shapes[item][newWay];
    way[item] = newWay;
    sheet[item] = newSheet;
    x[item] = newX;
    y[item] = newY;
    shapeNumber[item] = shape.number;
    lowX[item] = newX + shape.minX;
    highX[item] = newX + shape.maxX;
    lowY[item] = newY + shape.minY;
    highY[item] = newY + shape.maxY;
    along.put(item, lowX[item], highX[item]);
    across.put(item, lowY[item], highY[item]);
  }

  /** True when the box around an item reaches into a box. */
  boolean meets(int item, double low, double high, double bottom, double top) {
    return lowX[item] < high && highX[item] > low && lowY[item] < top && highY[item] > bottom;
  }

  private static double longest(double[] lengths) {
    double longest = 0;
    for (double length : lengths) {
      longest = Math.max(longest, length);
    }
    return longest;
  }

  /** Moves an item the least way back onto its sheet. */
  void clamp(int item) {
    OutlineShape shape = shape(item);
    int on = sheet[item];
    put(item, way[item], on, clampX(shape, on, x[item]), clampY(shape, on, y[item]));
  }

  double clampX(OutlineShape shape, int onSheet, double atX) {
    double most = Math.max(-shape.minX, sheetWidth[onSheet] - shape.maxX);
    return Math.min(Math.max(atX, -shape.minX), most);
  }

  double clampY(OutlineShape shape, int onSheet, double atY) {
    double most = Math.max(-shape.minY, sheetHeight[onSheet] - shape.maxY);
    return Math.min(Math.max(atY, -shape.minY), most);
  }

  void copyFrom(Nest other) {
    System.arraycopy(other.sheetWidth, 0, sheetWidth, 0, sheetWidth.length);
    System.arraycopy(other.sheetHeight, 0, sheetHeight, 0, sheetWidth.length);
    for (int i = 0; i < way.length; i++) {
      put(i, other.way[i], other.sheet[i], other.x[i], other.y[i]);
    }
  }

  Nest copy() {
    Nest copy = new Nest(shapes, sheetWidth.clone(), sheetHeight.clone());
    copy.copyFrom(this);
    return copy;
  }

  double middleX(int item) {
    return (lowX[item] + highX[item]) / 2;
  }

  double middleY(int item) {
    return (lowY[item] + highY[item]) / 2;
  }

  /** The furthest x that any item reaches. */
  double reach() {
    double reach = 0;
    for (int i = 0; i < items(); i++) {
      reach = Math.max(reach, highX[i]);
    }
    return reach;
  }
}
