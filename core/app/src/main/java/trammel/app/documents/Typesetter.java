package trammel.app.documents;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.w3c.dom.Element;
import trammel.app.drawings.Drawing;
import trammel.app.paper.ArabicJoining;
import trammel.app.paper.GraphicsPaper;
import trammel.app.paper.Lettering;
import trammel.app.paper.ReadingOrder;

/** Sets a filled template as PDF, its drawings drawn into it as lines. */
final class Typesetter {
  private static final int BOLD_WEIGHT = 700;
  private static final int REGULAR_WEIGHT = 400;

  /** A picture that the document brings itself; nothing is fetched from anywhere. */
  private static final String OWN_PICTURE = "data:image/";

  private Typesetter() {}

  /** The file. */
  static byte[] pdf(String html, Map<String, Drawing> drawings) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(65_536);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.withProducer("Trammel");
    builder.useUnicodeLineBreaker(new Unbroken.LineEnds());
    builder.useObjectDrawerFactory(new Drawings(drawings));
    builder.useExternalResourceAccessControl(
        (address, kind) -> address.startsWith(OWN_PICTURE),
        com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority
            .RUN_BEFORE_RESOLVING_URI);
    boolean fromTheRight = Lettering.readsFromTheRight(html);
    if (fromTheRight) {
      builder.useUnicodeBidiSplitter(ReadingOrder::new);
      builder.useUnicodeBidiReorderer(new ReadingOrder());
    }
    builder.withHtmlContent(fromTheRight ? ArabicJoining.joined(html) : html, null);
    builder.toStream(bytes);
    try (PDDocument document = new PDDocument()) {
      builder.usePDDocument(document);
      useFont(builder, Lettering.regular(document), REGULAR_WEIGHT);
      useFont(builder, Lettering.bold(document), BOLD_WEIGHT);
      builder.run();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  private static void useFont(PdfRendererBuilder builder, PDFont font, int weight) {
    builder.useFont(new PDFontSupplier(font), Lettering.FAMILY, weight, FontStyle.NORMAL, true);
  }

  /** Draws a drawing into the place that a document keeps for it. */
  private record Drawings(Map<String, Drawing> drawings)
      implements FSObjectDrawerFactory, FSObjectDrawer {
    @Override
    public FSObjectDrawer createDrawer(Element element) {
      return this;
    }

    @Override
    public boolean isReplacedObject(Element element) {
      return element.getAttribute("type").equals("trammel/drawing");
    }

    @Override
    public Map<Shape, String> drawObject(
        Element element,
        double x,
        double y,
        double width,
        double height,
        OutputDevice device,
        RenderingContext context,
        int dotsPerPixel) {
      Drawing drawing = drawings.get(element.getAttribute("data"));
      float realWidth = (float) width / dotsPerPixel;
      float realHeight = (float) height / dotsPerPixel;
      device.drawWithGraphics(
          (float) x,
          (float) y,
          realWidth,
          realHeight,
          graphics -> {
            double scale = realWidth / drawing.widthMm();
            graphics.scale(scale, scale);
            drawing.drawOn(new GraphicsPaper(graphics));
          });
      return null;
    }
  }
}
