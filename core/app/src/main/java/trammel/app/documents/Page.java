package trammel.app.documents;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A document: a template with what is put into it. The same template makes the HTML and the PDF;
 * only the lines of drawings get in by different ways.
 */
final class Page {
  private static final String DRAWING = "trammel/sketch";
  private static final double MOST_WIDTH_MM = 176;

  private final String template;
  private final Map<String, Object> values = new LinkedHashMap<>();
  private final Map<String, SketchFrame> frames = new HashMap<>();
  private final Map<String, Sketch> sketches = new LinkedHashMap<>();

  /**
   * @param template name of the template, without its ending
   * @param title title of the document
   */
  Page(String template, String title) {
    this.template = template;
    put("title", title);
  }

  /** Puts a value in; texts are escaped where they are shown. */
  Page put(String key, Object value) {
    values.put(key, value);
    return this;
  }

  /** Puts a drawing in, as high as said at most (mm). */
  Page put(Sketch sketch, double mostHeightMm) {
    sketches.put(sketch.name(), sketch);
    frames.put(sketch.name(), new SketchFrame(sketch, MOST_WIDTH_MM, mostHeightMm));
    return this;
  }

  /** The page for a browser. */
  String html() {
    return filled(false);
  }

  /**
   * The document on paper, fonts embedded.
   *
   * @throws IllegalStateException if it cannot be set
   */
  byte[] pdf() {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(
        () -> resource("DejaVuSans.ttf"),
        "DejaVu Sans",
        400,
        BaseRendererBuilder.FontStyle.NORMAL,
        true);
    builder.useFont(
        () -> resource("DejaVuSans-Bold.ttf"),
        "DejaVu Sans",
        700,
        BaseRendererBuilder.FontStyle.NORMAL,
        true);
    builder.useUnicodeBidiSplitter(ReadingOrder::new);
    builder.useUnicodeBidiReorderer(new ReadingOrder());
    DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
    drawers.registerDrawer(DRAWING, drawer());
    builder.useObjectDrawerFactory(drawers);
    builder.withProducer("Trammel");
    builder.withHtmlContent(filled(true), null);
    builder.toStream(out);
    try {
      builder.run();
    } catch (IOException impossible) {
      throw new IllegalStateException("document " + template + " cannot be set", impossible);
    }
    return out.toByteArray();
  }

  private FSObjectDrawer drawer() {
    return (element, x, y, width, height, device, context, dotsPerPixel) -> {
      SketchFrame frame = frames.get(element.getAttribute("data"));
      float wide = (float) width / dotsPerPixel;
      float high = (float) height / dotsPerPixel;
      device.drawWithGraphics(
          (float) x, (float) y, wide, high, graphics -> frame.draw(graphics, wide, high));
      return null;
    };
  }

  private String filled(boolean paper) {
    Map<String, Object> all = new LinkedHashMap<>(values);
    all.put("style", text("style.css"));
    for (Map.Entry<String, Sketch> sketch : sketches.entrySet()) {
      all.put("sketch-" + sketch.getKey(), drawing(sketch.getValue(), paper));
    }
    Mustache mustache =
        new DefaultMustacheFactory()
            .compile(reader(template + ".mustache"), template + ".mustache");
    StringWriter out = new StringWriter();
    mustache.execute(out, all);
    return out.toString();
  }

  private Map<String, Object> drawing(Sketch sketch, boolean paper) {
    SketchFrame frame = frames.get(sketch.name());
    String size =
        "width:" + Math.round(frame.widthMm()) + "mm;height:" + Math.round(frame.heightMm()) + "mm";
    Map<String, Object> drawing = new LinkedHashMap<>();
    drawing.put("size", size);
    drawing.put(
        "lines",
        paper
            ? "<object type=\""
                + DRAWING
                + "\" data=\""
                + sketch.name()
                + "\" style=\""
                + size
                + "\"></object>"
            : frame.svg());
    List<Object> labels = new ArrayList<>();
    for (Sketch.Label label : sketch.labels()) {
      labels.add(Map.of("style", frame.style(label), "text", label.text()));
    }
    drawing.put("labels", labels);
    return drawing;
  }

  private static InputStream resource(String name) {
    InputStream stream = Page.class.getResourceAsStream(name);
    if (stream == null) {
      throw new IllegalStateException("resource " + name + " is missing from the app's jar");
    }
    return stream;
  }

  private static Reader reader(String name) {
    return new InputStreamReader(resource(name), StandardCharsets.UTF_8);
  }

  private static String text(String name) {
    try (InputStream stream = resource(name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new IllegalStateException("resource " + name + " cannot be read", impossible);
    }
  }
}
