package trammel.bin;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The texts of a drawing's pages where they stand, as a reader of the PDF finds them. */
final class SheetTexts extends PDFTextStripper {
  private static final double MM_PER_POINT = 25.4 / 72;

  /** Letters of one text follow each other within so much of their size. */
  private static final double JOINED = 0.045;

  private final List<Text> texts = new ArrayList<>();
  private final StringBuilder letters = new StringBuilder();
  private TextPosition first;
  private TextPosition last;

  /**
   * One text.
   *
   * @param page its page, from 0
   * @param text what it says
   * @param x where it begins (mm from the left)
   * @param y its base line (mm from the top)
   * @param width how long it is, as it runs (mm)
   * @param size of its letters (mm)
   * @param upright true where it is read from the right
   */
  record Text(
      int page, String text, double x, double y, double width, double size, boolean upright) {
    double right() {
      return x + width;
    }

    /** True if the letters of two lie on each other, half their size taken as their height. */
    boolean liesOn(Text other) {
      double height = 0.6 * size;
      double otherHeight = 0.6 * other.size;
      double left = upright ? x - height : x;
      double otherLeft = other.upright ? other.x - otherHeight : other.x;
      double right = upright ? x : x + width;
      double otherRight = other.upright ? other.x : other.x + other.width;
      double top = upright ? y - width : y - height;
      double otherTop = other.upright ? other.y - other.width : other.y - otherHeight;
      return page == other.page
          && left < otherRight
          && otherLeft < right
          && top < other.y
          && otherTop < y;
    }
  }

  private SheetTexts() throws IOException {
    super();
  }

