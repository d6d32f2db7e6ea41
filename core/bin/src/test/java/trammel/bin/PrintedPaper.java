package trammel.bin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * The letters of a PDF as they lie on its pages, and what keeps a reader from reading them: outside
 * the margins, on each other, too small, cut off, or a page whose number is not its own.
 */
final class PrintedPaper extends PDFTextStripper {
  private static final double MM_PER_POINT = 25.4 / 72;

  /** ISO 3098-1: letters of drawings are 2.5 mm or next to it; none of ours under 2.2 mm. */
  private static final double LEAST_MM = 2.2;

  /** No paper of ours is set nearer to the edge (mm). */
  private static final double EDGE_MM = 8;

  /** Letters of one text follow each other within so much of their size. */
  private static final double JOINED = 0.3;

  /** Capitals and figures reach so far over their base line, in sizes (DejaVu Sans: 0.73). */
  private static final double RISE = 0.7;

  private static final Pattern FOOT = Pattern.compile("(?m)(\\d+) / (\\d+)\\s*$");

  private final List<Word> words = new ArrayList<>();
  private Word open;

  /** Letters that follow each other on one line, in a box (mm from the left and from the top). */
  private record Word(
      int page, String text, double left, double top, double right, double foot, double size) {
    boolean liesOn(Word other) {
      return page == other.page
          && Math.min(right, other.right) - Math.max(left, other.left) > 0.15
          && Math.min(foot, other.foot) - Math.max(top, other.top) > 0.15;
    }

    Word with(Word next) {
      return new Word(
          page,
          text + next.text,
          Math.min(left, next.left),
          Math.min(top, next.top),
          Math.max(right, next.right),
          Math.max(foot, next.foot),
          size);
    }

    @Override
    public String toString() {
      return "\"%s\" (%.1f to %.1f across, %.1f to %.1f down)"
          .formatted(text, left, right, top, foot);
    }
  }

  private PrintedPaper() throws IOException {
    super();
  }

  /** What is wrong with every PDF of a folder, one sentence each; empty if nothing. */
  static List<String> troublesOfAll(Path folder) throws IOException {
    List<String> troubles = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path pdf : all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList()) {
        troubles.addAll(troubles(pdf));
      }
    }
    return troubles;
  }

  /** What is wrong with the letters of a PDF, one sentence each; empty if nothing. */
  static List<String> troubles(Path pdf) throws IOException {
    List<String> troubles = new ArrayList<>();
    PrintedPaper paper = new PrintedPaper();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      paper.getText(document);
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        double widthMm = document.getPage(i).getMediaBox().getWidth() * MM_PER_POINT;
        double heightMm = document.getPage(i).getMediaBox().getHeight() * MM_PER_POINT;
        int page = i + 1;
        List<Word> here = paper.words.stream().filter(word -> word.page == page).toList();
        String where = pdf.getFileName() + ", page " + page + ": ";
        here.stream()
            .filter(word -> isOutside(word, widthMm, heightMm))
            .forEach(word -> troubles.add(where + word + " is outside the margins"));
        here.stream()
            .filter(word -> word.size < LEAST_MM - 0.005)
            .forEach(word -> troubles.add(where + word + " is only " + word.size + " mm in size"));
        overwritten(here, where, troubles);
      }
      numbers(PdfPages.texts(pdf), pdf, troubles);
    }
    return troubles;
  }

  private static boolean isOutside(Word word, double widthMm, double heightMm) {
    return word.left < EDGE_MM
        || word.top < EDGE_MM
        || word.right > widthMm - EDGE_MM
        || word.foot > heightMm - EDGE_MM;
  }

  private static void overwritten(List<Word> words, String where, List<String> troubles) {
    for (int i = 0; i < words.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (words.get(i).liesOn(words.get(j))) {
          troubles.add(where + words.get(i) + " lies on " + words.get(j));
        }
      }
    }
  }

  /** Where the foot says page n of m, it is the n-th of m. */
  private static void numbers(List<String> pages, Path pdf, List<String> troubles) {
    for (int i = 0; i < pages.size(); i++) {
      Matcher foot = FOOT.matcher(pages.get(i).strip());
      String number = "";
      while (foot.find()) {
        number = foot.group(1) + " of " + foot.group(2);
      }
      String own = (i + 1) + " of " + pages.size();
      if (!number.isEmpty() && !number.equals(own)) {
        troubles.add(pdf.getFileName() + ": the foot of page " + own + " says " + number);
      }
    }
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    String said = letter.getUnicode();
    Word next = word(letter, said == null ? "?" : said);
    if (next.text.isBlank()) {
      finish();
    } else if (open != null && follows(open, next)) {
      open = open.with(next);
    } else {
      finish();
      open = next;
    }
  }

  private static boolean follows(Word before, Word next) {
    double near = JOINED * next.size;
    boolean level =
        Math.abs(before.foot - next.foot) < 0.02 && Math.abs(next.left - before.right) < near;
    boolean upright =
        Math.abs(before.right - next.right) < 0.02 && Math.abs(before.top - next.foot) < near;
    return before.page == next.page && (level || upright);
  }

  private Word word(TextPosition letter, String said) {
    double pageMm = letter.getPageHeight() * MM_PER_POINT;
    double x = letter.getTextMatrix().getTranslateX() * MM_PER_POINT;
    double y = pageMm - letter.getTextMatrix().getTranslateY() * MM_PER_POINT;
    double size = letter.getTextMatrix().getScalingFactorY() * MM_PER_POINT;
    boolean upright =
        Math.abs(letter.getTextMatrix().getShearY()) > Math.abs(letter.getTextMatrix().getScaleX());
    double wide = (upright ? letter.getWidthDirAdj() : letter.getWidth()) * MM_PER_POINT;
    return upright
        ? new Word(getCurrentPageNo(), said, x - RISE * size, y - wide, x, y, size)
        : new Word(getCurrentPageNo(), said, x, y - RISE * size, x + wide, y, size);
  }

  private void finish() {
    if (open != null) {
      words.add(open);
      open = null;
    }
  }

  @Override
  public void processPage(org.apache.pdfbox.pdmodel.PDPage page) throws IOException {
    super.processPage(page);
    finish();
  }
}
