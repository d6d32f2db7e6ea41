package trammel.cutting.outlines;

/** A loose first plan on a strip: the rectangles around the parts in columns, the longest first. */
final class ColumnStart {
  private static final double TOLERANCE = 1e-9;

  private ColumnStart() {}

  static Nest of(OutlineShape[][] items, double widthMm, double clearance) {
    Nest nest = new Nest(items, new double[] {Double.MAX_VALUE}, new double[] {widthMm});
    int[] order = new int[items.length];
    for (int i = 0; i < order.length; i++) {
      nest.put(i, narrow(items[i], nest), 0, 0, 0);
      int at = i;
      while (at > 0 && nest.shape(order[at - 1]).width() < nest.shape(i).width()) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = i;
    }
    double gap = clearance * (1 + TOLERANCE) + TOLERANCE * widthMm;
    double x = 0;
    double y = 0;
    double next = 0;
    for (int item : order) {
      OutlineShape shape = nest.shape(item);
      if (y > 0 && y + shape.height() > widthMm) {
        x = next + gap;
        y = 0;
      }
      nest.put(item, nest.way[item], 0, x - shape.minX, y - shape.minY);
      next = y == 0 ? x + shape.width() : next;
      y += shape.height() + gap;
    }
    nest.sheetWidth[0] = nest.reach();
    return nest;
  }

  /** Of the ways round that fit across the strip the shortest along it. */
  private static int narrow(OutlineShape[] ways, Nest nest) {
    int best = 0;
    double shortest = Double.POSITIVE_INFINITY;
    for (int w = 0; w < ways.length; w++) {
      if (nest.fits(ways[w], 0) && ways[w].width() < shortest) {
        best = w;
        shortest = ways[w].width();
      }
    }
    return best;
  }
}
