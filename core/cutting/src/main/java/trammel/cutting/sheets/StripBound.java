package trammel.cutting.sheets;

/** Least length of strip: by area, by the longest part, and by wide parts that cannot pass. */
final class StripBound {
  private final SheetModel model;

  StripBound(SheetModel model) {
    this.model = model;
  }

  int lowest() {
    int width = model.sheetWidth[0];
    long byArea = (model.area(model.count) + width - 1) / width;
    long longest = 0;
    long wide = 0;
    for (int t = 0; t < model.types(); t++) {
      int least = leastLength(t, width);
      longest = Math.max(longest, least);
      if (2L * leastWidth(t, width) > width) {
        wide += (long) least * model.count[t];
      }
    }
    return (int) Math.max(byArea, Math.max(longest, wide));
  }

  private int leastLength(int type, int width) {
    boolean turns = model.mayTurn[type] && model.height[type] <= width;
    boolean straight = model.width[type] <= width;
    if (turns && straight) {
      return Math.min(model.width[type], model.height[type]);
    }
    return straight ? model.height[type] : model.width[type];
  }

  private int leastWidth(int type, int width) {
    boolean turns = model.mayTurn[type] && model.height[type] <= width;
    boolean straight = model.width[type] <= width;
    if (turns && straight) {
      return Math.min(model.width[type], model.height[type]);
    }
    return straight ? model.width[type] : model.height[type];
  }
}
