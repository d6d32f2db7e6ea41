package trammel.app.drawings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import trammel.app.drawings.Paper.Anchor;

/**
 * Where each measurement of a job is taken, on a vehicle that stands for all: from the left and
 * from above, with the numbers of the measuring sheet; or where a single one is taken.
 *
 * @param numbers number of each field by its path in a job file
 * @param alone the one field that is shown; empty for all of them
 */
public record MeasuringPicture(Map<String, String> numbers, String alone) implements Drawing {
  private static final double WIDTH_MM = Paper.BODY_WIDTH_MM;
  private static final double HEIGHT_MM = 158;
  private static final double LETTERS_MM = 2.6;
  private static final double GROUND = 68;
  private static final double AXLE = 138;
  private static final double MOUNTS = 100;
  private static final double FRONT = 26;
  private static final double MIDDLE = 119;
  private static final double ARROW_MM = 1.6;
  private static final double SIDE_MM = 84;

  /** Fields that are measured in the view from the left. */
  private static final Set<String> FROM_THE_LEFT =
      Set.of(
          "measured.wheelbase.left",
          "measured.wheelbase.right",
          "measured.rails.front_mounts_forward",
          "measured.rails.underside_at_axle",
          "measured.rails.underside_at_front_mounts",
          "measured.rails.depth",
          "measured.tyre.loaded_radius",
          "measured.rake.on_stands",
          "measured.axle.tube_diameter",
          "measured.axle.pinion",
          "measured.axle.pinion_angle",
          "measured.transmission.joint",
          "measured.transmission.angle",
          "measured.driveshaft.tube_diameter",
          "measured.driveshaft.slip_engagement",
          "measured.driveshaft.slip_room");

  /** Fields that are measured in the view from above. */
  private static final Set<String> FROM_ABOVE =
      Set.of(
          "measured.rails.outside_at_axle",
          "measured.rails.between_at_axle",
          "measured.rails.outside_at_front_mounts",
          "measured.rails.between_at_front_mounts",
          "measured.axle.flange_to_flange",
          "measured.axle.inner_limit",
          "measured.axle.outer_limit",
          "measured.rails.flange",
          "measured.rails.wall");

  /** Copies the map. */
  public MeasuringPicture {
    numbers = new LinkedHashMap<>(numbers);
  }

  /** All measurements, with their numbers. */
  public static MeasuringPicture of(Map<String, String> numbers) {
    return new MeasuringPicture(numbers, "");
  }

  /**
   * Where one measurement is taken; empty if it is not one that a picture shows.
   *
   * @param path its path in a job file
   */
  public static Optional<MeasuringPicture> alone(String path) {
    return paths().contains(path)
        ? Optional.of(new MeasuringPicture(Map.of(), path))
        : Optional.empty();
  }

  /** The paths of all measurements that a picture shows. */
  public static Set<String> paths() {
    Set<String> all = new TreeSet<>(FROM_THE_LEFT);
    all.addAll(FROM_ABOVE);
    return all;
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    if (alone.isEmpty()) {
      return HEIGHT_MM;
    }
    return FROM_ABOVE.contains(alone) ? HEIGHT_MM - SIDE_MM : SIDE_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    if (FROM_THE_LEFT.contains(alone)) {
      side(paper);
      return;
    }
    if (FROM_ABOVE.contains(alone)) {
      plan(paper, -SIDE_MM);
      return;
    }
    paper.text(0.5, 4, 3.2, Anchor.START, "From the left, front of the vehicle to the left");
    side(paper);
    paper.text(0.5, 87, 3.2, Anchor.START, "From above");
    plan(paper, 0);
  }

  private void side(Paper paper) {
    paper.line(0.5, GROUND, WIDTH_MM - 1, GROUND, Pen.OUTLINE);
    paper.disc(FRONT, 52, 16, "none", Pen.LIGHT);
    paper.disc(AXLE, 50, 18, "none", Pen.LIGHT);
    area(paper, 6, 31, 178, 27.5, 178, 36.5, 6, 40);
    paper.disc(AXLE, 50, 4.5, "#e4e4e4", Pen.OUTLINE);
    paper.line(AXLE, 20, AXLE, 82, Pen.DATUM);
    paper.line(FRONT, 48, FRONT, 82, Pen.DATUM);
    paper.line(MOUNTS, 24, MOUNTS, GROUND, Pen.DATUM);
    area(paper, 36, 40, 62, 44, 62, 51, 36, 54);
    paper.line(62, 47.5, 122, 51.5, Pen.OUTLINE);
    paper.disc(62, 47.5, 1.2, "white", Pen.OUTLINE);
    paper.disc(122, 51.5, 1.2, "white", Pen.OUTLINE);
    paper.line(122, 51.5, AXLE - 4.5, 50.5, Pen.OUTLINE);
    across(paper, FRONT, AXLE, 76, "measured.wheelbase.left", "measured.wheelbase.right");
    across(paper, MOUNTS, AXLE, 62, "measured.rails.front_mounts_forward");
    upright(paper, 160, 37.1, GROUND, "measured.rails.underside_at_axle");
    paper.line(AXLE, 37.3, 162, 37.1, Pen.FINE);
    upright(paper, 92, 38, GROUND, "measured.rails.underside_at_front_mounts");
    upright(paper, 173, 27.6, 36.6, "measured.rails.depth");
    upright(paper, 146, 50, GROUND, "measured.tyre.loaded_radius");
    leader(paper, 80, 37.5, 74, 20, "measured.rake.on_stands");
    leader(paper, AXLE - 3.5, 46.5, 118, 22, "measured.axle.tube_diameter");
    leader(paper, 122, 51.5, 112, 58, "measured.axle.pinion");
    leader(paper, 126, 51.2, 128, 58, "measured.axle.pinion_angle");
    leader(paper, 62, 47.5, 68, 58, "measured.transmission.joint");
    leader(paper, 50, 45.5, 50, 22, "measured.transmission.angle");
    leader(paper, 84, 49, 82, 58, "measured.driveshaft.tube_diameter");
    leader(paper, 66, 47.8, 62, 62, "measured.driveshaft.slip_engagement");
    leader(paper, 64, 47.6, 54, 62, "measured.driveshaft.slip_room");
  }

