package trammel.planning.drawings;

import trammel.planning.plates.Point2;
import trammel.planning.plates.Require;

/** A line of text on a drawing: its lower left corner and the height of its capitals. */
public record Note(Point2 at, double heightMm, String text) {
  public Note {
    Require.positiveMm("height of a note", heightMm);
    Require.text("note", text);
  }
}
