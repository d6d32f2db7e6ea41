package trammel.trade.hardware;

import java.util.Map;
import java.util.Optional;

/**
 * Which standard series a thread belongs to, by its diameter and pitch. Source: ASME B1.1 (UNC,
 * UNF, UNEF, constant-pitch 8, 12 and 16) and ISO 261 (coarse and the usual fine pitches), from
 * memory.
 */
public final class ThreadSeries {
  private static final double INCH_MM = 25.4;

  /** Nominal sizes written as fractions or decimals agree to this (mm). */
  private static final double SAME_MM = 0.02;

  private static final double SAME_PITCH = 0.005;

  /** Nominal size in 1/16 in, to threads an inch of UNC, UNF and UNEF. */
  private static final Map<Integer, int[]> UNIFIED =
      Map.ofEntries(
          Map.entry(4, new int[] {20, 28, 32}),
          Map.entry(5, new int[] {18, 24, 32}),
          Map.entry(6, new int[] {16, 24, 32}),
          Map.entry(7, new int[] {14, 20, 28}),
          Map.entry(8, new int[] {13, 20, 28}),
          Map.entry(9, new int[] {12, 18, 24}),
          Map.entry(10, new int[] {11, 18, 24}),
          Map.entry(12, new int[] {10, 16, 20}),
          Map.entry(14, new int[] {9, 14, 20}),
          Map.entry(16, new int[] {8, 12, 20}),
          Map.entry(18, new int[] {7, 12, 18}),
          Map.entry(20, new int[] {7, 12, 18}),
          Map.entry(22, new int[] {6, 12, 18}),
          Map.entry(24, new int[] {6, 12, 18}));

  private static final String[] UNIFIED_NAMES = {"UNC", "UNF", "UNEF"};

  /** Nominal size (mm), to the coarse pitch and the usual fine ones (mm). */
  private static final Map<Integer, double[]> METRIC =
      Map.ofEntries(
          Map.entry(5, new double[] {0.8, 0.5}),
          Map.entry(6, new double[] {1, 0.75}),
          Map.entry(8, new double[] {1.25, 1}),
          Map.entry(10, new double[] {1.5, 1.25, 1}),
          Map.entry(12, new double[] {1.75, 1.5, 1.25}),
          Map.entry(14, new double[] {2, 1.5, 1.25}),
          Map.entry(16, new double[] {2, 1.5}),
          Map.entry(18, new double[] {2.5, 2, 1.5}),
          Map.entry(20, new double[] {2.5, 2, 1.5}),
          Map.entry(22, new double[] {2.5, 2, 1.5}),
          Map.entry(24, new double[] {3, 2, 1.5}),
          Map.entry(27, new double[] {3, 2}),
          Map.entry(30, new double[] {3.5, 2}));

  private ThreadSeries() {}

  /** The series of a thread; empty for a pitch that no table has. */
  public static Optional<String> of(ScrewThread thread) {
    return thread.form() == ThreadForm.METRIC ? metric(thread) : unified(thread);
  }

  private static Optional<String> unified(ScrewThread thread) {
    int sixteenths = (int) Math.round(16 * thread.diameterMm() / INCH_MM);
    double threads = INCH_MM / thread.pitchMm();
    int[] standard = UNIFIED.get(sixteenths);
    boolean nominal = Math.abs(thread.diameterMm() - sixteenths * INCH_MM / 16) < SAME_MM;
    if (!nominal || standard == null) {
      return Optional.empty();
    }
    for (int i = 0; i < standard.length; i++) {
      if (same(threads, standard[i])) {
        return Optional.of(UNIFIED_NAMES[i]);
      }
    }
    if (sixteenths == 16 && same(threads, 14)) {
      return Optional.of("UNS");
    }
    boolean constant = same(threads, 12) && sixteenths >= 9 || same(threads, 16) && sixteenths >= 7;
    boolean eight = same(threads, 8) && sixteenths >= 16;
    return constant || eight
        ? Optional.of(Math.round(threads) + "-UN, constant pitch")
        : Optional.empty();
  }

  private static Optional<String> metric(ScrewThread thread) {
    int size = (int) Math.round(thread.diameterMm());
    double[] standard = METRIC.get(size);
    if (standard == null || Math.abs(thread.diameterMm() - size) > SAME_MM) {
      return Optional.empty();
    }
    for (int i = 0; i < standard.length; i++) {
      if (same(thread.pitchMm(), standard[i])) {
        return Optional.of(i == 0 ? "metric coarse" : "metric fine");
      }
    }
    return Optional.empty();
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) < SAME_PITCH * other;
  }
}
