package trammel.planning.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Point2;
import trammel.trade.tubes.Cope;

/**
 * The template of a cope, at true size: cut it out, wrap it round the tube with its straight edge
 * square to the tube and its tips at the tube's end, and mark along the curve. A square beside it
 * shows whether the printer kept the size.
 *
 * @param name the tube and its end
 * @param cope the cope
 */
public record WrapTemplate(String name, Cope cope) {
  /** Side of the square that is measured on the print, 2 in (mm). */
  public static final double CHECK_SQUARE_MM = 50.8;

  private static final int STEPS = 180;

  /** Paper above the deepest point of the curve to hold it by (mm). */
  private static final double HOLD_MM = 30;

  private static final double NOTE_HEIGHT_MM = 4;
  private static final double LINE_MM = 7;

  /**
   * @throws IllegalArgumentException if the name is blank
   */
  public WrapTemplate {
    Given.text("name of a template", name, "Say which tube and which end.");
    Given.present("cope of '" + name + "'", cope, "Give it.");
  }

  /** Length of the template round the tube (mm). */
  public double roundMm() {
    return 2 * Math.PI * cope.branchRadiusMm();
  }

  /** The drawing, one user unit a millimetre. */
  public SvgDrawing svg() {
    double heightMm = cope.depthMm() + HOLD_MM;
    List<Point2> edge = new ArrayList<>(cope.wrap(STEPS));
    edge.add(new Point2(roundMm(), heightMm));
    edge.add(new Point2(0, heightMm));
    Outline template = Outline.solid(Loop.through(edge));
    double besideMm = roundMm() + 10;
    Outline square =
        Outline.solid(
            Loop.through(
                List.of(
                    new Point2(besideMm, 0),
                    new Point2(besideMm + CHECK_SQUARE_MM, 0),
                    new Point2(besideMm + CHECK_SQUARE_MM, CHECK_SQUARE_MM),
                    new Point2(besideMm, CHECK_SQUARE_MM))));
    List<Note> notes = new ArrayList<>(4);
    notes.add(note(3, heightMm - LINE_MM, name));
    notes.add(note(3, heightMm - 2 * LINE_MM, "print at 100 %"));
    notes.add(note(besideMm + 3, CHECK_SQUARE_MM - LINE_MM, "2 in square:"));
    notes.add(note(besideMm + 3, CHECK_SQUARE_MM - 2 * LINE_MM, "measure it"));
    return SvgDrawing.of(List.of(template, square), notes);
  }

  private static Note note(double xMm, double yMm, String text) {
    return new Note(new Point2(xMm, yMm), NOTE_HEIGHT_MM, text);
  }
}
