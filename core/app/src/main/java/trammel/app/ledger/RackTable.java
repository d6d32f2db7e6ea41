package trammel.app.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.rack.RackFile;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;

/** What a rack that was counted anew would change in the ledger. */
final class RackTable {
  /** Lengths that differ by less were only printed and read again (mm). */
  private static final double SAME_MM = 1e-6;

  private RackTable() {}

  /** The table is all of the rack: what is not in it comes off. */
  static TableChange change(Rack now, Rack counted, String file, QuantityPrinter printer) {
    Rack then = asBefore(now, counted);
    List<String> lines = new ArrayList<>();
    Map<String, String> before = pieces(now, printer);
    Map<String, String> after = pieces(then, printer);
    after.forEach(
        (piece, words) -> {
          if (!words.equals(before.get(piece))) {
            lines.add(
                piece
                    + ", "
                    + words
                    + (before.containsKey(piece)
                        ? ": takes the place of " + before.get(piece)
                        : ": goes on"));
          }
        });
    before.forEach(
        (piece, words) -> {
          if (!after.containsKey(piece)) {
            lines.add(piece + ", " + words + ": comes off");
          }
        });
    bins(now, then, printer, lines);
    return new TableChange(
        "rack", lines, ledger -> ledger.rackStock().become(then, "counted: " + file));
  }

  private static Map<String, String> pieces(Rack rack, QuantityPrinter printer) {
    Map<String, String> pieces = new LinkedHashMap<>();
    for (Rack.Stick stick : rack.sticks()) {
      pieces.put(
          "stick " + stick.name(),
          stick.barKey() + ", " + RackFile.length(stick.lengthMm(), printer));
    }
    for (Rack.Drop drop : rack.drops()) {
      pieces.put(
          "drop " + drop.name(),
          drop.plateKey()
              + ", "
              + RackFile.length(drop.lengthMm(), printer)
              + " x "
              + RackFile.length(drop.widthMm(), printer));
    }
    return pieces;
  }

  private static void bins(Rack now, Rack then, QuantityPrinter printer, List<String> lines) {
    Map<String, BigDecimal> before = counts(now, printer);
    Map<String, BigDecimal> after = counts(then, printer);
    before.keySet().forEach(bin -> after.putIfAbsent(bin, BigDecimal.ZERO));
    after.forEach(
        (bin, count) -> {
          BigDecimal was = before.getOrDefault(bin, BigDecimal.ZERO);
          if (was.compareTo(count) != 0) {
            lines.add(bin + ": " + plain(was) + " to " + plain(count));
          }
        });
  }

  private static Map<String, BigDecimal> counts(Rack rack, QuantityPrinter printer) {
    Map<String, BigDecimal> counts = new LinkedHashMap<>();
    for (Rack.Bin bin : rack.bins()) {
      String length = bin.lengthMm() > 0 ? ", " + RackFile.length(bin.lengthMm(), printer) : "";
      counts.merge("bin " + bin.key() + length, bin.quantity(), BigDecimal::add);
    }
    return counts;
  }

  private static String plain(BigDecimal count) {
    return count.stripTrailingZeros().toPlainString();
  }

  /** What only looks changed keeps its length to the last digit. */
  private static Rack asBefore(Rack now, Rack counted) {
    List<Rack.Stick> sticks = new ArrayList<>();
    for (Rack.Stick stick : counted.sticks()) {
      sticks.add(
          now.sticks().stream()
              .filter(
                  old ->
                      old.name().equals(stick.name())
                          && old.barKey().equals(stick.barKey())
                          && same(old.lengthMm(), stick.lengthMm()))
              .findFirst()
              .orElse(stick));
    }
    List<Rack.Drop> drops = new ArrayList<>();
    for (Rack.Drop drop : counted.drops()) {
      drops.add(
          now.drops().stream()
              .filter(
                  old ->
                      old.name().equals(drop.name())
                          && old.plateKey().equals(drop.plateKey())
                          && same(old.lengthMm(), drop.lengthMm())
                          && same(old.widthMm(), drop.widthMm()))
              .findFirst()
              .orElse(drop));
    }
    List<Rack.Bin> bins = new ArrayList<>();
    for (Rack.Bin bin : counted.bins()) {
      bins.add(
          now.bins().stream()
              .filter(old -> old.key().equals(bin.key()) && same(old.lengthMm(), bin.lengthMm()))
              .findFirst()
              .map(old -> new Rack.Bin(bin.key(), old.lengthMm(), bin.quantity()))
              .orElse(bin));
    }
    return new Rack(sticks, drops, bins);
  }

  private static boolean same(double oneMm, double otherMm) {
    return Math.abs(oneMm - otherMm) < SAME_MM;
  }
}
