package trammel.app.rack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.FileLock;
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

  /** Lines that nothing happened to keep the shop's own writing. */
  @Test
  void untouchedLinesAreWrittenBackAsTheyWere() throws IOException {
    String text =
        HEAD
            + "stick,dom-1.50x0.120,long one,2.6 m,,\n"
            + "drop,plate-0.250,D1,24 in,20 in,\n"
            + "bin,jam-nut-0.750-16,,,,12\n";
    RackFile file = file(text);
    Rack rack = file.read();
    file.write(rack.without("D1").taking("jam-nut-0.750-16", 0, BigDecimal.valueOf(5)));
    assertEquals(
        (HEAD + "stick,dom-1.50x0.120,long one,2.6 m,,\n" + "bin,jam-nut-0.750-16,,,,7\n")
            .replace("\n", "\r\n"),
        Files.readString(folder.resolve("rack.csv")));
  }

  /** A new piece with the name of one that is gone is the new piece. */
  @Test
  void aNameThatIsUsedAgainStandsForTheNewPiece() throws IOException {
    RackFile file = file(HEAD + "stick,dom-1.50x0.120,R1,96 in,,\n");
    Rack rack = file.read().without("R1").with(new Rack.Stick("R1", "box-2x2x0.188", 254));
    file.write(rack);
    Rack again = file(Files.readString(folder.resolve("rack.csv"))).read();
    assertEquals(rack, again);
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

  @Test
  void twoCommandsDoNotUseOneRackAtATime() {
    Path path = folder.resolve("rack.csv");
    try (FileLock first = FileLock.of(path)) {
      assertTrue(first != null);
      CommandFailure refused = assertThrows(CommandFailure.class, () -> FileLock.of(path));
      assertTrue(refused.getMessage().contains("in use"), refused.getMessage());
    }
    FileLock.of(path).close();
  }
}
