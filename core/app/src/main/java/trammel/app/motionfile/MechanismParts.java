package trammel.app.motionfile;

import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.mechanism.BodyPoint;
import trammel.engine.mechanism.Bush;
import trammel.engine.mechanism.ElasticLink;
import trammel.engine.mechanism.ExactJoint;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.Pivot;
import trammel.engine.motion.LinkKind;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * Bodies, links, joints and bushes of a layout in the format with further bodies. What was refused
 * reads as zero or blank, so a mechanism may be made only when no problem is known.
 */
record MechanismParts(
    List<FurtherBody> bodies, List<ElasticLink> links, List<ExactJoint> joints, List<Bush> bushes) {
  private static final String POINT_KEYS = "a point with body and point";

  static MechanismParts read(ObjectNode layout, FieldChecks fields) {
    Reader reader = new Reader(fields);
    return new MechanismParts(
        fields.groups(layout, "bodies", "bodies with name and pivot").stream()
            .map(reader::body)
            .toList(),
        fields
            .groups(layout, "links", "links with name, kind, from, to, stiffness_N_per_mm")
            .stream()
            .map(reader::link)
            .toList(),
        fields.groups(layout, "joints", "joints with name and kind").stream()
            .map(reader::joint)
            .toList(),
        fields
            .groups(layout, "bushes", "bushes with name, body, on, point, stiffness_N_per_mm")
            .stream()
            .map(reader::bush)
            .toList());
  }

  /**
   * @throws trammel.engine.mechanism.MechanismFaultException if it cannot move as described
   */
  Mechanism mechanism(double trackMm, double radiusMm) {
    return new Mechanism(trackMm, radiusMm, bodies, links, joints, bushes);
  }

  private record Reader(FieldChecks fields) {

    private FurtherBody body(ObjectNode entry) {
      fields.onlyKeys(entry, List.of("name", "pivot"));
      String name = fields.name(entry);
      Optional<ObjectNode> pivot = fields.group(entry, "pivot", "kind, on, point and axis");
      return new FurtherBody(
          name, pivot.map(this::pivot).orElse(new Pivot.Ball("", new Point3(0, 0, 0))));
    }

    private Pivot pivot(ObjectNode pivot) {
      boolean pin = fields.word(pivot, "kind", List.of("revolute", "ball")).equals("revolute");
      fields.onlyKeys(
          pivot, pin ? List.of("kind", "on", "point", "axis") : List.of("kind", "on", "point"));
      String on = word(pivot, "on", "\"axle\"");
      Point3 point = point(pivot);
      return pin ? new Pivot.Pin(on, point, direction(pivot, "axis")) : new Pivot.Ball(on, point);
    }

    private ElasticLink link(ObjectNode entry) {
      boolean plain =
          FieldChecks.given(entry, "frame").isPresent()
              || FieldChecks.given(entry, "axle").isPresent();
      fields.onlyKeys(
          entry,
          plain
              ? List.of("name", "kind", "frame", "axle", "stiffness_N_per_mm")
              : List.of("name", "kind", "from", "to", "stiffness_N_per_mm"));
      String name = fields.name(entry);
      LinkKind kind =
          fields.word(entry, "kind", List.of("longitudinal", "lateral")).equals("lateral")
              ? LinkKind.LATERAL
              : LinkKind.LONGITUDINAL;
      BodyPoint from =
          plain ? new BodyPoint(Mechanism.AXLE, at(entry, "axle")) : bodyPoint(entry, "from");
      BodyPoint to =
          plain ? new BodyPoint(Mechanism.FRAME, at(entry, "frame")) : bodyPoint(entry, "to");
      double newtonPerMm = fields.number(entry, "stiffness_N_per_mm", MotionFileReader.STIFFNESS);
      return new ElasticLink(name, kind, from, to, newtonPerMm);
    }

    private ExactJoint joint(ObjectNode entry) {
      String name = fields.name(entry);
      if (fields.word(entry, "kind", List.of("slide", "ball")).equals("slide")) {
        fields.onlyKeys(entry, List.of("name", "kind", "point", "line"));
        Optional<ObjectNode> line =
            fields.group(entry, "line", "a line with body, point and direction");
        return new ExactJoint.Slide(
            name,
            bodyPoint(entry, "point"),
            line.map(this::lineStart).orElse(new BodyPoint("", new Point3(0, 0, 0))),
            line.map(group -> direction(group, "direction")).orElse(new Vector3(1, 0, 0)));
      }
      fields.onlyKeys(entry, List.of("name", "kind", "bodies", "point"));
      List<String> bodies = twoBodies(entry);
      return new ExactJoint.Ball(name, bodies.get(0), bodies.get(1), point(entry));
    }

    private BodyPoint lineStart(ObjectNode line) {
      fields.onlyKeys(line, List.of("body", "point", "direction"));
      return new BodyPoint(word(line, "body", "\"frame\""), point(line));
    }

    private List<String> twoBodies(ObjectNode entry) {
      String allowed = "the names of two bodies in one list";
      String example = "[\"axle\", \"frame\"]";
      Optional<DocumentNode> node = fields.required(entry, "bodies", allowed, example);
      if (node.isPresent()
          && node.get() instanceof ListNode list
          && list.entries().size() == 2
          && list.entries().get(0) instanceof TextNode first
          && list.entries().get(1) instanceof TextNode second) {
        return List.of(first.text(), second.text());
      }
      node.ifPresent(
          given ->
              fields
                  .problems()
                  .error(given.location(), given.given(), allowed, "Write it as " + example + "."));
      return List.of("", "");
    }

    private Bush bush(ObjectNode entry) {
      fields.onlyKeys(entry, List.of("name", "body", "on", "point", "stiffness_N_per_mm"));
      double[] stiffness =
          fields.triple(
              entry, "stiffness_N_per_mm", MotionFileReader.STIFFNESS, "[8000, 3000, 8000]");
      return new Bush(
          fields.name(entry),
          word(entry, "body", "\"arm_left\""),
          word(entry, "on", "\"axle\""),
          point(entry),
          MotionFileReader.direction(stiffness));
    }

    private BodyPoint bodyPoint(ObjectNode group, String key) {
      Optional<ObjectNode> point = fields.group(group, key, POINT_KEYS);
      if (point.isEmpty()) {
        return new BodyPoint("", new Point3(0, 0, 0));
      }
      fields.onlyKeys(point.get(), List.of("body", "point"));
      return new BodyPoint(word(point.get(), "body", "\"axle\""), point(point.get()));
    }

    private String word(ObjectNode group, String key, String example) {
      String allowed = "the name of a body";
      Optional<DocumentNode> node = fields.required(group, key, allowed, example);
      if (node.isPresent() && node.get() instanceof TextNode text) {
        return text.text();
      }
      node.ifPresent(
          given ->
              fields
                  .problems()
                  .error(
                      given.location(),
                      given.given(),
                      allowed,
                      "Write it in quotes: " + example + "."));
      return "";
    }

    private Point3 point(ObjectNode group) {
      return at(group, "point");
    }

    private Point3 at(ObjectNode group, String key) {
      return MotionFileReader.point(
          fields.triple(group, key, MotionFileReader.COORDINATE, MotionFileReader.POINT));
    }

    private Vector3 direction(ObjectNode group, String key) {
      return MotionFileReader.direction(
          fields.triple(group, key, MotionFileReader.COMPONENT, MotionFileReader.DIRECTION));
    }
  }
}
