package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.engine.geometry.Vector3;
import trammel.reading.quantity.DecimalText;

/**
 * Which way something points, in words: the nearest of six ways, and how far it leans from that
 * towards others, each as a protractor reads it in the view square to both.
 *
 * @param kind the datum, which names the ways out and in
 * @param own the way by along, up and out
 */
public record Heading(Datum.Kind kind, Vector3 own) {
  /** What is nearer than this reads as square. */
  private static final double SQUARE_DEG = 0.05;

  private record Part(double amount, String plus, String minus) {
    String word() {
      return amount > 0 ? plus : minus;
    }

    double size() {
      return Math.abs(amount);
    }
  }

  /** Such as {@code up}, or {@code up 12.0° inward}. */
  public String words() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(own.x(), "front", "rear"));
    parts.add(new Part(own.y(), "up", "down"));
    parts.add(new Part(own.z(), kind.outWord(true), kind.outWord(false)));
    // The order among equals must not hang on rounding.
    Part main =
        parts.stream().max(Comparator.comparingDouble(part -> Math.rint(1e6 * part.size()))).get();
    StringBuilder words = new StringBuilder(main.word());
    for (Part part : parts) {
      double leanDeg = Math.toDegrees(Math.atan2(part.size(), main.size()));
      if (part != main && leanDeg >= SQUARE_DEG) {
        words.append(' ').append(DecimalText.fixed(leanDeg, 1)).append("° ").append(part.word());
      }
    }
    return words.toString();
  }
}
