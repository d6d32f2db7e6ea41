package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/**
 * A shop and its commands use one folder in any order: forms are filled in, files come and go,
 * links and folders stand in the way, jobs change. Whatever a person wrote is still there
 * somewhere, unless a person took it away.
 */
class FolderFuzzTest {
  private static final List<String> NAMES =
      List.of("fitup.csv", "tubes.csv", "plates/side.dxf", "files.sha256", "trammel.txt");

  @TempDir Path temporary;
  private Path folder;
  private int written;
  private final Set<String> kept = new HashSet<>();

  @Seeds(40)
  void nothingThatAPersonWroteIsLost(Draw draw) throws IOException {
    Path root = temporary.toRealPath();
    folder = root.resolve("out-" + draw.seed());
    Path outside = Files.createDirectories(root.resolve("outside-" + draw.seed()));
    kept.clear();
    write(outside.resolve("letter.txt"));
    if (draw.withChance(0.3)) {
      Files.createSymbolicLink(folder, Files.createDirectories(outside.resolve("behind")));
    }
    int steps = draw.whole(4, 14);
    for (int step = 0; step < steps; step++) {
      step(draw, outside);
      Set<String> there = texts(outside);
      there.addAll(texts(folder));
      for (String text : kept) {
        assertTrue(there.contains(text), "step " + step + ": " + text + " is lost");
      }
    }
  }

  private void step(Draw draw, Path outside) throws IOException {
    Path file = folder.resolve(draw.oneOf(NAMES));
    switch (draw.whole(0, 6)) {
      case 0 -> {
        if (Files.isDirectory(file.getParent()) && !Files.isDirectory(file)) {
          forget(file);
          Files.deleteIfExists(file);
          write(file);
        }
      }
      case 1 -> {
        if (Files.isDirectory(file.getParent()) && !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
          Files.createSymbolicLink(file, draw.oneOf(outside.resolve("letter.txt"), Path.of("no")));
        }
      }
      case 2 -> {
        if (Files.isRegularFile(file)) {
          forget(file);
          Files.delete(file);
        }
      }
      default -> command(draw);
    }
  }

  /** A command of a job, with or without leave to replace. */
  private void command(Draw draw) {
    FileSet files = new FileSet();
    for (String name : draw.someOf(NAMES)) {
      if (!name.equals(WrittenList.NAME)) {
        files.add(name, "by trammel " + draw.whole(1, 3));
      }
    }
    try {
      OutFolder.of(folder.toString(), draw.oneOf("plan", "fitup"), draw.either())
          .forJobs(List.of(draw.oneOf("A", "A", "B")))
          .write(files);
    } catch (CommandFailure refused) {
      assertTrue(refused.getMessage().length() > 20, refused.getMessage());
    }
  }

  private void write(Path file) throws IOException {
    String text = "by a person " + ++written;
    Files.writeString(file, text);
    kept.add(text);
  }

  /** What a person writes over or takes away is that person's loss; a link is no text. */
  private void forget(Path file) throws IOException {
    if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      kept.remove(Files.readString(file));
    }
  }

  private static Set<String> texts(Path root) throws IOException {
    Set<String> texts = new HashSet<>();
    if (!Files.exists(root)) {
      return texts;
    }
    Files.walkFileTree(
        root.toRealPath(),
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            if (attributes.isRegularFile()) {
              texts.add(Files.readString(file));
              String name = file.getFileName().toString();
              assertTrue(!name.startsWith("."), name + " is left behind");
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return texts;
  }
}
