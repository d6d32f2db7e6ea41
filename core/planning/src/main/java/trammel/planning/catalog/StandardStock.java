package trammel.planning.catalog;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.TextNode;

/** By which sizes the bolts, joints, tube, plate and springs of the standard catalog are. */
public enum StandardStock {
  /** Inch sizes, as they are in the folder {@code standard}. */
  INCH,
  /** Metric sizes, whose files take the place of those of the same names. */
  METRIC;

  static final String SECTION = "shop";
  static final String KEY = "stock";

  /** How files write it, and the name of its folder. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static List<String> words() {
    return Arrays.stream(values()).map(StandardStock::word).toList();
  }

  /**
   * What a shop's own catalog says; inch sizes where it says nothing that is understood, as the
   * reader of the catalog then tells what is wrong.
   *
   * @param folders the shop's folders
   */
  public static StandardStock of(List<Path> folders) {
    StandardStock stock = INCH;
    for (Path folder : folders) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
        for (Path file : files) {
          stock = says(file, METRIC) ? METRIC : stock;
        }
      } catch (IOException | DirectoryIteratorException unread) {
        continue;
      }
    }
    return stock;
  }

  private static boolean says(Path file, StandardStock stock) {
    if (DocumentFormat.ofFileName(file.toString()).isEmpty()) {
      return false;
    }
    try {
      return DocumentReader.read(file)
          .findObject(SECTION)
          .flatMap(shop -> shop.find(KEY))
          .filter(node -> node instanceof TextNode text && text.text().equals(stock.word()))
          .isPresent();
    } catch (BadInputException told) {
      return false;
    }
  }
}
