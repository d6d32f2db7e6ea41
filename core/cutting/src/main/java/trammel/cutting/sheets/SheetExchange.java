package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import trammel.cutting.internal.Deadline;

/**
 * Takes some sheets of a plan and cuts their parts from others at the least price, again and again
 * (large neighbourhood search, Shaw 1998, from memory).
 *
 * <p>The parts of the sheets taken are split among new sheets in every way (dynamic programming
 * over selections). Where they are too many, some of each sheet stay together. A plan that no such
 * exchange improves is disturbed, and the search goes on from there.
 */
final class SheetExchange {
  /** Parts, or groups that stay together, dealt out anew at once: so many or a few more. */
  private static final int ITEMS = 8;

  private static final int MORE_ITEMS = 2;

  private static final int MOST_SHEETS_TAKEN = 4;

  /** Sheets limited in number that the parts dealt out may use, one of each at most. */
  private static final int MOST_LIMITED = 3;

  /** Exchanges that are known to bring nothing in a row, after which the plan is disturbed. */
  private static final int PATIENCE = 60;

  /** Disturbed plans in a row that lead to nothing better before the best is taken up again. */
  private static final int DISTURBED = 4;

  private static final long STEPS_PER_DEAL = 500;
  private static final long STEPS_PER_SET = 40;
  private static final long STEPS_PER_SPLIT = 2;
  private static final long OUT_OF_REACH = Long.MAX_VALUE / 4;
  private static final double NOISE = 1e-6;

  private final SheetModel model;
  private final PartRoom room;
  private final Random random;
  private final Deadline deadline;
  private final Integer[] cheapestFirst;

  /** Least price of a square step on any sheet. */
  private final double leastRate;

  private final Set<List<Long>> settled = new HashSet<>();

  private final List<Sheet> sheets = new ArrayList<>();
  private long price;

  /** A sheet and the parts on it. */
  private record Sheet(int stock, long parts) {}

  /**
   * What is dealt out anew.
   *
   * @param united per set of items, which is a bit for each: the parts in it
   * @param limited sheets limited in number that are free for them
   * @param price of the sheets they lie on so far
   */
  private record Deal(long[] united, List<Integer> limited, long price) {}

