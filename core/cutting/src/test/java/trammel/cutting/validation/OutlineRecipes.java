package trammel.cutting.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.outlines.OutlinePart;
import trammel.cutting.outlines.OutlinePoint;

/**
 * Strips of irregular outlines. No generator of such lists is published; this is a recipe of our
 * own: brackets, gussets, rings open to one side and plates with bites taken out of their edges.
 */
final class OutlineRecipes {
  private static final double STRIP_MM = 600;
  private static final List<Double> HALF_TURNS = List.of(0.0, 180.0);
  private static final List<Double> QUARTER_TURNS = List.of(0.0, 90.0, 180.0, 270.0);

  private OutlineRecipes() {}

  /** Kinds of outline, each several times. */
  static Instance plates(int kinds, int most, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<OutlinePart> parts = new ArrayList<>();
    int count = 0;
    for (int k = 0; k < kinds; k++) {
      double size = 60 + 180 * random.nextDouble() * random.nextDouble();
      List<OutlinePoint> outline =
          switch (random.nextInt(4)) {
            case 0 -> star(random, size);
            case 1 -> angle(random, size);
            case 2 -> openRing(random, size);
            default -> bitten(random, size);
          };
      int quantity = 1 + random.nextInt(most);
      count += quantity;
      parts.add(
          new OutlinePart(
              "part " + k, outline, random.nextBoolean() ? HALF_TURNS : QUARTER_TURNS, quantity));
    }
    return new Instance.OutlineStrip(
        "plates",
        "plates n" + count + " seed " + seed,
        OptionalDouble.empty(),
        new NestingStripProblem(STRIP_MM, parts, 0, 0));
  }

  /** Corners at rising angles and any distance from a middle. */
  private static List<OutlinePoint> star(SplittableRandom random, double size) {
    int corners = 5 + random.nextInt(8);
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
      double reach = size / 2 * (0.45 + 0.55 * random.nextDouble());
      outline.add(point(reach * Math.cos(angle), reach * Math.sin(angle)));
    }
    return outline;
  }

  /** Two legs, the inner corner cut off. */
  private static List<OutlinePoint> angle(SplittableRandom random, double size) {
    double across = size * (0.5 + 0.5 * random.nextDouble());
    double leg = across * (0.2 + 0.25 * random.nextDouble());
    double foot = across * (0.2 + 0.25 * random.nextDouble());
    double chamfer = 0.5 * Math.min(across - leg, across - foot) * random.nextDouble();
    return List.of(
        point(0, 0),
        point(size, 0),
        point(size, foot),
        point(leg + chamfer, foot),
        point(leg, foot + chamfer),
        point(leg, across),
        point(0, across));
  }

  /** Part of a ring. */
  private static List<OutlinePoint> openRing(SplittableRandom random, double size) {
    double outer = size / 2;
    double inner = outer * (0.4 + 0.4 * random.nextDouble());
    double opened = Math.PI * (0.6 + 0.8 * random.nextDouble());
    int steps = 8 + random.nextInt(12);
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double angle = opened * i / steps;
      outline.add(point(outer * Math.cos(angle), outer * Math.sin(angle)));
    }
    for (int i = steps; i >= 0; i--) {
      double angle = opened * i / steps;
      outline.add(point(inner * Math.cos(angle), inner * Math.sin(angle)));
    }
    return outline;
  }

  /** A plate with a round bite out of its upper edge and a slope at one end. */
  private static List<OutlinePoint> bitten(SplittableRandom random, double size) {
    double height = size * (0.3 + 0.5 * random.nextDouble());
    double radius = Math.min(0.3 * size, 0.7 * height) * (0.5 + 0.5 * random.nextDouble());
    double middle = size * (0.4 + 0.2 * random.nextDouble());
    List<OutlinePoint> outline = new ArrayList<>();
    outline.add(point(0, 0));
    outline.add(point(size, 0));
    outline.add(point(size, height * (0.5 + 0.5 * random.nextDouble())));
    outline.add(point(Math.min(size, middle + radius + 0.1 * size), height));
    for (int i = 0; i <= 12; i++) {
      double angle = Math.PI * i / 12;
      outline.add(point(middle + radius * Math.cos(angle), height - radius * Math.sin(angle)));
    }
    outline.add(point(0, height));
    return outline;
  }

  private static OutlinePoint point(double xMm, double yMm) {
    return new OutlinePoint(Math.rint(100 * xMm) / 100, Math.rint(100 * yMm) / 100);
  }
}