  /** Drawn so much further down. */
  private void plan(Paper paper, double down) {
    double middle = MIDDLE + down;
    paper.line(0.5, middle, WIDTH_MM - 1, middle, Pen.DATUM);
    for (int sign = -1; sign <= 1; sign += 2) {
      area(
          paper,
          6,
          middle + sign * 13,
          178,
          middle + sign * 17,
          178,
          middle + sign * 13,
          6,
          middle + sign * 9);
      double wheel = middle + sign * 27;
      area(
          paper, AXLE - 18, wheel - 3, AXLE + 18, wheel - 3, AXLE + 18, wheel + 3, AXLE - 18,
          wheel + 3);
      area(
          paper,
          FRONT - 16,
          wheel - 3,
          FRONT + 16,
          wheel - 3,
          FRONT + 16,
          wheel + 3,
          FRONT - 16,
          wheel + 3);
    }
    area(
        paper,
        AXLE - 3,
        middle - 22,
        AXLE + 3,
        middle - 22,
        AXLE + 3,
        middle + 22,
        AXLE - 3,
        middle + 22);
    paper.disc(AXLE, middle, 7, "#e4e4e4", Pen.OUTLINE);
    paper.line(AXLE, 90 + down, AXLE, 152 + down, Pen.DATUM);
    paper.line(MOUNTS, 96 + down, MOUNTS, 142 + down, Pen.DATUM);
    upright(paper, 160, middle - 16.5, middle + 16.5, "measured.rails.outside_at_axle");
    upright(paper, 168, middle - 12.7, middle + 12.7, "measured.rails.between_at_axle");
    upright(paper, 92, middle - 15, middle + 15, "measured.rails.outside_at_front_mounts");
    upright(paper, 84, middle - 10.8, middle + 10.8, "measured.rails.between_at_front_mounts");
    upright(paper, 130, middle - 22, middle + 22, "measured.axle.flange_to_flange");
    upright(paper, 123, middle, middle + 7.5, "measured.axle.inner_limit");
    upright(paper, 116, middle, middle + 19, "measured.axle.outer_limit");
    leader(paper, 176, middle - 14.5, 178, middle - 24, "measured.rails.flange");
    leader(paper, 172, middle + 16.8, 178, middle + 24, "measured.rails.wall");
  }

  private static void area(Paper paper, double... points) {
    double[] xs = new double[points.length / 2];
    double[] ys = new double[xs.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = points[2 * i];
      ys[i] = points[2 * i + 1];
    }
    paper.area(xs, ys, "#f1f1f1", Pen.LIGHT);
  }

  private boolean isShown(String... paths) {
    return alone.isEmpty() || List.of(paths).contains(alone);
  }

  private Pen pen() {
    return alone.isEmpty() ? Pen.FINE : Pen.ACCENT;
  }

  private void across(Paper paper, double from, double to, double y, String... paths) {
    if (!isShown(paths)) {
      return;
    }
    paper.line(from, y, to, y, pen());
    head(paper, from, y, from + ARROW_MM, y - 0.6, from + ARROW_MM, y + 0.6);
    head(paper, to, y, to - ARROW_MM, y - 0.6, to - ARROW_MM, y + 0.6);
    number(paper, (from + to) / 2, y, paths);
  }

  private void upright(Paper paper, double x, double from, double to, String path) {
    if (!isShown(path)) {
      return;
    }
    paper.line(x, from, x, to, pen());
    head(paper, x, from, x - 0.6, from + ARROW_MM, x + 0.6, from + ARROW_MM);
    head(paper, x, to, x - 0.6, to - ARROW_MM, x + 0.6, to - ARROW_MM);
    number(paper, x, from + 0.6 * (to - from), path);
  }

  private void leader(Paper paper, double x, double y, double atX, double atY, String path) {
    if (!isShown(path)) {
      return;
    }
    paper.line(x, y, atX, atY, pen());
    if (!alone.isEmpty()) {
      paper.disc(x, y, ARROW_MM, "none", pen());
    }
    number(paper, atX, atY, path);
  }

  private void head(Paper paper, double... points) {
    double[] xs = {points[0], points[2], points[4]};
    double[] ys = {points[1], points[3], points[5]};
    paper.area(xs, ys, alone.isEmpty() ? "black" : pen().colour(), pen());
  }

  private void number(Paper paper, double x, double y, String... paths) {
    if (!alone.isEmpty()) {
      return;
    }
    StringBuilder text = new StringBuilder();
    for (String path : paths) {
      if (numbers.containsKey(path)) {
        text.append(text.length() == 0 ? "" : ", ").append(numbers.get(path));
      }
    }
    double half = Math.max(2.6, Paper.widthMm(text.toString(), LETTERS_MM) / 2 + 0.5);
    double[] xs = {x - half, x + half, x + half, x - half};
    double[] ys = {y - 2, y - 2, y + 2, y + 2};
    paper.area(xs, ys, "white", Pen.ACCENT);
    paper.text(x, y + LETTERS_MM / 2.8, LETTERS_MM, Anchor.MIDDLE, text.toString());
  }
}
