package trammel.cutting;

import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.testsupport.ReferenceVectors;

/** Reads the cutting instances that come with the tests. */
public final class ReferenceFiles {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private ReferenceFiles() {}

  /** All instance files of a folder in order of name. */
  public static List<Path> in(String folder) {
    return ReferenceVectors.files("cutting/" + folder);
  }

  /** One instance. */
  public static JsonNode read(String folder, String name) {
    return read(ReferenceVectors.folder("cutting/" + folder).resolve(name + ".json"));
  }

  public static JsonNode read(Path file) {
    return JSON.readTree(file.toFile());
  }
}
