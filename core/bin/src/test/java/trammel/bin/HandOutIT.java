package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder that quote --out hands out for both demo jobs. */
class HandOutIT {
  private static final int STOP = 1;

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @BeforeAll
  static void write() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
    for (String job : new String[] {"pickup", "sedan"}) {
      Launch.Ended quote =
          copy.run("quote", copy.demoJob(job).toString(), "--out", shop.resolve(job).toString());
      assertEquals(STOP, quote.exitCode(), quote.err());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "pickup, quote, 2, 3",
    "pickup, cost-sheet, 3, 6",
    "pickup, material-order, 2, 4",
    "pickup, floor-packet, 7, 12",
    "sedan, quote, 2, 3",
    "sedan, cost-sheet, 3, 6",
    "sedan, material-order, 1, 4",
    "sedan, floor-packet, 6, 12"
  })
  void everyDocumentHasItsPagesAndItsFonts(String job, String name, int least, int most)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(shop.resolve(job).resolve(name + ".pdf").toFile())) {
      int pages = document.getNumberOfPages();
      assertTrue(pages >= least && pages <= most, pages + " pages");
      for (PDPage page : document.getPages()) {
        for (COSName font : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(font).isEmbedded(), font + " is not embedded");
        }
      }
      for (int i = 1; i <= pages; i++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        assertTrue(stripper.getText(document).strip().length() > 20, "page " + i + " is blank");
      }
    }
  }

  /** The total on paper is the total on the screen, to the cent. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theCustomersTotalIsTheTotalOfTheQuote(String job) throws Exception {
    String total = copy.json(STOP, "quote", copy.demoJob(job)).at("price").text("total");
    String grouped = String.format(java.util.Locale.ROOT, "$%,.2f", Double.parseDouble(total));
    try (PDDocument document = Loader.loadPDF(shop.resolve(job).resolve("quote.pdf").toFile())) {
      assertTrue(new PDFTextStripper().getText(document).contains(grouped), grouped);
    }
    assertTrue(Files.readString(shop.resolve(job).resolve("quote.html")).contains(grouped));
  }

  /** What the customer gets says nothing of the shop's overhead and contingency. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theCustomersQuoteKeepsTheShopsOwnFiguresBack(String job) throws IOException {
    String quote = Files.readString(shop.resolve(job).resolve("quote.html"));
    assertFalse(quote.contains("overhead") || quote.contains("contingency"));
    assertTrue(quote.contains("accepted by the customer"));
    assertTrue(Files.exists(shop.resolve(job).resolve("cutting/plates.csv")));
    assertTrue(Files.exists(shop.resolve(job).resolve("fitup.csv")));
  }
}
