package trammel.cutting;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Finds and reads the cutting instances, which lie beside the source tree where they exist. */
public final class ReferenceFiles {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private ReferenceFiles() {}

  /** All instance files of a folder in order of name; the test is skipped when there is none. */
  public static List<Path> in(String folder) {
    Path found = folder(folder);
    assumeTrue(found != null, "no reference instances beside the source tree: " + folder);
    try (Stream<Path> files = Files.list(found)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    } catch (IOException unreadable) {
      throw new IllegalStateException("cannot list " + found, unreadable);
    }
  }

  /** One instance; the test is skipped when it is absent. */
  public static JsonNode read(String folder, String name) {
    for (Path file : in(folder)) {
      if (file.getFileName().toString().equals(name + ".json")) {
        return read(file);
      }
    }
    assumeTrue(false, "no reference instance " + folder + "/" + name);
    return JSON.nullNode();
  }

  public static JsonNode read(Path file) {
    return JSON.readTree(file.toFile());
  }

  private static Path folder(String folder) {
    Path at = Path.of("").toAbsolutePath();
    while (at != null) {
      for (String way : List.of("shared/reference/cutting", "reference/cutting")) {
        Path candidate = at.resolve(way).resolve(folder);
        if (Files.isDirectory(candidate)) {
          return candidate;
        }
      }
      at = at.getParent();
    }
    return null;
  }
}
