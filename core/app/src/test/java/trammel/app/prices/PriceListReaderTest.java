package trammel.app.prices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.app.commandline.CommandFailure;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

/** Suppliers' lists against the standard catalog; all prices are invented. */
class PriceListReaderTest {
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");
  private static final Catalog CATALOG = CatalogReader.read(STANDARD);
  private static final QuantityPrinter PRINTER = new QuantityPrinter(UnitSystem.US);

  @TempDir Path folder;

  private PriceList read(String text) throws IOException {
    return read(text.getBytes(StandardCharsets.UTF_8), CATALOG, Map.of());
  }

  private PriceList read(byte[] bytes, Catalog catalog, Map<PriceColumn, String> told)
      throws IOException {
    Path file = Files.write(folder.resolve("list.csv"), bytes);
    return new PriceListReader(file, catalog, PRINTER, told).read();
  }

  private static String prices(PriceList list) {
    StringBuilder text = new StringBuilder();
    for (PriceList.NewPrice price : list.prices()) {
      text.append(PriceWords.title(price.priced(), PRINTER)).append(' ').append(price.price());
      text.append(price.packPrice().map(pack -> " pack " + pack).orElse(""));
      price.breaks().forEach(one -> text.append(" from ").append(one.from() + " " + one.price()));
      text.append('\n');
    }
    return text.toString();
  }

  /** The same list as different spreadsheets save it; one has a title and a day above it. */
  @ParameterizedTest
  @CsvSource({
    "UTF-8,comma",
    "UTF-8,semicolon",
    "UTF-8,tab",
    "UTF-16,semicolon",
    "UTF-16LE,tab",
    "windows-1252,semicolon"
  })
  void aListReadsTheSameHoweverItWasSaved(String charset, String between) throws IOException {
    char sign = between.equals("comma") ? ',' : between.equals("tab") ? '\t' : ';';
    String price = sign == ',' ? "\"1,118.75\"" : "1.118,75";
    String text =
        "Preise f\u00fcr Dezember|\r\n\r\nArticle no.|Description|Net price (USD)|Length\r\n"
            + ("dom-1.50x0.120|\"bar, \u00bd in\r\nthick\"|" + price + "|12 ft\r\n");
    PriceList list =
        read(text.replace('|', sign).getBytes(Charset.forName(charset)), CATALOG, Map.of());
    assertEquals("DOM 1020 round tube 1 1/2 x .120 in, 144 in 1118.75\n", prices(list));
    assertEquals("Net price (USD)", list.columns().get(PriceColumn.PRICE));
    assertTrue(list.hasFar());
  }

  /** A stick of 12 ft at 9.25 a foot is 111.00, one of 20 ft 185.00, one of 6 ft 55.50. */
  @Test
  void aPriceOfAFootIsThatOfEveryStick() throws IOException {
    assertEquals(
        "DOM 1020 round tube 1 1/2 x .120 in, 240 in 185.00\n"
            + "DOM 1020 round tube 1 1/2 x .120 in, 144 in 111.00\n"
            + "DOM 1020 round tube 1 1/2 x .120 in, 72 in 55.50\n",
        prices(read("item,unit,price\ndom-1.50x0.120,ft,9.25\n")));
  }

  @Test
  void aSheetIsFoundByItsSidesInEitherOrder() throws IOException {
    assertEquals(
        "A36 plate 1/4 in, 24 in x 48 in 151\n",
        prices(read("title,size,price\nA36 plate 1/4 in,48 x 24 in,151\n")));
  }

  /** A spool of 11 lb at 40.15 is 3.65 a pound; at 3.50 a pound it is 38.50. */
  @Test
  void theUnitSaysWhetherAPriceIsOfThePack() throws IOException {
    assertEquals(
        "solid wire 0.035 in, ER70S-6 3.6500 pack 40.15 from 3 37.00\n",
        prices(
            read(
                "item,unit,from,price\nwire-035,11 lb spool,,40.15\n"
                    + "wire-035,11 lb spool,3,37.00\n")));
    assertEquals(
        "solid wire 0.035 in, ER70S-6 3.50 pack 38.50\n",
        prices(read("item,unit,price\nwire-035,lb,3.50\n")));
    assertThrows(BadInputException.class, () -> read("item,price\nwire-035,3.50\n"));
  }

  @Test
  void boltsGoByLengthAndTheirNutsAndWashersByName() throws IOException {
    assertEquals(
        "1/2-20 grade 8, 3 1/2 in 2.40\n1/2-20 grade 8, lock nut 1.05\n",
        prices(read("item,length,price\nbolt-0.500-20,3 1/2 in,2.40\nbolt-0.500-20-nut,,1.05\n")));
  }

