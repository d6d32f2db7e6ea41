package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A supplier's list into the shop's catalog, through an installed copy. All prices invented. */
class PricesIT {
  private static final int DONE = 0;
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  @TempDir static Path installed;
  private static InstalledCopy copy;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(installed);
  }

  private Path shop(String list) throws IOException {
    Files.createDirectories(folder.resolve("catalog"));
    for (String file : new String[] {"pickup.yaml", "catalog/shop.json", "catalog/logo.png"}) {
      Files.copy(copy.home().resolve("catalogs/demo").resolve(file), folder.resolve(file));
    }
    return Files.writeString(folder.resolve("list.csv"), list);
  }

  /**
   * The pickup takes one stick of 12 ft: 110.50, at 25 % markup 138.13; at 118.75 it is 148.44. Tax
   * of 7.25 % on 3,574.57 is 259.16, on 10.31 more 259.90. So the total rises by 11.05.
   */
  @Test
  void aListChangesTheQuoteByItsLinesAndNothingBeforeItIsWritten() throws Exception {
    Path list = shop("item,length,price\ndom-1.50x0.120,12 ft,118.75\n");
    Path job = folder.resolve("pickup.yaml");
    BigDecimal before = copy.json(STOP, "quote", job).amount("price.total");

    Tree shown = copy.json(DONE, "prices", list, "--shop", folder.toString());
    assertEquals("price", shown.text("columns.price"));
    assertFalse(Files.exists(folder.resolve("catalog/prices.json")));
    assertFalse(Files.exists(folder.resolve("ledger.sqlite")));

    Launch.Ended ended =
        copy.run("prices", "--write", "--date", "2026-12-01", list.toString(), folder.toString());
    assertEquals(DONE, ended.exitCode(), ended.err());
    assertTrue(ended.out().contains("$110.50 to $118.75, +7.5 %"), ended.out());
    assertTrue(ended.out().contains("with tax, +$11.05"), ended.out());
    assertEquals(
        before.add(new BigDecimal("11.05")), copy.json(STOP, "quote", job).amount("price.total"));

    copy.run("ledger", "tables", "--shop", folder.toString(), "--out", folder + "/tables");
    String history = Files.readString(folder.resolve("tables/prices.csv"));
    assertTrue(history.contains(",110.50,118.75,USD,2026-12-01,list.csv"), history);
  }

  @Test
  void aPriceFarOffIsAskedAbout() throws Exception {
    Path list = shop("item,price\nbump-stop,140\n");
    Launch.Ended ended =
        copy.run("prices", "--write", "--shop", folder.toString(), list.toString());
    assertEquals(BAD_INPUT, ended.exitCode());
    assertTrue(ended.out().contains("FAR OFF"), ended.out());
    assertFalse(Files.exists(folder.resolve("catalog/prices.json")));
    ended =
        copy.run("prices", "--write", "--as-written", "--shop", folder.toString(), list.toString());
    assertEquals(DONE, ended.exitCode(), ended.err());
  }

  /** The demonstration is of 2026-11-25; a price is old after 90 days unless the shop says so. */
  @Test
  void anOldListIsAskedToBeRenewed() throws Exception {
    Path list = shop("item,length,price\ndom-1.50x0.120,12 ft,118.75\n");
    copy.run(
        "prices", "--write", "--date", "2026-01-05", "--shop", folder.toString(), list.toString());
    Launch.Ended ended = copy.run("quote", folder.resolve("pickup.yaml").toString());
    assertTrue(ended.err().contains("list.csv: the prices are of 2026-01-05"), ended.err());
  }
}
