package trammel.app.motionfile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.FormerNames;
import trammel.app.motionfile.FieldChecks.NumberRule;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.mechanism.Mechanism;
import trammel.engine.mechanism.MechanismFaultException;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.motion.Linkage;
import trammel.engine.motion.Shaft;
import trammel.engine.motion.SpringPoint;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;
import trammel.reading.tree.TextNode;

/** Reads a motion file field by field and collects everything that is wrong with it. */
public final class MotionFileReader {
  /** A link, spring, shock or shaft shorter than this has no direction (mm). */
  private static final double SHORTEST_MM = 1e-6;

  /** A direction may differ from length 1 by the rounding of a handful of digits. */
  private static final double UNIT_LENGTH_SLACK = 1e-3;

  /** Wheel centres are repeated in the file; they may differ by rounding (mm). */
  private static final double REPEATED_SLACK_MM = 1e-6;

  private static final NumberRule LENGTH = new NumberRule(0.001, 20_000, "mm");
  static final NumberRule COORDINATE = new NumberRule(-20_000, 20_000, "mm");
  static final NumberRule COMPONENT = new NumberRule(-1.001, 1.001, "");
  private static final NumberRule SHARE = new NumberRule(0, 1, "");
  private static final NumberRule MASS = new NumberRule(0.001, 100_000, "kg");
  static final NumberRule STIFFNESS = new NumberRule(0.001, 1e9, "N/mm");
  private static final NumberRule RATE = new NumberRule(0, 1e6, "N/mm");
  private static final NumberRule HEAVE = new NumberRule(-5000, 5000, "mm");
  private static final NumberRule HEAVE_RANGE = new NumberRule(1, 5000, "mm");
  private static final NumberRule ROLL_RANGE = new NumberRule(0.1, 80, "degrees");
  private static final NumberRule ROLL = new NumberRule(-80, 80, "degrees");

  private static final String LINK_KEYS = "links with name, kind, frame, axle, stiffness_N_per_mm";
  static final String POINT = "[641.35, 533.4, 266.7]";
  static final String DIRECTION = "[1, 0, 0]";

  private static final List<String> TOP_KEYS =
      List.of(
          "format",
          "name",
          "title",
          "description",
          "case",
          "conventions",
          "layout",
          "travel",
          "expected",
          "limits",
          "ride",
          "lateral_shift_curve_mm",
          "poses");
  private static final List<String> LAYOUT_KEYS =
      List.of(
          "track_mm",
          "tyre_loaded_radius_mm",
          "wheelbase_mm",
          "sprung_cg_height_mm",
          "front_brake_share",
          "sprung_mass_per_corner_kg",
          "wheel_centres",
          "links",
          "springs",
          "shocks",
          "pinion",
          "transmission");
  private static final List<String> BODY_KEYS = List.of("bodies", "joints", "bushes");

  private final String file;
  private final Problems problems = new Problems();
  private final FieldChecks fields = new FieldChecks(problems);

  private MotionFileReader(String file) {
    this.file = file;
  }

  /**
   * Reads a file whose name ends with {@code .json}, {@code .yaml} or {@code .yml}.
   *
   * @throws BadInputException with everything that is wrong with it, line by line
   * @throws CommandFailure if its links cannot hold an axle
   */
  public static MotionFile read(Path path) {
    return new MotionFileReader(path.toString()).file(DocumentReader.read(path));
  }

  private MotionFile file(ObjectNode written) {
    ObjectNode document = FormerNames.replaced(written, MotionFile.FORMER);
    String format =
        fields.word(document, "format", List.of(MotionFile.BARS_FORMAT, MotionFile.BODIES_FORMAT));
    boolean withBodies = format.equals(MotionFile.BODIES_FORMAT);
    fields.remarkOnOtherKeys(document, TOP_KEYS);
    Optional<ObjectNode> layout =
        fields.group(document, "layout", "the layout: " + String.join(", ", LAYOUT_KEYS));
    MotionFile.Travel travel = travel(document);
    List<WantedPose> poses = poses(document);
    if (layout.isEmpty()) {
      throw new BadInputException(problems.all());
    }
    MotionLayout moving = layout(layout.get(), withBodies);
    return new MotionFile(document, moving, withBodies, travel, poses, problems.warnings());
  }

