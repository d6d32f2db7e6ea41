package trammel.planning.drawings;

import trammel.trade.given.Dimension;
import trammel.trade.plates.Point2;

/** A line of text on a drawing: its lower left corner and the height of its capitals. */
public record Note(Point2 at, double heightMm, String text) {
  public Note {
    Dimension.positiveMm("height of a note", heightMm);
    Dimension.text("note", text);
  }
}
