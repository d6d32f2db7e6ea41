package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a shop filled in or made itself, through an installed copy: no command writes over it. */
class OwnFilesIT {
  private static final int BAD_INPUT = 2;

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @BeforeAll
  static void unpack() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
  }

  private static Launch.Ended run(String words, Path folder, String... more) throws Exception {
    List<String> all = new ArrayList<>(Arrays.asList(words.split(" ")));
    all.replaceAll(word -> word.equals("JOB") ? copy.demoJob("pickup").toString() : word);
    all.addAll(List.of("--out", folder.toString()));
    all.addAll(List.of(more));
    return copy.run(all.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource({
    "fitup JOB, fitup.csv",
    "close JOB, actuals.csv",
    "start --sheet, measuring-sheet.csv",
    "plan JOB, tubes.csv",
    "order JOB, material-order.html",
    "travel JOB, travel.csv"
  })
  void whatWasFilledInIsKept(String words, String name) throws Exception {
    Path folder = Files.createDirectories(shop.resolve("kept").resolve(name));
    Path file = Files.writeString(folder.resolve(name), "mine");
    Launch.Ended refused = run(words, folder);
    assertEquals(BAD_INPUT, refused.exitCode(), refused.err());
    assertTrue(refused.err().contains(file.toString()), refused.err());
    assertTrue(refused.err().contains("--replace"), refused.err());
    assertEquals("mine", Files.readString(file));
    Launch.Ended replaced = run(words, folder, "--replace");
    assertTrue(replaced.exitCode() < BAD_INPUT, replaced.err());
    String kept = name.replace(".", ".kept-1.");
    assertTrue(replaced.err().contains(kept), replaced.err());
    assertEquals("mine", Files.readString(folder.resolve(kept)));
    String written = Files.readString(file);
    Files.writeString(file, written + "filled in");
    assertEquals(BAD_INPUT, run(words, folder).exitCode());
    assertEquals(written + "filled in", Files.readString(file));
  }

  @Test
  void jobsWhoseNumbersLookAlikeAreRefusedTogether() throws Exception {
    Path one = write("one.json", "2026/014");
    Path two = write("two.json", "2026-014");
    Path out = shop.resolve("alike");
    Launch.Ended ended = copy.run("fitup", one.toString(), two.toString(), "--out", out.toString());
    assertEquals(BAD_INPUT, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("2026-014 and the number 2026/014"), ended.err());
    Launch.Ended order = copy.run("order", one.toString(), two.toString());
    assertEquals(BAD_INPUT, order.exitCode(), order.err());
  }

  @Test
  void theFolderOfAnotherJobIsRefused() throws Exception {
    Path out = shop.resolve("shared");
    run("fitup JOB", out);
    Launch.Ended ended =
        copy.run("fitup", copy.demoJob("sedan").toString(), "--out", out.toString());
    assertEquals(BAD_INPUT, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains("holds files of job D-101"), ended.err());
  }

  @Test
  void aQuoteThroughALinkTakesNothingAwayBehindIt() throws Exception {
    Path store = Files.createDirectories(shop.resolve("store"));
    Path letter = Files.writeString(store.resolve("letter.txt"), "mine");
    Path link = Files.createSymbolicLink(shop.resolve("link"), store);
    for (int time = 0; time < 2; time++) {
      Launch.Ended ended = run("quote JOB", link, "--quiet");
      assertTrue(ended.exitCode() < BAD_INPUT, ended.err());
    }
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("mine", Files.readString(letter));
    assertTrue(Files.exists(store.resolve("customer/quote.pdf")));
  }

  private static Path write(String name, String number) throws Exception {
    return InstalledCopy.write(
        shop.resolve(name), copy.demoTree("pickup").with("job.number", number));
  }
}
