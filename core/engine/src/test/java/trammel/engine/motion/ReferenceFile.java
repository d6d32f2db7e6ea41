package trammel.engine.motion;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * One file of the independent set of motion vectors (format rigid-axle-motion-vectors/1), which may
 * lie beside the source tree.
 */
record ReferenceFile(String name, JsonNode root) {

  private static final Path FOLDER = Path.of("shared", "reference", "motion");

  /** Files of the set, in order of name; empty when the set is not there. */
  static List<ReferenceFile> all() {
    Optional<Path> folder = folder();
    if (folder.isEmpty()) {
      return List.of();
    }
    List<ReferenceFile> files = new ArrayList<>();
    JsonMapper mapper = JsonMapper.shared();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder.get(), "*.json")) {
      for (Path file : found) {
        JsonNode root = mapper.readTree(Files.readString(file));
        files.add(new ReferenceFile(root.get("name").asString(), root));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    files.sort((a, b) -> a.name.compareTo(b.name));
    return files;
  }

  private static Optional<Path> folder() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path candidate = at.resolve(FOLDER);
      if (Files.isDirectory(candidate)) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }

  boolean refused() {
    return root.get("expected").get("status").asString().equals("refused");
  }

  JsonNode layout() {
    return root.get("layout");
  }

  Linkage linkage() {
    List<Link> links = new ArrayList<>();
    for (JsonNode link : layout().get("links")) {
      links.add(
          new Link(
              link.get("name").asString(),
              link.get("kind").asString().equals("lateral")
                  ? LinkKind.LATERAL
                  : LinkKind.LONGITUDINAL,
              point(link.get("frame")),
              point(link.get("axle")),
              link.get("stiffness_N_per_mm").asDouble()));
    }
    return new Linkage(
        layout().get("track_mm").asDouble(),
        layout().get("tyre_loaded_radius_mm").asDouble(),
        links);
  }

  List<SpringPoint> springs() {
    return mounts("springs");
  }

  List<SpringPoint> shocks() {
    return mounts("shocks");
  }

  private List<SpringPoint> mounts(String key) {
    List<SpringPoint> mounts = new ArrayList<>();
    for (JsonNode mount : layout().get(key)) {
      mounts.add(
          new SpringPoint(
              mount.get("name").asString(),
              point(mount.get("frame")),
              point(mount.get("axle")),
              mount.has("rate_N_per_mm") ? mount.get("rate_N_per_mm").asDouble() : 0));
    }
    return mounts;
  }

  Shaft shaft() {
    JsonNode pinion = layout().get("pinion");
    JsonNode transmission = layout().get("transmission");
    return new Shaft(
        point(pinion.get("joint")),
        vector(pinion.get("axis")),
        point(transmission.get("joint")),
        vector(transmission.get("axis")));
  }

  static Point3 point(JsonNode node) {
    return new Point3(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }

  static Vector3 vector(JsonNode node) {
    return new Vector3(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }

  @Override
  public String toString() {
    return name;
  }
}
