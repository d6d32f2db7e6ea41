package trammel.app.drawings;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.view.SeenLine;

/** Marks above views, each once, in the view that shows most of what it marks. */
final class Balloons {
  /** Height that a row of them takes (mm). */
  static final double ROW_MM = 9;

  private static final double LONG_SHARE = 0.4;

  private final VehicleScene scene;
  private final List<ViewWindow> windows;
  private final Map<Viewpoint, BalloonRow> rows = new EnumMap<>(Viewpoint.class);

  Balloons(VehicleScene scene, List<ViewWindow> windows) {
    this.scene = scene;
    this.windows = windows;
    windows.forEach(window -> rows.put(window.viewpoint(), new BalloonRow()));
  }

  /** Marks some parts; nothing if none of them is seen. */
  void mark(String mark, List<String> parts) {
    windows.stream()
        .filter(window -> rows.get(window.viewpoint()).size() < BalloonRow.room(window.widthMm()))
        .filter(window -> shownMm(parts, window) > 0)
        .max(Comparator.comparingDouble(window -> shownMm(parts, window)))
        .ifPresent(window -> place(mark, parts, window));
  }

  void drawOn(Paper paper) {
    for (ViewWindow window : windows) {
      rows.get(window.viewpoint())
          .drawOn(
              paper,
              window.paperY() - ROW_MM / 2,
              window.paperX(),
              window.paperX() + window.widthMm());
    }
  }

  private List<SeenLine> shown(List<String> parts, ViewWindow window) {
    return scene.lines(window.viewpoint()).stream()
        .filter(line -> !line.hidden() && parts.contains(line.id()))
        .filter(
            line -> window.holds((line.fromX() + line.toX()) / 2, (line.fromY() + line.toY()) / 2))
        .toList();
  }

  private double shownMm(List<String> parts, ViewWindow window) {
    return shown(parts, window).stream().mapToDouble(SeenLine::lengthMm).sum();
  }

  private void place(String mark, List<String> parts, ViewWindow window) {
    List<SeenLine> shown = shown(parts, window);
    double longMm = shown.stream().mapToDouble(SeenLine::lengthMm).max().orElseThrow();
    // Of the long lines the uppermost, so that the leader crosses as little as it can.
    SeenLine marked =
        shown.stream()
            .filter(line -> line.lengthMm() >= LONG_SHARE * longMm)
            .max(Comparator.comparingDouble(line -> line.fromY() + line.toY()))
            .orElseThrow();
    rows.get(window.viewpoint())
        .add(
            mark,
            window.acrossPaper((marked.fromX() + marked.toX()) / 2),
            window.downPaper((marked.fromY() + marked.toY()) / 2));
  }
}
