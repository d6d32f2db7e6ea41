package trammel.planning.rack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Takes stock off a rack and puts what is left over back on it. */
public final class RackEdit {
  private static final double SAME_BOLT_MM = 0.01;
  private static final String PIECE = "R";

  private final Rack before;
  private final Map<String, Rack.Stick> sticks;
  private final Map<String, Rack.Sheet> sheets;
  private final Map<String, BigDecimal> items;
  private final List<Rack.Bolts> bolts;
  private int next;

  /**
   * @param rack the rack as it is
   */
  public RackEdit(Rack rack) {
    before = rack;
    sticks = new LinkedHashMap<>(rack.sticks());
    sheets = new LinkedHashMap<>(rack.sheets());
    items = new LinkedHashMap<>(rack.items());
    bolts = new ArrayList<>(rack.bolts());
    next = rack.next();
  }

  /** The rack as it is then. */
  public Rack rack() {
    return new Rack(before.units(), before.note(), next, sticks, sheets, items, bolts);
  }

  /**
   * Takes one length.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public void takeStick(String name) {
    Rack.Stick stick = found(sticks.get(name), name);
    if (stick.count() == 1) {
      sticks.remove(name);
    } else {
      sticks.put(name, new Rack.Stick(stick.barKey(), stick.lengthMm(), stick.count() - 1));
    }
  }

  /**
   * Takes one sheet.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public void takeSheet(String name) {
    Rack.Sheet sheet = found(sheets.get(name), name);
    if (sheet.count() == 1) {
      sheets.remove(name);
    } else {
      sheets.put(
          name,
          new Rack.Sheet(sheet.plateKey(), sheet.widthMm(), sheet.lengthMm(), sheet.count() - 1));
    }
  }

  private static <T> T found(T piece, String name) {
    if (piece == null) {
      throw new IllegalArgumentException(
          "'" + name + "' is not on the rack (any more); take a piece that is there.");
    }
    return piece;
  }

  /** Takes as much of an item as is wanted and there; returns how much that is. */
  public BigDecimal takeItem(String key, BigDecimal wanted) {
    BigDecimal there = items.getOrDefault(key, BigDecimal.ZERO);
    BigDecimal taken = there.min(wanted);
    if (taken.signum() > 0) {
      setItem(key, there.subtract(taken));
    }
    return taken;
  }

  /** Takes as many bolts of a length as are wanted and there; returns how many that are. */
  public int takeBolts(String boltKey, double lengthMm, int wanted) {
    int taken = 0;
    for (int i = bolts.size() - 1; i >= 0 && taken < wanted; i--) {
      Rack.Bolts some = bolts.get(i);
      if (some.boltKey().equals(boltKey) && Math.abs(some.lengthMm() - lengthMm) < SAME_BOLT_MM) {
        int now = Math.min(wanted - taken, some.count());
        taken += now;
        if (now == some.count()) {
          bolts.remove(i);
        } else {
          bolts.set(i, new Rack.Bolts(boltKey, some.lengthMm(), some.count() - now));
        }
      }
    }
    return taken;
  }

  /** Puts a length on; returns the name to paint on it. */
  public String putStick(String barKey, double lengthMm) {
    String name = fresh();
    sticks.put(name, new Rack.Stick(barKey, lengthMm, 1));
    return name;
  }

  /** Puts a drop on; returns the name to paint on it. */
  public String putSheet(String plateKey, double widthMm, double lengthMm) {
    String name = fresh();
    sheets.put(name, new Rack.Sheet(plateKey, widthMm, lengthMm, 1));
    return name;
  }

  /** Puts some of an item on. */
  public void putItem(String key, BigDecimal quantity) {
    setItem(key, items.getOrDefault(key, BigDecimal.ZERO).add(quantity));
  }

  private void setItem(String key, BigDecimal quantity) {
    if (quantity.signum() == 0) {
      items.remove(key);
    } else {
      items.put(key, quantity);
    }
  }

  private String fresh() {
    String name;
    do {
      name = PIECE + next++;
    } while (sticks.containsKey(name) || sheets.containsKey(name));
    return name;
  }
}
