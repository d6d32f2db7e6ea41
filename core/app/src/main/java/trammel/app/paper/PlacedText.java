package trammel.app.paper;

import java.awt.geom.AffineTransform;

/**
 * A text of a drawing where it stands on its page.
 *
 * @param text the text
 * @param sizeMm size of its letters (mm)
 * @param onPage from millimetres at the beginning of its base line, y down, to points of the page,
 *     y down from its upper edge
 */
record PlacedText(String text, double sizeMm, AffineTransform onPage) {}