  /** A supplier's own number is learned where the title tells what it is, and enough from then. */
  @Test
  void theSuppliersOwnNumberIsEnoughTheSecondTime() throws IOException {
    PriceList first = read("code,description,price\n77-A,bump stop with stud,15.00\n");
    Path shop = Files.createDirectory(folder.resolve("catalog"));
    ListPriceFile file = new ListPriceFile(shop, CATALOG);
    Files.writeString(file.path(), file.text(first, LocalDate.of(2026, 12, 1), "list of December"));
    Catalog now = CatalogReader.read(List.of(STANDARD, shop));
    assertEquals(new BigDecimal("15.00"), now.item("bump-stop").price());
    PriceList second =
        read("code,price\n77-A,15.50\n".getBytes(StandardCharsets.UTF_8), now, Map.of());
    assertEquals("bump stop with stud 15.50\n", prices(second));
    assertEquals(new BigDecimal("15.00"), second.prices().get(0).priced().price());
  }

  /** A list names some lengths; the others keep what an earlier list said of them. */
  @Test
  void aSecondListLeavesWhatItDoesNotName() throws IOException {
    Path shop = Files.createDirectory(folder.resolve("catalog"));
    LocalDate day = LocalDate.of(2026, 12, 1);
    Catalog now = CATALOG;
    for (String line : List.of("12 ft,119", "20 ft,171.25")) {
      ListPriceFile file = new ListPriceFile(shop, now);
      Files.writeString(
          file.path(),
          file.text(read("item,length,price\ndom-1.50x0.120," + line + "\n"), day, "list"));
      now = CatalogReader.read(List.of(STANDARD, shop));
    }
    assertEquals(new BigDecimal("119"), now.bar("dom-1.50x0.120").priceEach(3657.6, 1));
    assertEquals(new BigDecimal("171.25"), now.bar("dom-1.50x0.120").priceEach(6096, 1));
    assertEquals(new BigDecimal("66.50"), now.bar("dom-1.50x0.120").priceEach(1828.8, 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "item;price\nbump-stop;1.500\n",
        "item,price\nbump-stop,\"1,500\"\n",
        "item,price\nbump-stop,12 EUR\n",
        "item,price\nbump-stop,call us\n",
        "item,price\nbump-stop,-3\n",
        "item,price\nbump-stop,10000001\n",
        "item,price,currency\nbump-stop,12,EUR\n",
        "item,unit,price\nbump-stop,ft,12\n",
        "item,price\ndom-1.50x0.120,100\n",
        "item,price\nbump-stop,12\nbump-stop,13\n",
        "item,from,price\nbolt-0.500-20-nut,10,1.00\n"
      })
  void whatCouldMeanTwoThingsIsRefusedWithItsLine(String text) {
    String told = assertThrows(BadInputException.class, () -> read(text)).getMessage();
    assertTrue(told.contains("line "), told);
  }

  @Test
  void whatIsNotInTheCatalogIsToldAndLeftOut() throws IOException {
    PriceList list = read("item,length,price\nbracket,,1\ndom-1.50x0.120,10 ft,90\n");
    assertEquals(List.of(), list.prices());
    assertEquals(2, list.unknown().size());
    assertFalse(list.hasFar());
  }

  @Test
  void twoColumnsThatBothMayBeThePriceAreAskedFor() throws IOException {
    byte[] text = "item,list price,net price\nbump-stop,20,15\n".getBytes(StandardCharsets.UTF_8);
    String told =
        assertThrows(CommandFailure.class, () -> read(text, CATALOG, Map.of())).getMessage();
    assertTrue(told.contains("--column price="), told);
    PriceList list = read(text, CATALOG, Map.of(PriceColumn.PRICE, "net price"));
    assertEquals("bump stop with stud 15\n", prices(list));
  }

  /** It would be read with every job from then on, and no job could be priced. */
  @Test
  void whatACatalogDoesNotTakeIsNotWritten() throws IOException {
    ListPriceFile file = new ListPriceFile(folder.resolve("catalog"), CATALOG);
    LocalDate day = LocalDate.parse("2026-11-30");
    PriceList list = read("item,price\nbump-stop,15\n");
    assertTrue(file.text(list, day, "a list").contains("\"price\" : 15"));
    for (String source : List.of("", "x".repeat(201), "two\nlines")) {
      String told =
          assertThrows(BadInputException.class, () -> file.text(list, day, source)).getMessage();
      assertTrue(told.contains("list_prices.bump-stop.source"), told);
    }
    // 12 ft at ten million a foot.
    PriceList foot = read("item,unit,price\ndom-1.50x0.120,ft,10000000\n");
    assertThrows(BadInputException.class, () -> file.text(foot, day, "a list"));
  }

  /** What is the shop's own in a file of that name is not written over. */
  @Test
  void aFileOfThatNameWithMoreInItIsRefused() throws IOException {
    Path shop = Files.createDirectory(folder.resolve("catalog"));
    Files.writeString(
        shop.resolve("prices.json"), "{\"format\": \"trammel-catalog/1\", \"shop\": {}}");
    String told =
        assertThrows(CommandFailure.class, () -> new ListPriceFile(shop, CATALOG)).getMessage();
    assertTrue(told.contains("another name"), told);
  }
}
