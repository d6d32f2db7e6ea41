package trammel.app.rack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

class RackFileTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final String HEAD = "kind,item,name,length,width,quantity\n";

  @TempDir Path folder;

  private RackFile file(String text) throws IOException {
    Path path = Files.writeString(folder.resolve("rack.csv"), text);
    return new RackFile(path, CATALOG, UnitSystem.US);
  }

  @Test
  void theDemoRackIsRead() {
    Rack rack =
        new RackFile(Path.of("..", "..", "catalogs", "demo", "rack.csv"), CATALOG, UnitSystem.US)
            .read();
    assertEquals(31.5 * 25.4, rack.sticks("dom-1.50x0.120").get(0).lengthMm(), 1e-9);
    assertEquals(20 * 25.4, rack.drops("plate-0.250").get(0).widthMm(), 1e-9);
    assertEquals(new BigDecimal("3"), rack.held("bolt-0.500-20", 3.5 * 25.4));
  }

  /** Lengths that shop units do not tell in full keep every digit, and names any sign. */
  @Test
  void aRackIsWrittenAndReadBackTheSame() throws IOException {
    Rack rack =
        new Rack(
            List.of(
                new Rack.Stick("=1+1", "dom-1.50x0.120", 2600),
                new Rack.Stick("'-3", "box-2x2x0.188", 415.925)),
            List.of(new Rack.Drop("a, \"b\"", "plate-0.250", 508, 609.6123456789)),
            List.of(
                new Rack.Bin("bolt-0.500-20", 88.9, new BigDecimal("3")),
                new Rack.Bin("jam-nut-0.750-16", 0, new BigDecimal("12.5"))));
    for (UnitSystem units : UnitSystem.values()) {
      Path path = Files.writeString(folder.resolve("rack.csv"), RackFile.text(rack, units));
      assertEquals(rack, new RackFile(path, CATALOG, units).read(), Files.readString(path));
    }
    assertTrue(RackFile.text(rack, UnitSystem.US).contains("3 1/2 in"));
  }

  @Test
  void everyWrongLineIsNamedAtOnce() throws IOException {
    RackFile file =
        file(
            HEAD
                + "stick,dom-1.5x0.120,R1,31 in,,\n"
                + "drop,plate-0.250,,24 in,wide,\n"
                + "bin,jam-nut-0.750-16,,,,a few\n"
                + "pipe,,,,,\n");
    String told = assertThrows(BadInputException.class, file::read).problems().toString();
    assertTrue(told.contains("dom-1.5x0.120"), told);
    assertTrue(told.contains("the name painted on it"), told);
    assertTrue(told.contains("wide"), told);
    assertTrue(told.contains("a few"), told);
    assertTrue(told.contains("pipe"), told);
  }

  @Test
  void twoPiecesOfOneNameAreRefused() throws IOException {
    RackFile file =
        file(HEAD + "stick,dom-1.50x0.120,R1,31 in,,\n" + "stick,dom-1.50x0.120,R1,41 in,,\n");
    assertTrue(assertThrows(CommandFailure.class, file::read).getMessage().contains("'R1'"));
  }

  @Test
  void aFileWithoutTheColumnsIsRefusedWithThem() throws IOException {
    RackFile file = file("what,where\n");
    assertTrue(
        assertThrows(CommandFailure.class, file::read)
            .getMessage()
            .contains("kind,item,name,length,width,quantity"));
  }
}
