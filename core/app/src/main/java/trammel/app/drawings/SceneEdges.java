package trammel.app.drawings;

import java.awt.geom.Line2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  /** Whether hidden edges are dashed, by part: each has many, and where it stands takes a sum. */
  private final Map<String, Boolean> dashes = new HashMap<>();

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
      Optional<SeenLine> piece = pen.isPresent() ? within(line) : Optional.empty();
      piece.ifPresent(
          inside ->
              strokes.add(
                  window.acrossPaper(inside.fromX()),
                  window.downPaper(inside.fromY()),
                  window.acrossPaper(inside.toX()),
                  window.downPaper(inside.toY()),
                  pen.get()));
    }
    strokes.draw();
  }

  /** What is drawn, on the paper. */
  List<Line2D> lines() {
    return scene.lines(window.viewpoint()).stream()
        .filter(line -> penOf(line).isPresent())
        .map(this::within)
        .flatMap(Optional::stream)
        .map(
            inside ->
                (Line2D)
                    new Line2D.Double(
                        window.acrossPaper(inside.fromX()),
                        window.downPaper(inside.fromY()),
                        window.acrossPaper(inside.toX()),
                        window.downPaper(inside.toY())))
        .toList();
  }

  private Optional<Pen> penOf(SeenLine line) {
    if (scene.isSeenThrough(line.id())) {
      return Optional.of(Pen.ADJACENT);
    }
    PlacedPart part = scene.part(line.id());
    if (line.hidden()) {
      return dashes.computeIfAbsent(part.id(), id -> showsHidden(part))
          ? Optional.of(Pen.HIDDEN)
          : Optional.empty();
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

  private Optional<SeenLine> within(SeenLine line) {
    return Clip.within(window.left(), window.bottom(), window.right(), window.top(), line);
  }
}
