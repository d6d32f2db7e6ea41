package trammel.app.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of the font that comes with Trammel, as outlines. No font of the machine is asked
 * for, so that a Java without any draws the same.
 */
public final class Lettering {
  /** The font's name in documents. */
  public static final String FAMILY = "DejaVu Sans";

  private static final String REGULAR = "DejaVuSans.ttf";
  private static final String BOLD = "DejaVuSans-Bold.ttf";

  /** Letters up to here are in every font. */
  private static final int LAST_ASCII = 0x7f;

  /** Drawn for a letter that the font has not. */
  private static final int UNKNOWN = '?';

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  private Lettering() {
    try {
      font = parsed(REGULAR);
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** One font for the whole run. */
  private static final class Shared {
    private static final Lettering LETTERING = new Lettering();
  }

  /** The letters. */
  public static Lettering shared() {
    return Shared.LETTERING;
  }

  /** The regular font for the texts of a PDF. */
  public static PDFont regular(PDDocument document) throws IOException {
    return letterByLetter(document, REGULAR);
  }

  /** The bold font for the texts of a PDF. */
  public static PDFont bold(PDDocument document) throws IOException {
    return letterByLetter(document, BOLD);
  }

  /**
   * A font that joins no letters to ligatures: a reader who looks for "off" would not find it, and
   * looking for them in every text takes long. What Arabic needs is joined before.
   */
  private static PDFont letterByLetter(PDDocument document, String name) throws IOException {
    TrueTypeFont font = parsed(name);
    font.setEnableGsub(false);
    return PDType0Font.load(document, font, true);
  }

  private static TrueTypeFont parsed(String name) throws IOException {
    return new TTFParser().parse(new RandomAccessReadBuffer(bytes(name)));
  }

  private static byte[] bytes(String name) {
    try (InputStream stream = Lettering.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the font " + name + " is not in the program's files");
      }
      return stream.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Width of a text (mm) at a size (mm). */
  public synchronized double widthMm(String text, double sizeMm) {
    return run(text).widthMm * sizeMm;
  }

  /** The text's outline at a size, its base line beginning at the origin, y down. */
  public synchronized GeneralPath outline(String text, double sizeMm) {
    GeneralPath path = run(text).path;
    path.transform(AffineTransform.getScaleInstance(sizeMm, -sizeMm));
    return path;
  }

  private record Run(GeneralPath path, double widthMm) {}

  private Run run(String text) {
    String seen = inSightOrder(text);
    GeneralPath whole = new GeneralPath();
    double at = 0;
    try {
      for (int i = 0; i < seen.length(); i += Character.charCount(seen.codePointAt(i))) {
        int glyph = glyph(seen.codePointAt(i));
        Optional<GlyphData> data = Optional.ofNullable(font.getGlyph().getGlyph(glyph));
        if (data.isPresent()) {
          AffineTransform place = AffineTransform.getTranslateInstance(at, 0);
          place.scale(1 / unitsPerEm, 1 / unitsPerEm);
          whole.append(data.get().getPath().getPathIterator(place), false);
        }
        at += font.getAdvanceWidth(glyph) / unitsPerEm;
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return new Run(whole, at);
  }

  private int glyph(int letter) {
    int glyph = glyphs.getGlyphId(Character.isISOControl(letter) ? ' ' : letter);
    return glyph == 0 ? glyphs.getGlyphId(UNKNOWN) : glyph;
  }

  /** Letters that are read from right to left, in the order in which they stand on the paper. */
  private static String inSightOrder(String text) {
    return readsFromTheRight(text) ? ReadingOrder.inSight(ArabicJoining.joined(text)) : text;
  }

  /** The letters of a text that the font has not, in their order, each once. */
  public synchronized Set<Integer> missing(String text) {
    Set<Integer> missing = new LinkedHashSet<>();
    text.codePoints()
        .filter(letter -> letter > LAST_ASCII)
        .filter(letter -> !Character.isISOControl(letter) && glyphs.getGlyphId(letter) == 0)
        .forEach(missing::add);
    return missing;
  }

  /** Whether a text has letters that are read from right to left. */
  public static boolean readsFromTheRight(String text) {
    return Bidi.requiresBidi(text.toCharArray(), 0, text.length());
  }
}
