package trammel.ledger;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import trammel.planning.rack.Rack;

/**
 * A process that writes until it is killed. Each job is closed, takes a nut, leaves an offcut and
 * has its readings after tacking kept as one change; its number is printed when that change is
 * kept.
 */
final class KilledWriter {
  static final String NUT = "jam-nut-0.750-16";
  static final int NUTS = 100_000;

  /** With this many offcuts the oldest goes, so that the file stays small. */
  static final int MOST_OFFCUTS = 20;

  private KilledWriter() {}

  /** Takes the ledger, where SQLite is kept, what its jobs are called, and how many; 0: endless. */
  public static void main(String... arguments) {
    NativeLibrary.keepIn(List.of(Path.of(arguments[1])));
    int most = Integer.parseInt(arguments[3]);
    try (Ledger ledger = Ledger.open(Path.of(arguments[0]))) {
      for (int i = 0; most == 0 || i < most; i++) {
        String number = arguments[2] + "-" + i;
        write(ledger, number);
        System.out.println(number);
        System.out.flush();
      }
    }
  }

  static void write(Ledger ledger, String number) {
    ledger.asOne(
        () -> {
          ledger.closedJobs().close(Samples.jobInParts(number));
          Rack rack = ledger.rackStock().rack().taking(NUT, 0, BigDecimal.ONE);
          if (rack.sticks().size() >= MOST_OFFCUTS) {
            rack = rack.without(rack.sticks().get(0).name());
          }
          rack = rack.with(new Rack.Stick("of " + number, "dom-1.50x0.120", 415.925));
          ledger.rackStock().become(rack, "ordered for " + number);
          ledger.tackings().write(Samples.tacking(number));
          return null;
        });
  }

  /** A ledger with nothing in it but nuts. */
  static void prepare(Path file) {
    try (Ledger ledger = Ledger.open(file)) {
      ledger
          .rackStock()
          .become(
              new Rack(
                  List.of(), List.of(), List.of(new Rack.Bin(NUT, 0, BigDecimal.valueOf(NUTS)))),
              "counted");
    }
  }
}
