package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;

class WholeFolderTest {
  @TempDir Path shop;

  private static FileSet files(String text) {
    return new FileSet().add("quote.txt", text).add("floor/sheet.csv", "a,b\n");
  }

  @Test
  void aFolderOfOursIsReplacedAsAWhole() throws IOException {
    Path folder = shop.resolve("out/D-101");
    new WholeFolder(folder).write(files("first").add("old.txt", "old"));
    new WholeFolder(folder).write(files("second"));
    assertEquals("second", Files.readString(folder.resolve("quote.txt")));
    assertFalse(Files.exists(folder.resolve("old.txt")));
    try (Stream<Path> beside = Files.list(folder.getParent())) {
      assertEquals(List.of(folder), beside.toList(), "nothing is left beside it");
    }
  }

  @Test
  void anEmptyFolderIsFilled() throws IOException {
    Path folder = Files.createDirectories(shop.resolve("empty"));
    new WholeFolder(folder).write(files("first"));
    assertTrue(Files.exists(folder.resolve("floor/sheet.csv")));
  }

  @Test
  void aFileOfTheShopIsNotLost() throws IOException {
    Path folder = shop.resolve("out");
    new WholeFolder(folder).write(files("first"));
    Files.writeString(folder.resolve("floor/photo.txt"), "mine");
    CommandFailure refused =
        assertThrows(CommandFailure.class, () -> new WholeFolder(folder).write(files("second")));
    assertTrue(refused.getMessage().contains("floor/photo.txt"), refused.getMessage());
    assertEquals("first", Files.readString(folder.resolve("quote.txt")));
  }

  @Test
  void aSheetThatWasFilledInIsNotLost() throws IOException {
    Path folder = shop.resolve("out");
    new WholeFolder(folder).write(files("first"));
    Files.writeString(folder.resolve("floor/sheet.csv"), "a,b\n1,2\n");
    CommandFailure refused =
        assertThrows(CommandFailure.class, () -> new WholeFolder(folder).write(files("second")));
    assertTrue(refused.getMessage().contains("changed"), refused.getMessage());
  }

  @Test
  void anotherFolderIsLeftAlone() throws IOException {
    Files.writeString(shop.resolve("letter.txt"), "mine");
    assertThrows(CommandFailure.class, () -> new WholeFolder(shop).write(files("first")));
    assertEquals("mine", Files.readString(shop.resolve("letter.txt")));
  }
}
