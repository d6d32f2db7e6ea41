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
 * @param square what is measured on the print
 */
public record WrapTemplate(String name, Cope cope, CheckSquare square) {
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
    Given.present("check square of '" + name + "'", square, "Give that of the shop's units.");
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
    double sideMm = square.sideMm();
    Outline beside =
        Outline.solid(
            Loop.through(
                List.of(
                    new Point2(besideMm, 0),
                    new Point2(besideMm + sideMm, 0),
                    new Point2(besideMm + sideMm, sideMm),
                    new Point2(besideMm, sideMm))));
    List<Note> notes = new ArrayList<>(4);
    notes.add(note(3, heightMm - LINE_MM, name));
    notes.add(note(3, heightMm - 2 * LINE_MM, "print at 100 %"));
    notes.add(note(besideMm + 3, sideMm - LINE_MM, square.words() + " square:"));
    notes.add(note(besideMm + 3, sideMm - 2 * LINE_MM, "measure it"));
    return SvgDrawing.of(List.of(template, beside), notes);
  }

  private static Note note(double xMm, double yMm, String text) {
    return new Note(new Point2(xMm, yMm), NOTE_HEIGHT_MM, text);
  }
}
