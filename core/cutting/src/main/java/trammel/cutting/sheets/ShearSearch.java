package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * The cheapest sheets for few parts cut by shear, exactly.
 *
 * <p>For every selection of parts it keeps all least boxes that hold them and can be sheared apart;
 * a box is one part, or two boxes beside or above each other (Wang, Oper. Res. 31 (1983), from
 * memory). Selections are then shared out over sheets at the least price.
 */
final class ShearSearch {
  /** Selections of parts above which the search is not begun. */
  private static final int MOST_SELECTIONS = 2600;

  /** Pairs of boxes looked at before the search is given up. */
  private static final long MOST_PAIRS = 6_000_000L;

  private static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

  private final SheetModel model;
  private final int[] digit;
  private final int selections;
  private final List<List<Box>> boxes = new ArrayList<>();
  private final int[] hostSheet;
  private final Box[] hostBox;
  private final long[] cheapest;
  private final int[] firstPart;
  private long pairs;

  /** A rectangle in which some parts lie so that a shear can take them apart. */
  private static final class Box {
    final int width;
    final int height;
    final int type;
    final boolean turned;
    final Box first;
    final Box second;
    final boolean beside;

    Box(int width, int height, int type, boolean turned) {
      this.width = width;
      this.height = height;
      this.type = type;
      this.turned = turned;
      this.first = null;
      this.second = null;
      this.beside = false;
    }

    Box(Box first, Box second, boolean beside) {
      this.width = beside ? first.width + second.width : Math.max(first.width, second.width);
      this.height = beside ? Math.max(first.height, second.height) : first.height + second.height;
      this.type = -1;
      this.turned = false;
      this.first = first;
      this.second = second;
      this.beside = beside;
    }

    void draw(int x, int y, Layout layout) {
      if (type >= 0) {
        layout.add(type, x, y, turned);
        return;
      }
      first.draw(x, y, layout);
      second.draw(beside ? x + first.width : x, beside ? y : y + first.height, layout);
    }
  }

  private ShearSearch(SheetModel model, int[] digit, int selections) {
    this.model = model;
    this.digit = digit;
    this.selections = selections;
    this.hostSheet = new int[selections];
    this.hostBox = new Box[selections];
    this.cheapest = new long[selections];
    this.firstPart = new int[selections];
  }

  /** The search, or null when there are too many parts for it or stock is limited. */
  static ShearSearch of(SheetModel model) {
    int selections = 1;
    int[] digit = new int[model.types()];
    for (int t = 0; t < digit.length; t++) {
      digit[t] = selections;
      if ((long) selections * (model.count[t] + 1) > MOST_SELECTIONS) {
        return null;
      }
      selections *= model.count[t] + 1;
    }
    for (int limit : model.available) {
      if (limit != SheetModel.UNLIMITED) {
        return null;
      }
    }
    return new ShearSearch(model, digit, selections);
  }

  /** The cheapest set of sheets, or null when the search grew too long. */
  SheetSet cheapest() {
    if (!buildBoxes()) {
      return null;
    }
    for (int selection = 1; selection < selections; selection++) {
      hostSheet[selection] = -1;
      cheapest[selection] = IMPOSSIBLE;
      host(selection);
    }
    for (int selection = 1; selection < selections; selection++) {
      share(selection);
    }
    SheetSet set = new SheetSet();
    int rest = selections - 1;
    while (rest > 0) {
      int part = firstPart[rest];
      Layout layout = new Layout();
      hostBox[part].draw(0, 0, layout);
      set.add(model, hostSheet[part], layout);
      rest -= part;
    }
    return set;
  }

  /** Largest total worth of parts that one sheet of a size can hold; parts count at most once. */
  long mostValuable(int sheet, long[] worth) {
    long best = 0;
    if (!buildBoxes()) {
      throw new IllegalStateException("too many ways to combine the parts");
    }
    for (int selection = 1; selection < selections; selection++) {
      for (Box box : boxes.get(selection)) {
        if (box.width <= model.sheetWidth[sheet] && box.height <= model.sheetHeight[sheet]) {
          long total = 0;
          for (int t = 0; t < digit.length; t++) {
            total += worth[t] * count(selection, t);
          }
          best = Math.max(best, total);
        }
      }
    }
    return best;
  }

  private int count(int selection, int type) {
    return selection / digit[type] % (model.count[type] + 1);
  }

  private boolean buildBoxes() {
    boxes.clear();
    boxes.add(List.of());
    for (int selection = 1; selection < selections; selection++) {
      boxes.add(new ArrayList<>());
      single(selection);
      for (int part = 1; part <= selection / 2; part++) {
        if (isWithin(part, selection) && !combine(selection, part)) {
          return false;
        }
      }
    }
    return true;
  }

  private void single(int selection) {
    for (int t = 0; t < digit.length; t++) {
      if (selection == digit[t]) {
        keep(selection, new Box(model.width[t], model.height[t], t, false));
        if (model.mayTurn[t]) {
          keep(selection, new Box(model.height[t], model.width[t], t, true));
        }
      }
    }
  }

  private boolean isWithin(int part, int whole) {
    for (int t = 0; t < digit.length; t++) {
      if (count(part, t) > count(whole, t)) {
        return false;
      }
    }
    return true;
  }

  private boolean combine(int selection, int part) {
    for (Box a : boxes.get(part)) {
      for (Box b : boxes.get(selection - part)) {
        if (++pairs > MOST_PAIRS) {
          return false;
        }
        tryPair(selection, a, b, true);
        tryPair(selection, a, b, false);
      }
    }
    return true;
  }

  private void tryPair(int selection, Box a, Box b, boolean beside) {
    int width = beside ? a.width + b.width : Math.max(a.width, b.width);
    int height = beside ? Math.max(a.height, b.height) : a.height + b.height;
    if (isUseful(selection, width, height)) {
      keep(selection, new Box(a, b, beside));
    }
  }

  /** True when some sheet holds such a box and none that is no larger is known. */
  private boolean isUseful(int selection, int width, int height) {
    boolean held = false;
    for (int s = 0; s < model.sheets(); s++) {
      held |= width <= model.sheetWidth[s] && height <= model.sheetHeight[s];
    }
    if (!held) {
      return false;
    }
    for (Box box : boxes.get(selection)) {
      if (box.width <= width && box.height <= height) {
        return false;
      }
    }
    return true;
  }

  private void keep(int selection, Box box) {
    List<Box> known = boxes.get(selection);
    known.removeIf(other -> box.width <= other.width && box.height <= other.height);
    known.add(box);
  }

  private void host(int selection) {
    for (Box box : boxes.get(selection)) {
      for (int s = 0; s < model.sheets(); s++) {
        if (box.width <= model.sheetWidth[s]
            && box.height <= model.sheetHeight[s]
            && model.price[s] < cheapest[selection]) {
          cheapest[selection] = model.price[s];
          hostSheet[selection] = s;
          hostBox[selection] = box;
        }
      }
    }
    firstPart[selection] = selection;
  }

  /** Sheets are numbered by parts: each takes a selection, and what is left is solved already. */
  private void share(int selection) {
    for (int part = 1; part < selection; part++) {
      if (hostSheet[part] >= 0
          && isWithin(part, selection)
          && model.price[hostSheet[part]] + cheapest[selection - part] < cheapest[selection]) {
        cheapest[selection] = model.price[hostSheet[part]] + cheapest[selection - part];
        firstPart[selection] = part;
      }
    }
  }
}
