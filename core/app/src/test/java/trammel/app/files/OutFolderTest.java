package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.app.commandline.CommandFailure;

/** What a shop keeps in its folders stays there, whatever command writes into them. */
class OutFolderTest {
  private static final boolean REPLACE = true;

  @TempDir Path temporary;

  private Path shop() throws IOException {
    return temporary.toRealPath();
  }

  private static FileSet files(String text) {
    return new FileSet().add("fitup.csv", text).add("plates/side.dxf", "lines of " + text);
  }

  private static OutFolder.Written write(Path folder, String job, FileSet files) {
    return OutFolder.of(folder.toString(), "plan", false).forJobs(List.of(job)).write(files);
  }

  private static OutFolder.Written replace(Path folder, String job, FileSet files) {
    return OutFolder.of(folder.toString(), "plan", REPLACE).forJobs(List.of(job)).write(files);
  }

  private static String refusal(Path folder, String job, FileSet files) {
    return assertThrows(CommandFailure.class, () -> write(folder, job, files)).getMessage();
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  /** Everything below a folder, links not followed. */
  private static List<String> tree(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> folder.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void aNewFolderHoldsItsFilesAndNothingIsLeftBesideIt() throws IOException {
    Path folder = shop().resolve("out/D-101");
    write(folder, "D-101", files("first"));
    assertEquals(List.of("files.sha256", "fitup.csv", "plates/side.dxf"), tree(folder));
    assertEquals(3, tree(shop()).size());
  }

  @Test
  void theSameJobIsWrittenAgainAndWhatIsOutOfDateGoes() throws IOException {
    Path folder = shop().resolve("D-101");
    write(folder, "D-101", files("first").add("old/part.dxf", "old"));
    write(folder, "D-101", files("second"));
    assertEquals("second", text(folder.resolve("fitup.csv")));
    assertEquals(List.of("files.sha256", "fitup.csv", "plates/side.dxf"), tree(folder));
    assertFalse(Files.exists(folder.resolve("old")), "its folder is empty");
  }

  @Test
  void whatAnotherCommandWroteForTheJobStays() throws IOException {
    Path folder = shop().resolve("D-101");
    write(folder, "D-101", files("first"));
    OutFolder.of(folder.toString(), "close", false)
        .forJobs(List.of("D-101"))
        .write(new FileSet().add("actuals.csv", "blank"));
    write(folder, "D-101", new FileSet().add("fitup.csv", "second"));
    assertEquals(List.of("actuals.csv", "files.sha256", "fitup.csv"), tree(folder));
  }

  @Test
  void aFilledFormStopsTheCommandBeforeAnythingIsWritten() throws IOException {
    Path folder = shop().resolve("D-101");
    write(folder, "D-101", files("blank"));
    Files.writeString(folder.resolve("fitup.csv"), "filled in");
    String refused = refusal(folder, "D-101", files("second"));
    assertTrue(refused.contains(folder.resolve("fitup.csv") + " was changed"), refused);
    assertTrue(refused.contains("--replace"), refused);
    assertEquals("filled in", text(folder.resolve("fitup.csv")));
    assertEquals("lines of blank", text(folder.resolve("plates/side.dxf")));
    assertEquals(List.of("files.sha256", "fitup.csv", "plates/side.dxf"), tree(folder));
  }

  @Test
  void replacingKeepsEveryEarlierCopy() throws IOException {
    Path folder = shop().resolve("D-101");
    write(folder, "D-101", files("blank"));
    for (int time = 1; time <= 3; time++) {
      Files.writeString(folder.resolve("fitup.csv"), "filled in " + time);
      OutFolder.Written written = replace(folder, "D-101", files("blank again " + time));
      String told = String.join("\n", written.remarks());
      assertTrue(told.contains("fitup.kept-" + time + ".csv"), told);
    }
    for (int time = 1; time <= 3; time++) {
      assertEquals("filled in " + time, text(folder.resolve("fitup.kept-" + time + ".csv")));
    }
    assertEquals("blank again 3", text(folder.resolve("fitup.csv")));
    write(folder, "D-101", files("known again"));
    assertEquals("known again", text(folder.resolve("fitup.csv")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tubes.csv", "material-order.html", "fitup.csv", "files.sha256"})
  void aFileThatTrammelNeverWroteIsTheUsersOwn(String name) throws IOException {
    Path folder = Files.createDirectories(shop().resolve("mine"));
    Files.writeString(folder.resolve(name), "my own");
    FileSet files = name.equals("files.sha256") ? files("x") : new FileSet().add(name, "ours");
    String refused = refusal(folder, "D-101", files);
    assertTrue(refused.contains(folder.resolve(name) + " was not written by trammel"), refused);
    assertEquals("my own", text(folder.resolve(name)));
    assertEquals(List.of(name), tree(folder));
    replace(folder, "D-101", files);
    String copy =
        name.substring(0, name.indexOf('.')) + ".kept-1" + name.substring(name.indexOf('.'));
    assertEquals("my own", text(folder.resolve(copy)));
  }

  @Test
  void otherFilesInTheFolderAreNobodysBusiness() throws IOException {
    Path folder = Files.createDirectories(shop().resolve("mine/photos")).getParent();
    Files.writeString(folder.resolve("photos/axle.txt"), "mine");
    write(folder, "D-101", files("first"));
    write(folder, "D-101", files("second"));
    assertEquals("mine", text(folder.resolve("photos/axle.txt")));
  }

  @Test
  void anOutOfDateFileThatWasChangedStaysAndIsTold() throws IOException {
    Path folder = shop().resolve("D-101");
    write(folder, "D-101", files("first").add("part.dxf", "old"));
    Files.writeString(folder.resolve("part.dxf"), "with my notes");
    OutFolder.Written written = replace(folder, "D-101", files("second"));
    assertTrue(written.remarks().get(0).contains("part.dxf"), written.remarks().toString());
    assertEquals("with my notes", text(folder.resolve("part.dxf")));
  }

  @Test
  void aFolderOfAnotherJobIsRefusedBeforeTheWorkBegins() throws IOException {
    Path folder = shop().resolve("out");
    write(folder, "D-101", files("first"));
    CommandFailure refused =
        assertThrows(
            CommandFailure.class,
            () -> OutFolder.of(folder.toString(), "order", false).forJobs(List.of("S-7")));
    assertTrue(refused.getMessage().contains("job D-101, not of job S-7"), refused.getMessage());
    replace(folder, "S-7", files("other"));
    assertEquals("first", text(folder.resolve("fitup.kept-1.csv")));
    assertEquals("other", text(folder.resolve("fitup.csv")));
  }

  @Test
  void anOrderOverOtherJobsIsAnotherOrder() throws IOException {
    Path folder = shop().resolve("orders");
    FileSet order = new FileSet().add("material-order.html", "ten sticks");
    OutFolder out = OutFolder.of(folder.toString(), "order", false);
    out.forJobs(List.of("A", "B")).write(order);
    assertThrows(CommandFailure.class, () -> out.forJobs(List.of("A", "C")));
    assertEquals("ten sticks", text(folder.resolve("material-order.html")));
  }

  /** The letter e with an acute accent, as one sign and as two. Source: Unicode UAX #15, fig. 3. */
  @Test
  void aNumberIsTheSameHoweverItsAccentsAreStored() throws IOException {
    OutFolder out = OutFolder.of(shop().resolve("out").toString(), "plan", false);
    out.inside("\u00e9-1").write(files("first"));
    out.inside("e\u0301-1").write(files("second"));
    try (Stream<Path> folders = Files.list(shop().resolve("out"))) {
      assertEquals(1, folders.count());
    }
  }

  @Test
  void throughALinkWhatIsBehindItIsWrittenAndNothingElseIsLost() throws IOException {
    Path store = Files.createDirectories(shop().resolve("store/D-101"));
    Files.writeString(store.resolve("letter.txt"), "mine");
    Path link = Files.createSymbolicLink(shop().resolve("out"), store);
    write(link, "D-101", files("first"));
    write(link, "D-101", files("second"));
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("mine", text(store.resolve("letter.txt")));
    assertEquals("second", text(store.resolve("fitup.csv")));
    write(link.resolve("new/one"), "D-101", files("third"));
    assertEquals("third", text(store.resolve("new/one/fitup.csv")));
  }

  @Test
  void aLinkWithinTheFolderIsNotWrittenThrough() throws IOException {
    Path folder = shop().resolve("out");
    write(folder, "D-101", files("first"));
    Path elsewhere = Files.writeString(shop().resolve("mine.csv"), "mine");
    Files.delete(folder.resolve("fitup.csv"));
    Files.createSymbolicLink(folder.resolve("fitup.csv"), elsewhere);
    refusal(folder, "D-101", files("second"));
    replace(folder, "D-101", files("second"));
    assertEquals("mine", text(elsewhere));
    assertTrue(Files.isSymbolicLink(folder.resolve("fitup.kept-1.csv")));
  }

  @Test
  void aLinkThatLeadsNowhereIsSaid() throws IOException {
    Path link = Files.createSymbolicLink(shop().resolve("out"), Path.of("usb/jobs"));
    String refused = refusal(link, "D-101", files("x"));
    assertTrue(refused.contains("is a link to usb/jobs, and there is nothing"), refused);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(
        refused.replace(link + ",", link.resolve("in") + ","),
        refusal(link.resolve("in"), "D-101", files("x")));
  }

  @Test
  void aLinkThatLeadsBackToItselfIsSaid() throws IOException {
    Path one = Files.createSymbolicLink(shop().resolve("one"), Path.of("two"));
    Files.createSymbolicLink(shop().resolve("two"), Path.of("one"));
    String refused = refusal(one, "D-101", files("x"));
    assertTrue(refused.contains("leads back to itself"), refused);
  }

  @Test
  void aLinkToAFileIsNoFolder() throws IOException {
    Path file = Files.writeString(shop().resolve("rack.csv"), "mine");
    Path link = Files.createSymbolicLink(shop().resolve("out"), file);
    for (Path given : List.of(file, link, link.resolve("in"), file.resolve("in"))) {
      String refused = refusal(given, "D-101", files("x"));
      assertTrue(refused.contains("a file"), refused);
    }
    assertEquals("mine", text(file));
  }

  @Test
  void somethingInTheWayOfAFileOrFolderIsSaidBeforeAnythingChanges() throws IOException {
    Path folder = Files.createDirectories(shop().resolve("out"));
    Files.writeString(folder.resolve("plates"), "a file where a folder should be");
    assertTrue(refusal(folder, "D-101", files("x")).contains("the folder plates"));
    assertEquals(List.of("plates"), tree(folder));
    Files.delete(folder.resolve("plates"));
    Files.createDirectories(folder.resolve("fitup.csv"));
    assertTrue(refusal(folder, "D-101", files("x")).contains("is a folder"));
    assertEquals(List.of(), tree(folder));
  }

  /** As a kill leaves them: new files half written, and locks that nobody holds. */
  @Test
  void leftoversOfAKillAreTakenAwayByTheNextRun() throws IOException {
    Path folder = shop().resolve("out");
    Path beside = Files.createDirectories(shop().resolve(".out.trammel-new/plates"));
    Files.writeString(beside.resolve("half.dxf"), "hal");
    Files.writeString(shop().resolve(".out.lock"), "");
    write(folder, "D-101", files("first"));
    assertEquals(3, tree(shop()).size(), tree(shop()).toString());
    Files.createDirectories(shop().resolve(".out.trammel-new"));
    Files.createDirectories(folder.resolve(FolderWriter.FRESH));
    Files.writeString(folder.resolve(FolderWriter.FRESH).resolve("half.dxf"), "hal");
    Files.writeString(folder.resolve(FolderWriter.LOCK), "");
    Files.writeString(folder.resolve(FolderWriter.UNFINISHED), "");
    Files.writeString(folder.resolve(".files.sha256.1999999999.part"), "hal");
    write(folder, "D-101", files("second"));
    assertEquals(3, tree(shop()).size(), tree(shop()).toString());
    assertFalse(Files.exists(shop().resolve(".out.trammel-new")));
  }

  /** A folder of links as leftovers: the links go, what they lead to stays. */
  @Test
  void takingLeftoversAwayFollowsNoLink() throws IOException {
    Path folder = Files.createDirectories(shop().resolve("out"));
    Path mine = Files.createDirectories(shop().resolve("mine"));
    Files.writeString(mine.resolve("letter.txt"), "mine");
    Path fresh = Files.createDirectories(folder.resolve(FolderWriter.FRESH));
    Files.createSymbolicLink(fresh.resolve("link"), mine);
    write(folder, "D-101", files("first"));
    assertFalse(Files.exists(fresh));
    assertEquals("mine", text(mine.resolve("letter.txt")));
  }

  @Test
  void aListThatWasTamperedWithTakesNothingElsewhereAway() throws IOException {
    Path folder = shop().resolve("out");
    write(folder, "D-101", files("first"));
    Path mine = Files.writeString(shop().resolve("mine.txt"), "mine");
    String sum = WrittenList.sum(Files.readAllBytes(mine));
    Path list = folder.resolve(WrittenList.NAME);
    Files.writeString(list, text(list) + sum + "  ../mine.txt\n" + sum + "  " + mine + "\n");
    write(folder, "D-101", files("second"));
    assertEquals("mine", text(mine));
  }

  @Test
  void commandsAtTheSameTimeWriteOneAfterTheOther() throws Exception {
    Path folder = shop().resolve("out");
    ExecutorService writers = Executors.newFixedThreadPool(8);
    try {
      List<Future<OutFolder.Written>> all = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        String name = "form-" + i + ".csv";
        Callable<OutFolder.Written> one =
            () ->
                OutFolder.of(folder.toString(), name, false)
                    .forJobs(List.of("D-101"))
                    .write(new FileSet().add(name, name));
        all.add(writers.submit(one));
      }
      for (Future<OutFolder.Written> one : all) {
        one.get();
      }
    } finally {
      writers.shutdownNow();
    }
    assertEquals(41, tree(folder).size(), tree(folder).toString());
    assertEquals(
        40, text(folder.resolve(WrittenList.NAME)).lines().filter(l -> l.charAt(0) != '#').count());
  }

  /** The lock of a command that still runs is not taken for a leftover. */
  @Test
  void aLockThatIsHeldIsWaitedFor() throws Exception {
    Path folder = shop().resolve("out");
    try (FileLock held = FileLock.of(folder)) {
      Thread writer = new Thread(() -> write(folder, "D-101", files("first")));
      writer.start();
      writer.join(200);
      assertTrue(writer.isAlive(), "it waits");
      assertFalse(Files.exists(folder));
      held.close();
      writer.join(10_000);
    }
    assertEquals("first", text(folder.resolve("fitup.csv")));
  }
}
