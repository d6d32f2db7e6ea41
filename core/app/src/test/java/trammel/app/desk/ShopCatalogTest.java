package trammel.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.app.commandline.CommandFailure;

/** The shop's own prices are used, or it is said why not. */
class ShopCatalogTest {
  @TempDir Path jobs;

  private String refusal() {
    return assertThrows(CommandFailure.class, () -> ShopCatalog.beside(jobs)).getMessage();
  }

  @Test
  void aFolderOfThatNameIsTheCatalogAndNoneIsNone() throws IOException {
    assertEquals(Optional.empty(), ShopCatalog.beside(jobs));
    Files.writeString(jobs.resolve("catalogue.txt"), "of a supplier");
    assertEquals(Optional.empty(), ShopCatalog.beside(jobs));
    Path catalog = Files.createDirectory(jobs.resolve("catalog"));
    assertEquals(Optional.of(catalog), ShopCatalog.beside(jobs));
  }

  @Test
  void aLinkToAFolderIsFollowed(@TempDir Path store) throws IOException {
    Path link = Files.createSymbolicLink(jobs.resolve("catalog"), store);
    assertEquals(Optional.of(link), ShopCatalog.beside(jobs));
  }

  @Test
  void aLinkThatLeadsNowhereIsSaid() throws IOException {
    Files.createSymbolicLink(jobs.resolve("catalog"), Path.of("../usb/catalog"));
    assertTrue(refusal().contains("is a link that leads nowhere"), refusal());
  }

  @Test
  void aLinkThatLeadsBackToItselfIsSaid() throws IOException {
    Files.createSymbolicLink(jobs.resolve("catalog"), Path.of("catalog"));
    assertTrue(refusal().contains("is a link that leads nowhere"), refusal());
  }

  @Test
  void aFileIsSaid() throws IOException {
    Files.writeString(jobs.resolve("catalog"), "prices");
    assertTrue(refusal().contains("is a file"), refusal());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Catalog", "CATALOG", "catAlog"})
  void otherLettersAreSaidWhetherThereIsACatalogOrNot(String name) throws IOException {
    Files.createDirectory(jobs.resolve(name));
    assertTrue(refusal().contains(name + " is not read"), refusal());
    Files.createDirectory(jobs.resolve("catalog"));
    assertTrue(refusal().contains(name + " is not read"), refusal());
  }
}
