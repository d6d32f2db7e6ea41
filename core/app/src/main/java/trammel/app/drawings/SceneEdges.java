package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.view.SeenLine;

/**
 * The edges of the finished vehicle in one window: what the job adds drawn strong, what was there
 * fine, and what stands behind something dashed where that tells more than it clutters.
 */
final class SceneEdges {
  /** What is no further beyond the centre plane than this counts as on it. */
  private static final double NEAR_MM = 10;

  private final VehicleScene scene;
  private final ViewWindow window;

  private final Set<String> dashed;

  SceneEdges(VehicleScene scene, ViewWindow window) {
    this(scene, window, Set.of());
  }

  /**
   * @param dashed ids of the only parts whose edges are dashed where they stand behind something;
   *     empty for what {@link #showsHidden} picks
   */
  SceneEdges(VehicleScene scene, ViewWindow window, Set<String> dashed) {
    this.scene = scene;
    this.window = window;
    this.dashed = Set.copyOf(dashed);
  }

  void drawOn(Paper paper) {
    Strokes strokes = new Strokes(paper);
    for (SeenLine line : scene.lines(window.viewpoint())) {
      Optional<Pen> pen = penOf(line);
      Optional<Line2D> piece = pen.isPresent() ? onPaper(line) : Optional.empty();
      piece.ifPresent(
          inside ->
              strokes.add(
                  inside.getX1(), inside.getY1(), inside.getX2(), inside.getY2(), pen.get()));
    }
    strokes.draw();
  }

  /** What is drawn, on the paper. */
  List<Line2D> lines() {
    return scene.lines(window.viewpoint()).stream()
        .filter(line -> penOf(line).isPresent())
        .map(this::onPaper)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Pen> penOf(SeenLine line) {
    if (scene.isSeenThrough(line.id())) {
      return Optional.of(Pen.ADJACENT);
    }
    PlacedPart part = scene.part(line.id());
    if (line.hidden()) {
      return showsHidden(part) ? Optional.of(Pen.HIDDEN) : Optional.empty();
    }
    return Optional.of(part.kind() == PartKind.VEHICLE ? Pen.EXISTING : Pen.OUTLINE);
  }

  /** Of what repeats on the far side, the near side is enough; from behind all lies in one heap. */
  private boolean showsHidden(PlacedPart part) {
    if (!dashed.isEmpty()) {
      return dashed.contains(part.id());
    }
    if (!part.kind().added()
        || part.kind() == PartKind.BOLT
        || window.viewpoint() == Viewpoint.REAR) {
      return false;
    }
    return window.viewpoint() != Viewpoint.SIDE || scene.centre(part).yMm() >= -NEAR_MM;
  }

  /** What of a line lies in the window, on the paper. */
  private Optional<Line2D> onPaper(SeenLine line) {
    return Clip.within(window.left(), window.bottom(), window.right(), window.top(), line)
        .map(
            inside ->
                new Line2D.Double(
                    window.acrossPaper(inside.fromX()),
                    window.downPaper(inside.fromY()),
                    window.acrossPaper(inside.toX()),
                    window.downPaper(inside.toY())));
  }
}
