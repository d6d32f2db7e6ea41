package trammel.engine.mechanism;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.LinkKind;

/** One file of the independent vectors for linkages with further bodies. */
record MechanismFile(JsonNode root) {

  static MechanismFile read(Path file) {
    return new MechanismFile(JsonMapper.shared().readTree(file.toFile()));
  }

  JsonNode layout() {
    return root.get("layout");
  }

  boolean refused() {
    return root.get("expected").get("status").asString().equals("refused");
  }

  Mechanism mechanism() {
    return new Mechanism(
        layout().get("track_mm").asDouble(),
        layout().get("tyre_loaded_radius_mm").asDouble(),
        bodies(),
        links(),
        joints(),
        bushes());
  }

  private List<FurtherBody> bodies() {
    List<FurtherBody> bodies = new ArrayList<>();
    for (JsonNode body : list("bodies")) {
      JsonNode pivot = body.get("pivot");
      String on = pivot.get("on").asString();
      Point3 point = point(pivot.get("point"));
      bodies.add(
          new FurtherBody(
              body.get("name").asString(),
              pivot.get("kind").asString().equals("revolute")
                  ? new Pivot.Pin(on, point, vector(pivot.get("axis")))
                  : new Pivot.Ball(on, point)));
    }
    return bodies;
  }

  private List<ElasticLink> links() {
    List<ElasticLink> links = new ArrayList<>();
    for (JsonNode link : list("links")) {
      boolean plain = link.has("frame");
      links.add(
          new ElasticLink(
              link.get("name").asString(),
              link.get("kind").asString().equals("lateral")
                  ? LinkKind.LATERAL
                  : LinkKind.LONGITUDINAL,
              plain
                  ? new BodyPoint(Mechanism.AXLE, point(link.get("axle")))
                  : bodyPoint(link.get("from")),
              plain
                  ? new BodyPoint(Mechanism.FRAME, point(link.get("frame")))
                  : bodyPoint(link.get("to")),
              link.get("stiffness_N_per_mm").asDouble()));
    }
    return links;
  }

  private List<ExactJoint> joints() {
    List<ExactJoint> joints = new ArrayList<>();
    for (JsonNode joint : list("joints")) {
      String name = joint.get("name").asString();
      if (joint.get("kind").asString().equals("slide")) {
        JsonNode line = joint.get("line");
        joints.add(
            new ExactJoint.Slide(
                name,
                bodyPoint(joint.get("point")),
                bodyPoint(line),
                vector(line.get("direction"))));
      } else {
        joints.add(
            new ExactJoint.Ball(
                name,
                joint.get("bodies").get(0).asString(),
                joint.get("bodies").get(1).asString(),
                point(joint.get("point"))));
      }
    }
    return joints;
  }

  private List<Bush> bushes() {
    List<Bush> bushes = new ArrayList<>();
    for (JsonNode bush : list("bushes")) {
      bushes.add(
          new Bush(
              bush.get("name").asString(),
              bush.get("body").asString(),
              bush.get("on").asString(),
              point(bush.get("point")),
              vector(bush.get("stiffness_N_per_mm"))));
    }
    return bushes;
  }

  private Iterable<JsonNode> list(String key) {
    return layout().has(key) ? layout().get(key) : List.<JsonNode>of();
  }

  private static BodyPoint bodyPoint(JsonNode node) {
    return new BodyPoint(node.get("body").asString(), point(node.get("point")));
  }

  static Point3 point(JsonNode node) {
    return new Point3(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }

  static Vector3 vector(JsonNode node) {
    return new Vector3(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }
}
