package trammel.trade.hardware;

import java.util.Locale;
import trammel.trade.given.Dimension;

/**
 * A screw thread.
 *
 * @param name as it is written on the box, such as {@code 5/8-18} or {@code M12x1.75}
 * @param form family of the thread
 * @param diameterMm nominal diameter
 * @param pitchMm distance from thread to thread
 */
public record ScrewThread(String name, ThreadForm form, double diameterMm, double pitchMm) {
  private static final double MM_PER_INCH = 25.4;

  /**
   * Depth of a full 60-degree thread at 1 % is 0.01299 pitches (3/4 of its sharp height, twice).
   */
  private static final double DEPTH_PER_PERCENT = 0.01299;

  public ScrewThread {
    Dimension.text("thread name", name);
    Dimension.positiveMm("diameter of thread " + name, diameterMm);
    Dimension.positiveMm("pitch of thread " + name, pitchMm);
    Dimension.atMostMm(
        "pitch of thread " + name,
        pitchMm,
        diameterMm / 2.0,
        "Give the thread as diameter and pitch, such as 5/8-18 or M12x1.75.");
  }

  /**
   * Reads a thread as the trade writes it: inches and threads per inch ({@code 1/2-13}, {@code
   * 1-1/4-12}, {@code 1.25-12}), or metric ({@code M12x1.75}).
   *
   * @throws IllegalArgumentException when it is neither
   */
  public static ScrewThread of(String text) {
    String trimmed = text.trim();
    try {
      if (trimmed.startsWith("M") || trimmed.startsWith("m")) {
        return metric(trimmed);
      }
      return unified(trimmed);
    } catch (NumberFormatException e) {
      throw unreadable(text);
    }
  }

  private static ScrewThread metric(String text) {
    int cross = text.toLowerCase(Locale.ROOT).indexOf('x');
    if (cross < 0) {
      throw unreadable(text);
    }
    double diameterMm = Double.parseDouble(text.substring(1, cross));
    double pitchMm = Double.parseDouble(text.substring(cross + 1));
    return new ScrewThread(text, ThreadForm.METRIC, diameterMm, pitchMm);
  }

  private static ScrewThread unified(String text) {
    int dash = text.lastIndexOf('-');
    if (dash < 1) {
      throw unreadable(text);
    }
    double diameterMm = inches(text.substring(0, dash)) * MM_PER_INCH;
    double pitchMm = MM_PER_INCH / Double.parseDouble(text.substring(dash + 1));
    return new ScrewThread(text, ThreadForm.UNIFIED, diameterMm, pitchMm);
  }

  private static double inches(String text) {
    int dash = text.indexOf('-');
    if (dash >= 0) {
      return Double.parseDouble(text.substring(0, dash)) + inches(text.substring(dash + 1));
    }
    int slash = text.indexOf('/');
    if (slash < 0) {
      return Double.parseDouble(text);
    }
    return Double.parseDouble(text.substring(0, slash))
        / Double.parseDouble(text.substring(slash + 1));
  }

  private static IllegalArgumentException unreadable(String text) {
    return Dimension.refuse(
        "thread",
        "\"" + text + "\"",
        "inches and threads an inch such as 5/8-18, or metric such as M12x1.75",
        "Write it that way.");
  }

  /** Area that carries tension: (pi/4)(D - cP)2. */
  public double stressAreaMm2() {
    double stressDiameterMm = diameterMm - form.stressDepthFactor() * pitchMm;
    return Math.PI / 4.0 * stressDiameterMm * stressDiameterMm;
  }

  /** Hole to drill for a given height of thread in percent of the full one, 50 to 85. */
  public double tapDrillMm(double threadPercent) {
    if (!(threadPercent >= 50.0 && threadPercent <= 85.0)) {
      throw Dimension.refuse(
          "height of thread",
          threadPercent + " %",
          "50 to 85 %",
          "Use 75 % unless the tap chart says otherwise.");
    }
    return diameterMm - threadPercent * DEPTH_PER_PERCENT * pitchMm;
  }

  /** Height of thread, in percent of the full one, that a drilled hole leaves for the tap. */
  public double threadPercent(double drillMm) {
    Dimension.positiveMm("tap drill", drillMm);
    return (diameterMm - drillMm) / (DEPTH_PER_PERCENT * pitchMm);
  }
}
