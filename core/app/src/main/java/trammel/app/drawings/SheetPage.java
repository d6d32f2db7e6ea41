package trammel.app.drawings;

import java.util.List;
import java.util.function.Consumer;

/**
 * A sheet before it has its number.
 *
 * @param title what it shows
 * @param scale scale of its views
 * @param notes what is to be known to read it
 * @param body draws it
 */
record SheetPage(String title, String scale, List<String> notes, Consumer<Paper> body) {}