  SheetExchange(SheetModel model, PartRoom room, Random random, Deadline deadline) {
    this.model = model;
    this.room = room;
    this.random = random;
    this.deadline = deadline;
    cheapestFirst = new Integer[model.sheets()];
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < cheapestFirst.length; s++) {
      cheapestFirst[s] = s;
      least = Math.min(least, (double) model.price[s] / model.sheetArea(s));
    }
    Arrays.sort(cheapestFirst, (a, b) -> Long.compare(model.price[a], model.price[b]));
    leastRate = least;
  }

  /**
   * @param start a plan of all parts
   * @param lowerBound no plan is cheaper
   * @return the cheapest plan met
   */
  SheetSet run(SheetSet start, long lowerBound) {
    take(start);
    List<Sheet> best = List.copyOf(sheets);
    long bestPrice = price;
    int disturbed = 0;
    while (bestPrice > lowerBound && !deadline.isPast()) {
      exchange();
      if (price < bestPrice) {
        best = List.copyOf(sheets);
        bestPrice = price;
        disturbed = 0;
      } else if (disturbed++ == DISTURBED) {
        sheets.clear();
        sheets.addAll(best);
        price = bestPrice;
        disturbed = 0;
      }
      disturb();
    }
    return written(best);
  }

  private void take(SheetSet start) {
    int[] next = room.firstParts();
    for (int s = 0; s < start.size(); s++) {
      Layout layout = start.layouts.get(s);
      long parts = 0;
      for (int i = 0; i < layout.parts; i++) {
        parts |= 1L << next[layout.type[i]]++;
      }
      sheets.add(new Sheet(start.sheets.get(s), parts));
      room.know(parts, start.sheets.get(s), layout);
    }
    price = start.price;
  }

  private SheetSet written(List<Sheet> plan) {
    SheetSet set = new SheetSet();
    for (Sheet sheet : plan) {
      set.add(model, sheet.stock, room.layout(sheet.parts, sheet.stock));
    }
    return set;
  }

  /** Exchanges until so many in a row bring nothing. */
  private void exchange() {
    int idle = 0;
    while (idle < PATIENCE && !deadline.isPast()) {
      idle = exchangeSome() ? 0 : idle + 1;
    }
  }

  private boolean exchangeSome() {
    deadline.spend(STEPS_PER_DEAL);
    int most = Math.min(sheets.size(), MOST_SHEETS_TAKEN);
    List<Integer> taken = drawn(most <= 2 ? most : 2 + random.nextInt(most - 1));
    List<Long> parts = parts(taken);
    List<Long> items = items(taken, parts);
    if (items.size() == parts.size() && !settled.add(selections(taken))) {
      return false;
    }
    List<Sheet> better = new Split(deal(taken, items)).cheapest();
    if (better == null) {
      return false;
    }
    remove(taken);
    sheets.addAll(better);
    price = 0;
    for (Sheet sheet : sheets) {
      price += model.price[sheet.stock];
    }
    return true;
  }

  /** The selections on some sheets, in an order of their own. */
  private List<Long> selections(List<Integer> taken) {
    List<Long> selections = new ArrayList<>();
    for (int at : taken) {
      selections.add(sheets.get(at).parts);
    }
    selections.sort(null);
    return selections;
  }

  /** The parts on some sheets, one by one. */
  private List<Long> parts(List<Integer> taken) {
    List<Long> parts = new ArrayList<>();
    for (int at : taken) {
      addEach(sheets.get(at).parts, parts);
    }
    return parts;
  }

  private static void addEach(long selection, List<Long> parts) {
    for (long left = selection; left != 0; left &= left - 1) {
      parts.add(left & -left);
    }
  }

  /** Some different places in the plan, drawn at random. */
  private List<Integer> drawn(int count) {
    List<Integer> places = new ArrayList<>();
    while (places.size() < count) {
      int at = random.nextInt(sheets.size());
      if (!places.contains(at)) {
        places.add(at);
      }
    }
    return places;
  }

  /** The parts of the sheets taken, one by one if they are few, else some of them in groups. */
  private List<Long> items(List<Integer> taken, List<Long> parts) {
    int most = ITEMS + random.nextInt(MORE_ITEMS + 1);
    if (parts.size() <= most) {
      return parts;
    }
    long single = 0;
    for (int i = 0; i < most - taken.size(); i++) {
      single |= parts.get(random.nextInt(parts.size()));
    }
    List<Long> items = new ArrayList<>();
    addEach(single, items);
    for (int at : taken) {
      long group = sheets.get(at).parts & ~single;
      if (group != 0) {
        items.add(group);
      }
    }
    return items;
  }

  private Deal deal(List<Integer> taken, List<Long> items) {
    long[] united = new long[1 << items.size()];
    for (int set = 1; set < united.length; set++) {
      united[set] = united[set & set - 1] | items.get(Integer.numberOfTrailingZeros(set));
    }
    int[] used = new int[model.sheets()];
    long sum = 0;
    for (int i = 0; i < sheets.size(); i++) {
      if (taken.contains(i)) {
        sum += model.price[sheets.get(i).stock];
      } else {
        used[sheets.get(i).stock]++;
      }
    }
    List<Integer> limited = new ArrayList<>();
    for (int s : cheapestFirst) {
      boolean some = model.available[s] != SheetModel.UNLIMITED && used[s] < model.available[s];
      if (some && limited.size() < MOST_LIMITED) {
        limited.add(s);
      }
    }
    return new Deal(united, limited, sum);
  }

  private void remove(List<Integer> taken) {
    List<Integer> falling = new ArrayList<>(taken);
    falling.sort((a, b) -> b - a);
    for (int at : falling) {
      sheets.remove(at);
    }
  }

  /** Moves some parts of two sheets to sheets of their own, whatever that costs. */
  private void disturb() {
    int times = 1 + random.nextInt(2);
    for (int i = 0; i < times; i++) {
      int at = random.nextInt(sheets.size());
      Sheet sheet = sheets.get(at);
      long moved = 0;
      for (long left = sheet.parts; left != 0; left &= left - 1) {
        moved |= random.nextBoolean() ? left & -left : 0;
      }
      long kept = sheet.parts & ~moved;
      int forMoved = cheapestUnlimited(moved);
      int forKept = cheapestUnlimited(kept);
      if (moved != 0 && kept != 0 && forMoved >= 0 && forKept >= 0) {
        sheets.remove(at);
        sheets.add(new Sheet(forMoved, moved));
        sheets.add(new Sheet(forKept, kept));
        price += model.price[forMoved] + model.price[forKept] - model.price[sheet.stock];
      }
    }
  }

  /** The cheapest sheet open in number that a selection fits on, or −1. */
  private int cheapestUnlimited(long parts) {
    for (int s : cheapestFirst) {
      if (model.available[s] == SheetModel.UNLIMITED && room.fits(parts, s)) {
        return s;
      }
    }
    return -1;
  }

  /** All ways to split the items of one deal among sheets. */
  private final class Split {
    private final Deal deal;
    private final int all;

    /** Per set of items: sheets that it may still fit on. */
    private final long[] possible;

    /** Per set of items: the cheapest sheet open in number, and its price. */
    private final int[] stock;

    private final long[] single;

    /** Per set of items: the least price, and the items on the first sheet of that. */
    private final long[] least;

    private final int[] firstItems;

    /** Steps of the last set of limited sheets: which items lie on each. */
    private final int[][] onLimited;

    Split(Deal deal) {
      this.deal = deal;
      int sets = deal.united.length;
      this.all = sets - 1;
      possible = new long[sets];
      stock = new int[sets];
      single = new long[sets];
      least = new long[sets];
      firstItems = new int[sets];
      onLimited = new int[deal.limited.size()][];
    }

    /** A cheaper way, or null. */
    List<Sheet> cheapest() {
      long whole = room.area(deal.united[all]);
      if (isTooDear(leastRate * whole)) {
        return null;
      }
      possible[0] = -1;
      for (int set = 1; set <= all; set++) {
        settle(set, whole);
      }
      deadline.spend(STEPS_PER_SET * all);
      split();
      addLimited();
      return least[all] < deal.price ? sheets() : null;
    }

    private boolean isTooDear(double price) {
      return price > deal.price - 1 + NOISE;
    }

    /** Finds the cheapest sheet open in number for a set of items whose subsets are settled. */
    private void settle(int set, long whole) {
      long sheetsLeft = -1;
      for (int items = set; items != 0 && sheetsLeft != 0; items &= items - 1) {
        sheetsLeft &= possible[set & ~(items & -items)];
      }
      single[set] = OUT_OF_REACH;
      stock[set] = -1;
      long area = room.area(deal.united[set]);
      double others = leastRate * (whole - area);
      for (int s : cheapestFirst) {
        boolean candidate = (sheetsLeft >>> s & 1) != 0;
        if (!candidate || model.available[s] != SheetModel.UNLIMITED) {
          continue;
        }
        if (isTooDear(model.price[s] + others)) {
          break;
        }
        if (area <= model.sheetArea(s) && room.fits(deal.united[set], s)) {
          single[set] = model.price[s];
          stock[set] = s;
          break;
        }
        sheetsLeft &= ~(1L << s);
      }
      possible[set] = sheetsLeft;
    }

    /** For every set of items the cheapest sheet for its lowest item and some others. */
    private void split() {
      for (int set = 1; set <= all; set++) {
        int lowest = set & -set;
        int rest = set & ~lowest;
        long best = OUT_OF_REACH;
        int bestFirst = set;
        for (int others = rest; ; others = others - 1 & rest) {
          int first = others | lowest;
          if (single[first] < best) {
            long cost = single[first] + least[set & ~first];
            if (cost < best) {
              best = cost;
              bestFirst = first;
            }
          }
          if (others == 0) {
            break;
          }
        }
        least[set] = best;
        firstItems[set] = bestFirst;
        deadline.spend(STEPS_PER_SPLIT << Integer.bitCount(rest));
      }
    }

    /** One sheet after another of those limited in number: which items it would best take. */
    private void addLimited() {
      for (int i = 0; i < onLimited.length; i++) {
        int s = deal.limited.get(i);
        boolean[] fits = fitting(s);
        long[] with = least.clone();
        onLimited[i] = new int[least.length];
        for (int set = 1; set <= all; set++) {
          for (int on = set; on != 0; on = on - 1 & set) {
            if (fits[on] && model.price[s] + least[set & ~on] < with[set]) {
              with[set] = model.price[s] + least[set & ~on];
              onLimited[i][set] = on;
            }
          }
          deadline.spend(STEPS_PER_SPLIT << Integer.bitCount(set));
        }
        System.arraycopy(with, 0, least, 0, least.length);
      }
    }

    /** Which sets of items fit on a sheet. */
    private boolean[] fitting(int sheet) {
      boolean[] fits = new boolean[all + 1];
      fits[0] = true;
      for (int set = 1; set <= all; set++) {
        boolean may = room.area(deal.united[set]) <= model.sheetArea(sheet);
        for (int items = set; items != 0 && may; items &= items - 1) {
          may = fits[set & ~(items & -items)];
        }
        fits[set] = may && room.fits(deal.united[set], sheet);
      }
      return fits;
    }

    private List<Sheet> sheets() {
      List<Sheet> result = new ArrayList<>();
      int left = all;
      for (int i = onLimited.length - 1; i >= 0; i--) {
        int on = onLimited[i][left];
        if (on != 0) {
          result.add(new Sheet(deal.limited.get(i), deal.united[on]));
          left &= ~on;
        }
      }
      while (left != 0) {
        int first = firstItems[left];
        result.add(new Sheet(stock[first], deal.united[first]));
        left &= ~first;
      }
      return result;
    }
  }
}