  private MotionFile.Travel travel(ObjectNode document) {
    if (FieldChecks.given(document, "travel").isEmpty()) {
      return MotionFile.Travel.USUAL;
    }
    return fields
        .group(document, "travel", "heave_mm and roll_deg, how far to look for limits both ways")
        .map(
            travel -> {
              fields.onlyKeys(travel, List.of("heave_mm", "roll_deg"));
              return new MotionFile.Travel(
                  fields.number(travel, "heave_mm", HEAVE_RANGE),
                  fields.number(travel, "roll_deg", ROLL_RANGE));
            })
        .orElse(MotionFile.Travel.USUAL);
  }

  // Layout

  private MotionLayout layout(ObjectNode layout, boolean withBodies) {
    List<String> keys = new ArrayList<>(LAYOUT_KEYS);
    if (withBodies) {
      keys.addAll(BODY_KEYS);
    }
    fields.onlyKeys(layout, keys);
    double trackMm = fields.number(layout, "track_mm", LENGTH);
    double radiusMm = fields.number(layout, "tyre_loaded_radius_mm", LENGTH);
    double wheelbaseMm = fields.number(layout, "wheelbase_mm", LENGTH);
    double heightMm = fields.number(layout, "sprung_cg_height_mm", LENGTH);
    double brakeShare = fields.number(layout, "front_brake_share", SHARE);
    double massKg = fields.number(layout, "sprung_mass_per_corner_kg", MASS);
    Optional<MechanismParts> parts =
        withBodies ? Optional.of(MechanismParts.read(layout, fields)) : Optional.empty();
    List<Strut> links = withBodies ? List.of() : struts(layout, "links", LINK_KEYS);
    List<Strut> springs =
        struts(layout, "springs", "springs with name, kind, frame, axle, rate_N_per_mm");
    List<Strut> shocks = struts(layout, "shocks", "shocks with name, frame, axle");
    Optional<ShaftEnds> shaft = shaft(layout);
    if (FieldChecks.given(layout, "links").isEmpty()) {
      problems.error(
          layout.location().inside("links"),
          "nothing",
          LINK_KEYS,
          withBodies
              ? "Add the links that hold the axle, or an empty list."
              : "Add the links that hold the axle; at least four are needed.");
    }
    wheelCentres(layout, trackMm, radiusMm);
    problems.throwIfErrors();
    return new MotionLayout(
        parts.isPresent()
            ? mechanism(trackMm, radiusMm, parts.get(), layout)
            : Mechanism.of(linkage(trackMm, radiusMm, links, layout)),
        wheelbaseMm,
        heightMm,
        brakeShare,
        massKg,
        springPoints(springs),
        springPoints(shocks),
        shaft.isPresent() ? Optional.of(shaft.get().shaft()) : Optional.empty());
  }

  /** Something between a point of the frame and a point of the axle. */
  private record Strut(String name, String kind, Point3 frame, Point3 axle, double newtonPerMm) {}

  private List<Strut> struts(ObjectNode layout, String list, String allowed) {
    List<Strut> struts = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (ObjectNode entry : fields.groups(layout, list, allowed)) {
      Strut strut = strut(entry, list);
      if (!strut.name().isEmpty() && names.contains(strut.name())) {
        problems.error(
            entry.location().inside("name"),
            "the name '" + strut.name() + "' a second time",
            "each name once among the " + list,
            "Give each of them a name of its own.");
      }
      names.add(strut.name());
      struts.add(strut);
    }
    return struts;
  }

