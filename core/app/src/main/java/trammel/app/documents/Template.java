package trammel.app.documents;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import com.github.mustachejava.MustacheException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.Markup;
import trammel.reading.quantity.UnitSystem;

/** Fills the templates of the documents. */
final class Template {
  private static final String FOLDER = "trammel/app/documents/";
  private static final Factory FACTORY = new Factory();

  private Template() {}

  /** Templates from the program's own files; every value is escaped, control characters too. */
  private static final class Factory extends DefaultMustacheFactory {
    Factory() {
      super(FOLDER);
    }

    @Override
    public void encode(String value, Writer writer) {
      try {
        writer.write(Markup.escaped(value));
      } catch (IOException refused) {
        throw new MustacheException("Cannot write a value of a template", refused);
      }
    }
  }

  /** The document for a screen, with its drawings in it. */
  static String html(String name, DocumentModel model, UnitSystem units) {
    return filled(name, model, units, true);
  }

  /** The document for the typesetter, with places for its drawings. */
  static String printable(String name, DocumentModel model, UnitSystem units) {
    return filled(name, model, units, false);
  }

  private static String filled(
      String name, DocumentModel model, UnitSystem units, boolean onScreen) {
    Map<String, Object> more = new LinkedHashMap<>();
    more.put("onScreen", onScreen);
    more.put("paper", units == UnitSystem.US ? "letter" : "A4");
    StringWriter writer = new StringWriter(32_768);
    Mustache mustache;
    synchronized (FACTORY) {
      mustache = FACTORY.compile(name + ".mustache");
    }
    mustache.execute(writer, List.of(model.values(), more));
    String text = writer.toString();
    return onScreen ? withDrawings(Unbroken.in(text), model) : text;
  }

  /** A drawing is markup of our own, which must not go through the escaping of values. */
  private static String withDrawings(String text, DocumentModel model) {
    StringBuilder whole = new StringBuilder(text.length() * 2);
    String open = "<object type=\"trammel/drawing\" data=\"";
    int from = 0;
    for (int at = text.indexOf(open); at >= 0; at = text.indexOf(open, from)) {
      int idFrom = at + open.length();
      String id = text.substring(idFrom, text.indexOf('"', idFrom));
      String close = "</object>";
      whole
          .append(text, from, at)
          .append(model.drawings().get(id).inlineSvg(model.labels().get(id)));
      from = text.indexOf(close, at) + close.length();
    }
    return whole.append(text, from, text.length()).toString();
  }
}
