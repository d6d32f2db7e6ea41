package trammel.bin;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Looks at every page of a PDF as a printer would, and says what is wrong with it. */
final class PdfPages {
  private static final int DOTS_PER_INCH = 50;
  private static final float POINTS_PER_MM = 72f / 25.4f;

  /** Paper about the page on which anything that runs over its edge shows. */
  private static final float BORDER_MM = 40;

  /** No printer reaches the edge of the paper. */
  private static final float UNPRINTED_MM = 4;

  /** The foot of a page, with its number, makes no page full. */
  private static final float FOOT_MM = 22;

  private static final int LEAST_DOTS = 60;
  private static final int DARK = 200;

  private PdfPages() {}

  static int count(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  /** Width of the first page (pt). */
  static double widthPt(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getPage(0).getMediaBox().getWidth();
    }
  }

  /** The text of each page. */
  static List<String> texts(Path pdf) throws IOException {
    return texts(Files.readAllBytes(pdf));
  }

  static List<String> texts(byte[] pdf) throws IOException {
    List<String> texts = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        texts.add(stripper.getText(document));
      }
    }
    return texts;
  }

  static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** What is wrong, one sentence each; empty if nothing. */
  static List<String> troubles(Path pdf) throws IOException {
    List<String> troubles = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      if (document.getNumberOfPages() == 0) {
        troubles.add(pdf + " has no page");
      }
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        String where = pdf.getFileName() + ", page " + (i + 1) + ": ";
        fonts(document.getPage(i).getResources(), where, troubles);
        ink(document, i, where, troubles);
      }
    }
    heads(pdf, troubles);
    return troubles;
  }

  /** A table's head that ends a page and begins the next stands over nothing. */
  private static void heads(Path pdf, List<String> troubles) throws IOException {
    List<List<String>> pages = texts(pdf).stream().map(PdfPages::body).toList();
    for (int i = 0; i + 1 < pages.size(); i++) {
      List<String> page = pages.get(i);
      List<String> next = pages.get(i + 1);
      boolean both = !page.isEmpty() && !next.isEmpty();
      if (both && page.get(page.size() - 1).equals(next.get(0))) {
        troubles.add(
            pdf.getFileName() + ", page " + (i + 1) + ": nothing under its head " + next.get(0));
      }
    }
  }

  /** The lines of a page without its foot, which has its number. */
  private static List<String> body(String page) {
    return page.lines().filter(line -> !line.isBlank() && !line.matches(".*\\d+ / \\d+")).toList();
  }

  private static void fonts(PDResources resources, String where, List<String> troubles)
      throws IOException {
    if (resources == null) {
      return;
    }
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      if (!font.isEmbedded()) {
        troubles.add(where + "the font " + font.getName() + " is not embedded");
      }
    }
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDFormXObject form) {
        fonts(form.getResources(), where, troubles);
      }
    }
  }

  private static void ink(PDDocument document, int index, String where, List<String> troubles)
      throws IOException {
    PDPage page = document.getPage(index);
    PDRectangle box = page.getMediaBox();
    float border = BORDER_MM * POINTS_PER_MM;
    PDRectangle wide =
        new PDRectangle(
            box.getLowerLeftX() - border,
            box.getLowerLeftY() - border,
            box.getWidth() + 2 * border,
            box.getHeight() + 2 * border);
    page.setMediaBox(wide);
    page.setCropBox(wide);
    BufferedImage image =
        new PDFRenderer(document).renderImageWithDPI(index, DOTS_PER_INCH, ImageType.GRAY);
    double dotsPerMm = DOTS_PER_INCH / 25.4;
    double unprinted = (BORDER_MM + UNPRINTED_MM) * dotsPerMm;
    int dots = 0;
    int over = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if ((image.getRGB(x, y) & 255) < DARK) {
          boolean outside =
              x < unprinted
                  || y < unprinted
                  || x > image.getWidth() - unprinted
                  || y > image.getHeight() - unprinted;
          boolean inFoot = y > image.getHeight() - (BORDER_MM + FOOT_MM) * dotsPerMm;
          over += outside ? 1 : 0;
          dots += outside || inFoot ? 0 : 1;
        }
      }
    }
    if (over > 0) {
      troubles.add(where + over + " dots lie over the edge of what can be printed");
    }
    if (dots < LEAST_DOTS) {
      troubles.add(where + "the page is as good as blank, with " + dots + " dots");
    }
  }
}
