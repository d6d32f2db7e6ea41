package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What plugins bring to a catalog: it stands between the standard catalog and the shop's own. */
class PluginCatalogTest {
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");

  private static final String STRAP =
      """
      format: trammel-catalog/1
      currency: USD
      prices: invented
      supplier: strap house
      lead_days: 3
      items:
        strap-10: {title: strap of 10 in, unit: each, price: 20.00, bought: part, length: 10 in}
      operations:
        fit-strap: {title: fit a strap, per: strap, low: 0.2 h, likely: 0.4 h, high: 1 h, source: invented}
      """;

  @TempDir Path folder;

  private static PluginCatalog of(String plugin, String text) {
    return new PluginCatalog(plugin, text);
  }

  @Test
  void itsEntriesAreInTheCatalog() {
    CatalogReader reader = CatalogReader.begin(STANDARD);
    assertEquals(Optional.empty(), reader.bring(of("straps.jar", STRAP)));
    Catalog catalog = reader.finish(List.of());
    assertEquals(254, catalog.item("strap-10").lengthMm().orElseThrow(), 1e-9);
    assertEquals("strap house", catalog.item("strap-10").supplier());
    assertEquals("fit a strap", catalog.operation("fit-strap").title());
  }

  @Test
  void theShopsOwnCatalogIsReadOverIt() throws IOException {
    Files.writeString(
        folder.resolve("own.yaml"),
        """
        format: trammel-catalog/1
        prices: own
        items:
          strap-10: {price: 17.50}
        """);
    CatalogReader reader = CatalogReader.begin(STANDARD);
    reader.bring(of("straps.jar", STRAP));
    Item strap = reader.finish(List.of(folder)).item("strap-10");
    assertEquals(new BigDecimal("17.50"), strap.price());
    assertEquals("strap of 10 in", strap.title());
  }

  @Test
  void theSecondOfTwoWithTheSameEntryIsLeftOutByName() {
    CatalogReader reader = CatalogReader.begin(STANDARD);
    assertEquals(Optional.empty(), reader.bring(of("straps.jar", STRAP)));
    String trouble = reader.bring(of("twin.jar", STRAP.replace("20.00", "1.00"))).orElseThrow();
    assertTrue(trouble.contains("plugin twin.jar"), trouble);
    assertTrue(trouble.contains("'strap-10'") && trouble.contains("straps.jar"), trouble);
    assertEquals(new BigDecimal("20.00"), reader.finish(List.of()).item("strap-10").price());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "strap-10: | bump-stop: | is there already",
        "strap-10: | shock-8: | is there already",
        "fit-strap: | paint: | is there already",
        "price: 20.00 | price: -20.00 | price",
        "bought: part | bought: gift | bought",
        "prices: invented | note: none | prices",
        "currency: USD | currency: EUR | currency",
        "supplier: strap house | note: none | supplier",
        "items: | limits: | items and operations",
        "items: | itmes: | itmes",
        "items: | items: [ | straps.jar",
        "length: 10 in | length: 10 in, alternate: strap-11 | strap-11"
      })
  void oneWithAFaultIsLeftOutAndTheCatalogIsAsItWas(String passage, String fault, String words) {
    assertTrue(STRAP.contains(passage), passage);
    CatalogReader reader = CatalogReader.begin(STANDARD);
    String trouble = reader.bring(of("straps.jar", STRAP.replace(passage, fault))).orElseThrow();
    assertTrue(trouble.contains("plugin straps.jar"), trouble);
    assertTrue(trouble.contains(words), trouble);
    Catalog catalog = reader.finish(List.of());
    assertFalse(catalog.items().containsKey("strap-10"));
    assertFalse(catalog.operations().containsKey("fit-strap"));
  }
}
