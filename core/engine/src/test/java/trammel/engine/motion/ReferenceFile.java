package trammel.engine.motion;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.testsupport.ReferenceVectors;

/**
 * One file of the independent set of motion vectors (format rigid-axle-motion-vectors/1), which
 * comes with the tests.
 */
record ReferenceFile(String name, JsonNode root) {

  /** Files of the set, in order of name. */
  static List<ReferenceFile> all() {
    List<ReferenceFile> files = new ArrayList<>();
    for (Path file : ReferenceVectors.files("motion")) {
      JsonNode root = JsonMapper.shared().readTree(file.toFile());
      files.add(new ReferenceFile(root.get("name").asString(), root));
    }
    return files;
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