  static List<Text> of(byte[] pdf) throws IOException {
    SheetTexts reader = new SheetTexts();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      reader.getText(document);
    }
    return reader.texts;
  }

  /** Pairs of texts that cannot both be read. */
  static List<String> overwritten(List<Text> texts) {
    List<String> overwritten = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (texts.get(i).liesOn(texts.get(j))) {
          overwritten.add(texts.get(i) + " lies on " + texts.get(j));
        }
      }
    }
    return overwritten;
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    if (last != null && !follows(letter)) {
      finish();
    }
    if (first == null) {
      first = letter;
    }
    last = letter;
    letters.append(letter.getUnicode());
  }

  private static boolean isUpright(TextPosition letter) {
    return Math.abs(letter.getTextMatrix().getShearY())
        > Math.abs(letter.getTextMatrix().getScaleX());
  }

  private static double along(TextPosition letter) {
    return isUpright(letter)
        ? letter.getTextMatrix().getTranslateY()
        : letter.getTextMatrix().getTranslateX();
  }

  private static double aside(TextPosition letter) {
    return isUpright(letter)
        ? letter.getTextMatrix().getTranslateX()
        : letter.getTextMatrix().getTranslateY();
  }

  private boolean follows(TextPosition letter) {
    double size = letter.getFontSizeInPt();
    double endOfLast = along(last) + advance(last);
    return isUpright(letter) == isUpright(last)
        && Math.abs(aside(letter) - aside(last)) < 0.01 * size
        && Math.abs(along(letter) - endOfLast) < JOINED * size;
  }

  private static double advance(TextPosition letter) {
    return isUpright(letter) ? letter.getWidthDirAdj() : letter.getWidth();
  }

  private void finish() {
    if (first == null) {
      return;
    }
    double pageMm = first.getPageHeight() * MM_PER_POINT;
    boolean upright = isUpright(first);
    double width = (along(last) + advance(last) - along(first)) * MM_PER_POINT;
    texts.add(
        new Text(
            getCurrentPageNo() - 1,
            letters.toString(),
            first.getTextMatrix().getTranslateX() * MM_PER_POINT,
            pageMm - first.getTextMatrix().getTranslateY() * MM_PER_POINT,
            width,
            first.getFontSizeInPt() * MM_PER_POINT,
            upright));
    letters.setLength(0);
    first = null;
    last = null;
  }

  @Override
  public void processPage(org.apache.pdfbox.pdmodel.PDPage page) throws IOException {
    super.processPage(page);
    finish();
  }

  /** The rows of every table of a title, first cells of every column by its heading. */
  static List<Row> rows(List<Text> texts, String title) {
    List<Row> rows = new ArrayList<>();
    for (Text heading : texts) {
      if (heading.text.equals(title)) {
        rows.addAll(new Table(texts, heading).rows());
      }
    }
    return rows;
  }

  /**
   * One row.
   *
   * @param page the page of its table
   * @param heads the headings of the columns, the first line of each
   * @param cells what stands in them
   */
  record Row(int page, List<String> heads, List<String> cells) {
    String cell(String head) {
      int column = heads.indexOf(head);
      if (column < 0) {
        throw new AssertionError("no column " + head + " among " + heads);
      }
      return cells.get(column);
    }
  }

  /** A table by the places of its headings. */
  private record Table(List<Text> texts, Text title) {
    private static final double NEAR_MM = 0.35;
    private static final double HEAD_LINE_MM = 3.8;
    private static final double HEAD_MM = 4.5;
    private static final double ROW_MM = 3.2;
    private static final double GAP_MM = 4.5;

    List<Row> rows() {
      List<Text> here =
          texts.stream()
              .filter(t -> t.page == title.page && !t.upright && t.y > title.y + 1)
              .toList();
      List<Text> heads =
          here.stream()
              .filter(t -> Math.abs(t.y - title.y - HEAD_LINE_MM) < 0.1 && t.x > title.x - 1)
              .sorted(Comparator.comparingDouble(Text::x))
              .toList();
      List<Row> rows = new ArrayList<>();
      List<String> names = new ArrayList<>(heads.stream().map(Text::text).toList());
      names.add("");
      List<String> cells = null;
      double before = title.y + HEAD_MM;
      double rowY = -1;
      List<Text> body =
          here.stream()
              .filter(t -> t.y > title.y + HEAD_MM)
              .filter(t -> column(heads, t).isPresent())
              .sorted(Comparator.comparingDouble(Text::y))
              .toList();
      boolean inHead = true;
      for (Text text : body) {
        if (text.y - before > GAP_MM + 2) {
          break;
        }
        int column = column(heads, text).get();
        // A row begins where numbers stand; another text at that height may end like one of them.
        boolean begins =
            body.stream().filter(t -> Math.abs(t.y - text.y) < 0.05 && isStart(heads, t)).count()
                >= Math.min(3, heads.size() - 1);
        if (begins && Math.abs(text.y - rowY) > 0.05) {
          inHead = false;
          cells = new ArrayList<>();
          for (int i = 0; i < names.size(); i++) {
            cells.add("");
          }
          rows.add(new Row(title.page, names, cells));
          rowY = text.y;
        }
        before = text.y;
        if (!inHead) {
          String cell = cells.get(column);
          cells.set(column, cell.isEmpty() ? text.text : cell + " " + text.text);
        }
      }
      return rows;
    }

    private boolean isStart(List<Text> heads, Text text) {
      int column = column(heads, text).orElseThrow();
      return column == heads.size()
          || Math.abs(heads.get(column).right() - text.right()) < NEAR_MM
              && text.text.matches("-?[0-9]+([ .].*|/.*)?°?");
    }

    /** The column of a text, that of the marks last; empty where it is in none. */
    private Optional<Integer> column(List<Text> heads, Text text) {
      for (int i = 0; i < heads.size(); i++) {
        Text head = heads.get(i);
        if (Math.abs(head.x - text.x) < NEAR_MM
            || Math.abs(head.right() - text.right()) < NEAR_MM) {
          return Optional.of(i);
        }
      }
      return Math.abs(text.x - title.x - 1) < NEAR_MM
          ? Optional.of(heads.size())
          : Optional.empty();
    }
  }
}