  private Strut strut(ObjectNode entry, String list) {
    int before = problems.errors().size();
    String name = fields.name(entry);
    double[] frame = fields.triple(entry, "frame", COORDINATE, POINT);
    double[] axle = fields.triple(entry, "axle", COORDINATE, POINT);
    String kind = "";
    double newtonPerMm = 0;
    switch (list) {
      case "links" -> {
        fields.onlyKeys(entry, List.of("name", "kind", "frame", "axle", "stiffness_N_per_mm"));
        kind = fields.word(entry, "kind", List.of("longitudinal", "lateral"));
        newtonPerMm = fields.number(entry, "stiffness_N_per_mm", STIFFNESS);
      }
      case "springs" -> {
        fields.onlyKeys(entry, List.of("name", "kind", "frame", "axle", "rate_N_per_mm"));
        kind = fields.word(entry, "kind", List.of("coil", "air"));
        newtonPerMm = fields.number(entry, "rate_N_per_mm", RATE);
      }
      default -> fields.onlyKeys(entry, List.of("name", "frame", "axle"));
    }
    Strut strut = new Strut(name, kind, point(frame), point(axle), newtonPerMm);
    if (problems.errors().size() == before) {
      refuseWithoutLength(strut, list.substring(0, list.length() - 1), entry.location());
    }
    return strut;
  }

  private void refuseWithoutLength(Strut strut, String what, Location where) {
    double lengthMm = strut.frame().distanceMm(strut.axle());
    if (lengthMm < SHORTEST_MM) {
      problems.error(
          where,
          "the "
              + what
              + " '"
              + strut.name()
              + "' with no length: its frame end and its axle end are the same point",
          "a length of at least 0.000001 mm",
          "Measure both ends of '"
              + strut.name()
              + "' again; most likely one was copied from the other.");
    }
  }

  private Linkage linkage(double trackMm, double radiusMm, List<Strut> struts, ObjectNode layout) {
    try {
      List<Link> links = new ArrayList<>(struts.size());
      for (Strut strut : struts) {
        LinkKind kind = strut.kind().equals("lateral") ? LinkKind.LATERAL : LinkKind.LONGITUDINAL;
        links.add(new Link(strut.name(), kind, strut.frame(), strut.axle(), strut.newtonPerMm()));
      }
      return new Linkage(trackMm, radiusMm, links);
    } catch (IllegalArgumentException refused) {
      // What one link cannot know: too few of them, or an axle that they leave loose.
      int line = layout.find("links").get().location().line();
      throw CommandFailure.badInput(
          file + ", line " + line + ", layout.links: " + refused.getMessage());
    }
  }

  private Mechanism mechanism(
      double trackMm, double radiusMm, MechanismParts parts, ObjectNode layout) {
    try {
      return parts.mechanism(trackMm, radiusMm);
    } catch (MechanismFaultException refused) {
      int line = layout.location().line();
      throw CommandFailure.badInput(
          file
              + ", line "
              + line
              + ", layout ("
              + refused.kind().key()
              + "): "
              + refused.getMessage());
    }
  }

  private static List<SpringPoint> springPoints(List<Strut> struts) {
    List<SpringPoint> points = new ArrayList<>(struts.size());
    for (Strut strut : struts) {
      points.add(new SpringPoint(strut.name(), strut.frame(), strut.axle(), strut.newtonPerMm()));
    }
    return points;
  }

  private void wheelCentres(ObjectNode layout, double trackMm, double radiusMm) {
    if (FieldChecks.given(layout, "wheel_centres").isEmpty() || problems.hasErrors()) {
      return;
    }
    Optional<ObjectNode> centres = fields.group(layout, "wheel_centres", "left and right");
    if (centres.isPresent()) {
      fields.onlyKeys(centres.get(), List.of("left", "right"));
      wheelCentre(centres.get(), "left", new Point3(0, trackMm / 2, radiusMm));
      wheelCentre(centres.get(), "right", new Point3(0, -trackMm / 2, radiusMm));
    }
  }

  private void wheelCentre(ObjectNode centres, String side, Point3 wanted) {
    Point3 centre = point(fields.triple(centres, side, COORDINATE, "[0, 762, 330.2]"));
    if (!problems.hasErrors() && centre.distanceMm(wanted) > REPEATED_SLACK_MM) {
      problems.error(
          centres.find(side).get().location(),
          "[" + centre.xMm() + ", " + centre.yMm() + ", " + centre.zMm() + "]",
          "what track_mm and tyre_loaded_radius_mm say: ["
              + wanted.xMm()
              + ", "
              + wanted.yMm()
              + ", "
              + wanted.zMm()
              + "]",
          "Correct the one that is wrong, or take wheel_centres out.");
    }
  }

