package trammel.planning.rack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.engine.quantity.Given;

/**
 * Stock on hand: sticks and drops, each with the name that is painted on it, and what lies in bins.
 *
 * @param sticks lengths of tube and section
 * @param drops rectangles of plate
 * @param bins bolts and other bought parts, by the piece
 */
public record Rack(List<Stick> sticks, List<Drop> drops, List<Bin> bins) {
  /** Nothing on hand. */
  public static final Rack EMPTY = new Rack(List.of(), List.of(), List.of());

  /**
   * A length of a section.
   *
   * @param name painted on it; no other stick or drop has it
   * @param barKey key of the section in the catalog
   * @param lengthMm its length (mm), above 0
   */
  public record Stick(String name, String barKey, double lengthMm) {
    public Stick {
      Given.text("name of a stick", name, "Paint a name on it and write it down.");
      Given.text("section of stick '" + name + "'", barKey, "Give its catalog key.");
      Given.positive("length of stick '" + name + "' in mm", lengthMm, 20_000, "", "Measure it.");
    }
  }

  /**
   * A rectangle of plate.
   *
   * @param name painted on it; no other stick or drop has it
   * @param plateKey key of the plate in the catalog
   * @param widthMm one side (mm), above 0
   * @param lengthMm the other side (mm), above 0
   */
  public record Drop(String name, String plateKey, double widthMm, double lengthMm) {
    public Drop {
      Given.text("name of a drop", name, "Paint a name on it and write it down.");
      Given.text("plate of drop '" + name + "'", plateKey, "Give its catalog key.");
      Given.positive("width of drop '" + name + "' in mm", widthMm, 20_000, "", "Measure it.");
      Given.positive("length of drop '" + name + "' in mm", lengthMm, 20_000, "", "Measure it.");
    }
  }

  /**
   * So many of one bought thing.
   *
   * @param key key of the item or bolt in the catalog
   * @param lengthMm length of a bolt (mm); 0 for anything else
   * @param quantity how many of its unit, 0 or more
   */
  public record Bin(String key, double lengthMm, BigDecimal quantity) {
    private static final long MOST = 1_000_000;

    /** How far two lengths of the same bolt may differ by rounding (mm). */
    private static final double SAME_MM = 0.5;

    public Bin {
      Given.text("key of a bin", key, "Give the item's catalog key.");
      Given.within("length of bolt '" + key + "' in mm", lengthMm, 0, 2000, "", "Measure it.");
      Given.decimal("quantity of '" + key + "'", quantity, 0, MOST, "Count it.");
    }

    boolean holds(String otherKey, double otherMm) {
      return key.equals(otherKey) && Math.abs(lengthMm - otherMm) < SAME_MM;
    }
  }

  public Rack {
    sticks = List.copyOf(sticks);
    drops = List.copyOf(drops);
    bins = List.copyOf(bins);
    Set<String> names = new HashSet<>();
    for (Stick stick : sticks) {
      requireOwnName(names, stick.name());
    }
    for (Drop drop : drops) {
      requireOwnName(names, drop.name());
    }
  }

  private static void requireOwnName(Set<String> names, String name) {
    if (!names.add(name)) {
      throw new IllegalArgumentException(
          "two pieces on the rack are called '" + name + "'; each needs its own. Rename one.");
    }
  }

  /** True when there is nothing on it. */
  public boolean isEmpty() {
    return sticks.isEmpty() && drops.isEmpty() && bins.isEmpty();
  }

  /** The sticks of one section. */
  public List<Stick> sticks(String barKey) {
    List<Stick> found = new ArrayList<>();
    for (Stick stick : sticks) {
      if (stick.barKey().equals(barKey)) {
        found.add(stick);
      }
    }
    return found;
  }

  /** The drops of one plate. */
  public List<Drop> drops(String plateKey) {
    List<Drop> found = new ArrayList<>();
    for (Drop drop : drops) {
      if (drop.plateKey().equals(plateKey)) {
        found.add(drop);
      }
    }
    return found;
  }

  /** How many of something lie in its bins. */
  public BigDecimal held(String key, double lengthMm) {
    BigDecimal held = BigDecimal.ZERO;
    for (Bin bin : bins) {
      if (bin.holds(key, lengthMm)) {
        held = held.add(bin.quantity());
      }
    }
    return held;
  }

  /** The rack without a stick or drop. */
  public Rack without(String name) {
    List<Stick> fewerSticks = new ArrayList<>(sticks);
    fewerSticks.removeIf(stick -> stick.name().equals(name));
    List<Drop> fewerDrops = new ArrayList<>(drops);
    fewerDrops.removeIf(drop -> drop.name().equals(name));
    return new Rack(fewerSticks, fewerDrops, bins);
  }

  /** The rack with a stick put on it. */
  public Rack with(Stick stick) {
    List<Stick> more = new ArrayList<>(sticks);
    more.add(stick);
    return new Rack(more, drops, bins);
  }

  /** The rack with a drop put on it. */
  public Rack with(Drop drop) {
    List<Drop> more = new ArrayList<>(drops);
    more.add(drop);
    return new Rack(sticks, more, bins);
  }

  /**
   * The rack with some of a bought thing taken.
   *
   * @throws IllegalArgumentException if there are fewer
   */
  public Rack taking(String key, double lengthMm, BigDecimal quantity) {
    BigDecimal open = quantity;
    List<Bin> left = new ArrayList<>(bins.size());
    for (Bin bin : bins) {
      if (!bin.holds(key, lengthMm)) {
        left.add(bin);
        continue;
      }
      BigDecimal taken = bin.quantity().min(open);
      open = open.subtract(taken);
      if (bin.quantity().compareTo(taken) > 0) {
        left.add(new Bin(bin.key(), bin.lengthMm(), bin.quantity().subtract(taken)));
      }
    }
    if (open.signum() > 0) {
      throw new IllegalArgumentException(
          quantity + " of '" + key + "' were to be taken; there are " + held(key, lengthMm) + ".");
    }
    return new Rack(sticks, drops, left);
  }

  /** The rack with some more of a bought thing. */
  public Rack putting(String key, BigDecimal quantity) {
    List<Bin> more = new ArrayList<>(bins);
    for (int i = 0; i < more.size(); i++) {
      if (more.get(i).holds(key, 0)) {
        more.set(i, new Bin(key, 0, more.get(i).quantity().add(quantity)));
        return new Rack(sticks, drops, more);
      }
    }
    more.add(new Bin(key, 0, quantity));
    return new Rack(sticks, drops, more);
  }

  /** The highest number of a name such as R12 on the rack; 0 where there is none. */
  public int highestNumber(String letter) {
    int highest = 0;
    for (Stick stick : sticks) {
      highest = Math.max(highest, number(letter, stick.name()));
    }
    for (Drop drop : drops) {
      highest = Math.max(highest, number(letter, drop.name()));
    }
    return highest;
  }

  /** The number of a name such as R12; 0 for any other name. */
  private static int number(String letter, String name) {
    if (!name.startsWith(letter) || name.length() < 2 || name.length() > 9) {
      return 0;
    }
    for (int i = 1; i < name.length(); i++) {
      if (name.charAt(i) < '0' || name.charAt(i) > '9') {
        return 0;
      }
    }
    return Integer.parseInt(name.substring(1));
  }
}
