package trammel.app.documents;

import java.nio.charset.StandardCharsets;
import trammel.reading.quantity.UnitSystem;

/** A document that is ready to be written. */
public final class PaperDocument {
  private final String template;
  private final DocumentModel model;
  private final UnitSystem units;

  PaperDocument(String template, DocumentModel model, UnitSystem units) {
    this.template = template;
    this.model = model;
    this.units = units;
  }

  /** The document as a page of HTML that needs no other file. */
  public byte[] html() {
    return Template.html(template, model, units).getBytes(StandardCharsets.UTF_8);
  }

  /** The document as PDF, on Letter paper where inches are read, on A4 elsewhere. */
  public byte[] pdf() {
    String html = Template.printable(template, model, units);
    return Typesetter.pdf(MissingLetters.toldIn(html), model.drawings());
  }
}