  // Driveshaft

  private record ShaftEnds(double[] joint, double[] axis, double[] farJoint, double[] farAxis) {
    Shaft shaft() {
      return new Shaft(point(joint), direction(axis), point(farJoint), direction(farAxis));
    }
  }

  private Optional<ShaftEnds> shaft(ObjectNode layout) {
    boolean pinionGiven = FieldChecks.given(layout, "pinion").isPresent();
    boolean transmissionGiven = FieldChecks.given(layout, "transmission").isPresent();
    if (!pinionGiven && !transmissionGiven) {
      return Optional.empty();
    }
    String allowed = "a driveshaft end with joint and axis; pinion and transmission go together";
    Optional<ObjectNode> pinion = fields.group(layout, "pinion", allowed);
    Optional<ObjectNode> transmission = fields.group(layout, "transmission", allowed);
    if (pinion.isEmpty() || transmission.isEmpty()) {
      return Optional.empty();
    }
    int before = problems.errors().size();
    ShaftEnds ends =
        new ShaftEnds(
            joint(pinion.get()),
            axis(pinion.get()),
            joint(transmission.get()),
            axis(transmission.get()));
    if (problems.errors().size() == before
        && point(ends.joint()).distanceMm(point(ends.farJoint())) < SHORTEST_MM) {
      problems.error(
          transmission.get().location().inside("joint"),
          "a driveshaft with no length: both its joints are the same point",
          "a length of at least 0.000001 mm",
          "Measure both joints again; most likely one was copied from the other.");
    }
    return Optional.of(ends);
  }

  private double[] joint(ObjectNode end) {
    fields.onlyKeys(end, List.of("joint", "axis"));
    return fields.triple(end, "joint", COORDINATE, POINT);
  }

  private double[] axis(ObjectNode end) {
    int before = problems.errors().size();
    double[] axis = fields.triple(end, "axis", COMPONENT, DIRECTION);
    if (problems.errors().size() > before) {
      return axis;
    }
    double length = direction(axis).norm();
    if (Math.abs(length - 1) > UNIT_LENGTH_SLACK || axis[0] <= 0) {
      problems.error(
          end.find("axis").get().location(),
          "a direction of length " + length + " that points " + (axis[0] > 0 ? "forward" : "back"),
          "a direction of length 1 that points forward",
          "For an axis that rises to the front by an angle, write [cosine, 0, sine] of it.");
    }
    return axis;
  }

  // Poses

  private List<WantedPose> poses(ObjectNode document) {
    if (FieldChecks.given(document, "poses").isEmpty()) {
      return WantedPose.usual();
    }
    List<WantedPose> poses = new ArrayList<>();
    for (ObjectNode entry : fields.groups(document, "poses", "poses with heave_mm and roll_deg")) {
      double heaveMm = fields.number(entry, "heave_mm", HEAVE);
      double rollDeg = fields.number(entry, "roll_deg", ROLL);
      poses.add(new WantedPose(set(entry, heaveMm, rollDeg), heaveMm, rollDeg));
    }
    return poses;
  }

  private String set(ObjectNode entry, double heaveMm, double rollDeg) {
    Optional<DocumentNode> set = FieldChecks.given(entry, "set");
    if (set.isEmpty()) {
      return WantedPose.setOf(heaveMm, rollDeg);
    }
    if (set.get() instanceof TextNode text && text.isOneLine()) {
      return text.text();
    }
    problems.error(
        set.get().location(),
        set.get().given(),
        "heave, roll, combined, or a name of your own in quotes",
        "Write the name in quotes, or leave set out.");
    return "";
  }

  static Point3 point(double[] triple) {
    return new Point3(triple[0], triple[1], triple[2]);
  }

  static Vector3 direction(double[] triple) {
    return new Vector3(triple[0], triple[1], triple[2]);
  }
}
