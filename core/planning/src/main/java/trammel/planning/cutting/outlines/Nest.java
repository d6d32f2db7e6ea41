package trammel.planning.cutting.outlines;

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

  Nest(OutlineShape[][] shapes, double[] sheetWidth, double[] sheetHeight) {
    this.shapes = shapes;
    this.sheetWidth = sheetWidth;
    this.sheetHeight = sheetHeight;
    this.way = new int[shapes.length];
    this.sheet = new int[shapes.length];
    this.x = new double[shapes.length];
    this.y = new double[shapes.length];
  }

  /** One item for each copy of each part, in order of the parts. */
  static OutlineShape[][] items(List<OutlinePart> parts) {
    List<OutlineShape[]> items = new ArrayList<>();
    for (OutlinePart part : parts) {
      OutlineShape[] ways = new OutlineShape[part.turnsDeg().size()];
      for (int w = 0; w < ways.length; w++) {
        ways[w] = OutlineShape.of(part, part.turnsDeg().get(w));
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
    way[item] = newWay;
    sheet[item] = newSheet;
    x[item] = newX;
    y[item] = newY;
  }

  /** Moves an item the least way back onto its sheet. */
  void clamp(int item) {
    x[item] = clampX(shape(item), sheet[item], x[item]);
    y[item] = clampY(shape(item), sheet[item], y[item]);
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
    System.arraycopy(other.way, 0, way, 0, way.length);
    System.arraycopy(other.sheet, 0, sheet, 0, way.length);
    System.arraycopy(other.x, 0, x, 0, way.length);
    System.arraycopy(other.y, 0, y, 0, way.length);
    System.arraycopy(other.sheetWidth, 0, sheetWidth, 0, sheetWidth.length);
    System.arraycopy(other.sheetHeight, 0, sheetHeight, 0, sheetWidth.length);
  }

  Nest copy() {
    Nest copy = new Nest(shapes, sheetWidth.clone(), sheetHeight.clone());
    copy.copyFrom(this);
    return copy;
  }

  /** The furthest x that any item reaches. */
  double reach() {
    double reach = 0;
    for (int i = 0; i < items(); i++) {
      reach = Math.max(reach, x[i] + shape(i).maxX);
    }
    return reach;
  }
}
