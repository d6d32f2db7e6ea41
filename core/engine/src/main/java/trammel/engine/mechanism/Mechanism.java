package trammel.engine.mechanism;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.mechanism.MechanismFaultException.Kind;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.motion.Linkage;

/**
 * A rigid axle with everything that guides it, as it stands at ride. The frame is held still; heave
 * and roll of the axle are imposed; what is left free gives the links and bushes the least energy
 * while pivots and joints hold exactly.
 *
 * @param trackMm distance between the wheel centres (mm, above 0)
 * @param tyreLoadedRadiusMm height of the wheel centres above the ground at ride (mm, above 0)
 * @param bodies further bodies, each behind the body that carries its pivot
 * @param links bars between any two bodies
 * @param joints exact joints between any two bodies
 * @param bushes elastic joints between any two bodies
 */
public record Mechanism(
    double trackMm,
    double tyreLoadedRadiusMm,
    List<FurtherBody> bodies,
    List<ElasticLink> links,
    List<ExactJoint> joints,
    List<Bush> bushes) {
  /** Name of the body that is held still. */
  public static final String FRAME = BodyPose.FRAME;

  /** Name of the body that the wheels are on. */
  public static final String AXLE = BodyPose.AXLE;

  /** Of the axle's six freedoms heave and roll are imposed. */
  static final int FREE_OF_AXLE = 4;

  private static final double SHORTEST_MM = 1e-6;
  private static final double OFF_LINE_MM = 1e-6;

  /** Any length will do for a line (mm). */
  private static final double LINE_MM = 100;

  /** A direction may differ from length 1 by the rounding of a handful of digits. */
  private static final double UNIT_SLACK = 1e-3;

  /**
   * @throws MechanismFaultException if something is named that is not there, has no size, or the
   *     whole is locked, over-determined by exact joints, or left loose
   */
  public Mechanism {
    requireLength("track", trackMm);
    requireLength("loaded tyre radius", tyreLoadedRadiusMm);
    bodies = List.copyOf(bodies);
    links = List.copyOf(links);
    joints = List.copyOf(joints);
    bushes = List.copyOf(bushes);
    requireNames(bodies, links, joints, bushes);
    requireDirections(bodies, joints);
    requireStiffness(links, bushes);
    requireLinkLengths(links);
    requireClosedSlides(joints);
    RideRank.require(trackMm, tyreLoadedRadiusMm, bodies, links, joints, bushes);
  }

  /** A linkage of plain bars. */
  public static Mechanism of(Linkage linkage) {
    return new Mechanism(
        linkage.trackMm(),
        linkage.tyreLoadedRadiusMm(),
        List.of(),
        linkage.links().stream().map(ElasticLink::of).toList(),
        List.of(),
        List.of());
  }

  /** The linkage of plain bars that it is, if it is one. */
  public Optional<Linkage> plain() {
    if (!bodies.isEmpty() || !joints.isEmpty() || !bushes.isEmpty()) {
      return Optional.empty();
    }
    List<Link> plain = new ArrayList<>(links.size());
    for (ElasticLink link : links) {
      if (!link.isPlain()) {
        return Optional.empty();
      }
      plain.add(link.plain());
    }
    return Optional.of(new Linkage(trackMm, tyreLoadedRadiusMm, plain));
  }

  /** How many coordinates are free: four of the axle and the turns of the further bodies. */
  public int unknowns() {
    return FREE_OF_AXLE + bodies.stream().mapToInt(body -> body.pivot().turns()).sum();
  }

  /** How many equations links and bushes add. */
  public int elasticEquations() {
    return links.size() + Bush.EQUATIONS * bushes.size();
  }

  /** How many equations the exact joints add. */
  public int exactEquations() {
    return joints.stream().mapToInt(ExactJoint::equations).sum();
  }

  /** Whether every small heave and roll can be followed without any strain. */
  public boolean closesExactly() {
    return elasticEquations() + exactEquations() == unknowns();
  }

  /**
   * Bars whose lines in side view meet in the instant centre. A slide between axle and frame in the
   * centre plane counts as a line through its point square to its direction. Empty where bushes,
   * ball joints, other slides or further bodies carry what a line would have to stand for.
   */
  public List<Link> sideViewLines() {
    List<Link> lines = new ArrayList<>();
    for (ElasticLink link : links) {
      if (link.kind() == LinkKind.LONGITUDINAL) {
        if (!link.isPlain()) {
          return List.of();
        }
        lines.add(link.plain());
      }
    }
    for (ExactJoint joint : joints) {
      if (!(joint instanceof ExactJoint.Slide slide) || !inCentrePlane(slide)) {
        return List.of();
      }
      Point3 point = slide.point().atRide();
      Vector3 square = new Vector3(-slide.direction().z(), 0, slide.direction().x());
      lines.add(
          new Link(
              slide.name(), LinkKind.LONGITUDINAL, point.plus(square.scaled(LINE_MM)), point, 1));
    }
    return bushes.isEmpty() ? List.copyOf(lines) : List.of();
  }

  private static boolean inCentrePlane(ExactJoint.Slide slide) {
    return slide.point().body().equals(AXLE)
        && slide.line().body().equals(FRAME)
        && Math.abs(slide.point().atRide().yMm()) <= OFF_LINE_MM
        && Math.abs(slide.direction().y()) <= OFF_LINE_MM;
  }

  private static void requireLength(String what, double lengthMm) {
    if (!(lengthMm > 0 && lengthMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The " + what + " is " + lengthMm + " mm; it must be above 0. Measure it again.");
    }
  }

  private static void requireNames(
      List<FurtherBody> bodies,
      List<ElasticLink> links,
      List<ExactJoint> joints,
      List<Bush> bushes) {
    Set<String> known = new LinkedHashSet<>(List.of(FRAME, AXLE));
    for (FurtherBody body : bodies) {
      requireKnown(known, body.pivot().on(), "the pivot of body '" + body.name() + "'");
      if (body.name().isBlank() || !known.add(body.name())) {
        throw new MechanismFaultException(
            Kind.UNKNOWN_BODY,
            "A body is called '"
                + body.name()
                + "'; each needs a name of its own besides "
                + FRAME
                + " and "
                + AXLE
                + ".");
      }
    }
    requireOwnNames("links", links, ElasticLink::name);
    requireOwnNames("joints", joints, ExactJoint::name);
    requireOwnNames("bushes", bushes, Bush::name);
    for (ElasticLink link : links) {
      String what = "link '" + link.name() + "'";
      requireTwo(known, link.from().body(), link.to().body(), what);
    }
    for (ExactJoint joint : joints) {
      String what = "joint '" + joint.name() + "'";
      if (joint instanceof ExactJoint.Slide slide) {
        requireTwo(known, slide.point().body(), slide.line().body(), what);
      } else if (joint instanceof ExactJoint.Ball ball) {
        requireTwo(known, ball.first(), ball.second(), what);
      }
    }
    for (Bush bush : bushes) {
      requireTwo(known, bush.body(), bush.on(), "bush '" + bush.name() + "'");
    }
  }

  private static <T> void requireOwnNames(String what, List<T> parts, Function<T, String> name) {
    Map<String, T> seen = new LinkedHashMap<>();
    for (T part : parts) {
      String own = name.apply(part);
      if (own.isBlank() || seen.put(own, part) != null) {
        throw new MechanismFaultException(
            Kind.UNKNOWN_BODY,
            "Among the "
                + what
                + " the name '"
                + own
                + "' is blank or there twice; give each a"
                + " name of its own.");
      }
    }
  }

  private static void requireTwo(Set<String> known, String one, String other, String what) {
    requireKnown(known, one, what);
    requireKnown(known, other, what);
    if (one.equals(other)) {
      throw new MechanismFaultException(
          Kind.UNKNOWN_BODY,
          "Both ends of " + what + " are on the " + one + "; it must join two bodies.");
    }
  }

  private static void requireKnown(Set<String> known, String body, String what) {
    if (!known.contains(body)) {
      throw new MechanismFaultException(
          Kind.UNKNOWN_BODY,
          "There is no body '"
              + body
              + "' for "
              + what
              + "; there are "
              + String.join(", ", known)
              + " up to here. A body must be listed before what is fixed to it.");
    }
  }

  private static void requireDirections(List<FurtherBody> bodies, List<ExactJoint> joints) {
    for (FurtherBody body : bodies) {
      if (body.pivot() instanceof Pivot.Pin pin) {
        requireDirection(pin.axis(), "axis of the pivot of body '" + body.name() + "'");
      }
    }
    for (ExactJoint joint : joints) {
      if (joint instanceof ExactJoint.Slide slide) {
        requireDirection(slide.direction(), "line of slide '" + slide.name() + "'");
      }
    }
  }

  private static void requireDirection(Vector3 direction, String what) {
    if (!(Math.abs(direction.norm() - 1) <= UNIT_SLACK)) {
      throw new MechanismFaultException(
          Kind.BAD_AXIS,
          "The "
              + what
              + " has a direction of length "
              + direction.norm()
              + "; it must be 1. Divide its three parts by that length.");
    }
  }

  private static void requireStiffness(List<ElasticLink> links, List<Bush> bushes) {
    for (ElasticLink link : links) {
      requireStiffness(link.stiffnessNPerMm(), "Link '" + link.name() + "'");
    }
    for (Bush bush : bushes) {
      Vector3 stiffness = bush.stiffnessNPerMm();
      requireStiffness(stiffness.x(), "Bush '" + bush.name() + "' along X");
      requireStiffness(stiffness.y(), "Bush '" + bush.name() + "' along Y");
      requireStiffness(stiffness.z(), "Bush '" + bush.name() + "' along Z");
    }
  }

  private static void requireStiffness(double stiffnessNPerMm, String what) {
    if (!(stiffnessNPerMm > 0 && stiffnessNPerMm < Double.POSITIVE_INFINITY)) {
      throw new MechanismFaultException(
          Kind.BAD_STIFFNESS,
          what
              + " has a stiffness of "
              + stiffnessNPerMm
              + " N/mm; it must be above 0 and finite. Give the stiffness of its bushings, for"
              + " example 10000 N/mm.");
    }
  }

  private static void requireLinkLengths(List<ElasticLink> links) {
    for (ElasticLink link : links) {
      if (link.lengthMm() < SHORTEST_MM) {
        throw new MechanismFaultException(
            Kind.ZERO_LENGTH,
            "Link '"
                + link.name()
                + "' is "
                + link.lengthMm()
                + " mm long; a link must be at least 0.000001 mm long. Check whether one end was"
                + " copied from the other.");
      }
    }
  }

  private static void requireClosedSlides(List<ExactJoint> joints) {
    for (ExactJoint joint : joints) {
      if (joint instanceof ExactJoint.Slide slide) {
        Point3 point = slide.point().atRide();
        double offMm = slide.line().atRide().to(point).cross(slide.direction()).norm();
        if (offMm > OFF_LINE_MM) {
          throw new MechanismFaultException(
              Kind.OPEN_JOINT,
              "The point of slide '"
                  + slide.name()
                  + "' is "
                  + offMm
                  + " mm off its line at ride; at most 0.000001 mm are allowed. Put a point of the"
                  + " line where the sliding point is.");
        }
      }
    }
  }
}
