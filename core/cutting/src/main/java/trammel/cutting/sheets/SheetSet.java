package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.List;

/** Filled sheets that together hold all parts. */
final class SheetSet {
  final List<Integer> sheets = new ArrayList<>();
  final List<Layout> layouts = new ArrayList<>();
  long price;

  /** How many sheets there are. */
  int size() {
    return sheets.size();
  }

  void add(SheetModel model, int sheet, Layout layout) {
    sheets.add(sheet);
    layouts.add(layout);
    price += model.price[sheet];
  }
}
