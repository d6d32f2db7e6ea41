package trammel.app.drawings;

import java.util.List;
import java.util.Optional;
import trammel.app.drawings.Paper.Anchor;
import trammel.assembly.view.Eye;
import trammel.assembly.view.HiddenLines;
import trammel.assembly.view.SeenLine;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * One joint of the finished vehicle and what stands about it when its bracket is set, looked at
 * from where most of that bracket is seen. What is made and set is drawn strong, the rest fine; a
 * cross in a ring stands on the joint's middle, to which the sheet's distances go.
 */
public final class JointPicture implements Drawing {
  private static final double WIDTH_MM = 58;
  private static final double HEIGHT_MM = 44;
  private static final double SCALE = 0.13;

  /** Half of what is shown about the joint (mm of the vehicle). */
  private static final double REACH_MM = WIDTH_MM / SCALE / 2;

  /** Half of the cube in which bodies are looked for: what is further off is another bracket. */
  private static final double NEAR_MM = 180;

  /** A joint this far behind the axle line is looked at from behind (mm). */
  private static final double BEHIND_MM = 30;

  /** Another corner shows so many times as much before the picture is taken from there. */
  private static final double BETTER = 1.3;

  private static final double LETTERS_MM = 2.4;
  private static final double RING_MM = 1.3;
  private static final double ARROW_MM = 6;

  /** Room for the axes and their names in the lower left corner. */
  private static final double AXES_MM = 17;

  /** The frame stays within the picture, so that nothing cuts it off. */
  private static final double INSET_MM = 0.3;

  /** Lines end within the frame (mm of the vehicle). */
  private static final double WITHIN_MM = 2 * INSET_MM / SCALE;

  private final JointScene.Near near;
  private final Point3 joint;
  private final int ahead;
  private final int side;

  /** Worked out when it is first drawn, which is on whichever core sets its document. */
  private Optional<View> view = Optional.empty();

  /** What is seen from one corner. */
  private record View(Eye eye, List<SeenLine> lines) {}

  /**
   * @param scene the finished vehicle
   * @param joint the joint's middle at ride, in vehicle axes (mm)
   * @param fromTheLeft from which side no rail stands before it, so that it is looked at from there
   *     if its bracket is seen as well as from elsewhere
   */
  public JointPicture(JointScene scene, Point3 joint, boolean fromTheLeft) {
    this.joint = joint;
    near = scene.near(joint, NEAR_MM);
    // From the end that is nearer, a little from above.
    ahead = joint.xMm() < -BEHIND_MM ? -1 : 1;
    side = fromTheLeft ? 1 : -1;
  }

  private synchronized View view() {
    if (view.isEmpty()) {
      view = Optional.of(clearest());
    }
    return view.get();
  }

  private View clearest() {
    View best = from(ahead, side);
    double mostMm = BETTER * shownMm(best);
    int[][] others = {{-ahead, side}, {ahead, -side}, {-ahead, -side}};
    for (int[] corner : others) {
      View other = from(corner[0], corner[1]);
      double shownMm = shownMm(other);
      if (shownMm > mostMm) {
        mostMm = shownMm;
        best = other;
      }
    }
    return best;
  }

  private View from(int fromAhead, int fromLeft) {
    Eye eye = eye(new Vector3(0.62 * fromAhead, 0.68 * fromLeft, 0.4));
    return new View(eye, HiddenLines.seen(near.bodies(), eye));
  }

  /** Length of the bracket's edges that are seen (mm). */
  private double shownMm(View seen) {
    return seen.lines.stream()
        .filter(line -> near.bracket().contains(line.id()))
        .mapToDouble(SeenLine::lengthMm)
        .sum();
  }

  private static Eye eye(Vector3 towards) {
    Vector3 line = towards.scaled(1 / towards.norm());
    Vector3 right = new Vector3(-line.y(), line.x(), 0);
    right = right.scaled(1 / right.norm());
    return new Eye(right, line.cross(right));
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public double heightMm() {
    return HEIGHT_MM;
  }

  @Override
  public void drawOn(Paper paper) {
    Eye eye = view().eye();
    Point3 middle = eye.see(joint);
    double halfUpMm = HEIGHT_MM / SCALE / 2;
    Strokes strokes = new Strokes(paper);
    for (SeenLine line : view().lines()) {
      Clip.within(
              middle.xMm() - REACH_MM + WITHIN_MM,
              middle.yMm() - halfUpMm + WITHIN_MM,
              middle.xMm() + REACH_MM - WITHIN_MM,
              middle.yMm() + halfUpMm - WITHIN_MM,
              line)
          .ifPresent(
              piece ->
                  strokes.add(
                      WIDTH_MM / 2 + (piece.fromX() - middle.xMm()) * SCALE,
                      HEIGHT_MM / 2 - (piece.fromY() - middle.yMm()) * SCALE,
                      WIDTH_MM / 2 + (piece.toX() - middle.xMm()) * SCALE,
                      HEIGHT_MM / 2 - (piece.toY() - middle.yMm()) * SCALE,
                      near.strong().contains(piece.id()) ? Pen.OUTLINE : Pen.EXISTING));
    }
    strokes.draw();
    double[] xs = {INSET_MM, AXES_MM + 2, AXES_MM + 2, INSET_MM};
    double[] ys = {
      HEIGHT_MM - AXES_MM, HEIGHT_MM - AXES_MM, HEIGHT_MM - INSET_MM, HEIGHT_MM - INSET_MM
    };
    paper.area(xs, ys, "white", Pen.LIGHT);
    paper.frame(INSET_MM, INSET_MM, WIDTH_MM - 2 * INSET_MM, HEIGHT_MM - 2 * INSET_MM, Pen.LIGHT);
    ring(paper);
    arrow(paper, new Vector3(1, 0, 0), "front");
    arrow(paper, new Vector3(0, 1, 0), "left");
    arrow(paper, new Vector3(0, 0, 1), "up");
  }

  private static void ring(Paper paper) {
    double x = WIDTH_MM / 2;
    double y = HEIGHT_MM / 2;
    paper.disc(x, y, RING_MM, "none", Pen.ACCENT);
    paper.line(x - 2 * RING_MM, y, x + 2 * RING_MM, y, Pen.ACCENT);
    paper.line(x, y - 2 * RING_MM, x, y + 2 * RING_MM, Pen.ACCENT);
  }

  /** The three axes of the vehicle in a corner, so that nobody takes left for right. */
  private void arrow(Paper paper, Vector3 axis, String name) {
    Point3 tip = view().eye().see(new Point3(axis.x(), axis.y(), axis.z()));
    double x = AXES_MM / 2 + 1;
    double y = HEIGHT_MM - AXES_MM / 2 + 1;
    paper.line(x, y, x + ARROW_MM * tip.xMm(), y - ARROW_MM * tip.yMm(), Pen.FRAME);
    paper.text(
        x + ARROW_MM * tip.xMm(),
        y - ARROW_MM * tip.yMm() + (tip.yMm() < 0 ? LETTERS_MM : -0.4),
        LETTERS_MM,
        Anchor.MIDDLE,
        name);
  }
}
