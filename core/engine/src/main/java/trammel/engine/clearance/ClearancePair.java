package trammel.engine.clearance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Two bodies that move against each other and must not touch.
 *
 * @param first one of them
 * @param second the other
 * @param firstCut what does not count of the first; {@link EndCut#NONE} unless it is a link
 * @param secondCut what does not count of the second; {@link EndCut#NONE} unless it is a link
 */
public record ClearancePair(Body first, Body second, EndCut firstCut, EndCut secondCut) {

  /**
   * @throws IllegalArgumentException if a body that is not a link is cut back, or one is cut back
   *     without end
   */
  public ClearancePair {
    checkCut(first, firstCut.frameEndMm(), firstCut.axleEndMm());
    checkCut(second, secondCut.frameEndMm(), secondCut.axleEndMm());
  }

  /** The two whole bodies. */
  public static ClearancePair of(Body first, Body second) {
    return new ClearancePair(first, second, EndCut.NONE, EndCut.NONE);
  }

  /**
   * Every pair that can run into each other: all but those on the same carrier (two links do move
   * against each other) and those joined.
   *
   * @param bodies each with its own name
   * @param joints which of them are meant to touch; several for the same two bodies add up
   * @return pairs in the order of the bodies
   * @throws IllegalArgumentException if two bodies share a name, or a joint names a body that is
   *     not there or cuts back one that is not a link
   */
  public static List<ClearancePair> among(List<Body> bodies, List<Joint> joints) {
    checkNames(bodies, joints);
    List<ClearancePair> pairs = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      for (int j = i + 1; j < bodies.size(); j++) {
        addPair(bodies.get(i), bodies.get(j), joints, pairs);
      }
    }
    return List.copyOf(pairs);
  }

  private static void addPair(
      Body first, Body second, List<Joint> joints, List<ClearancePair> pairs) {
    if (!first.carrier().equals(second.carrier()) || first.carrier().isBetween()) {
      Optional<ClearancePair> pair = of(first, second, joints);
      if (pair.isPresent()) {
        pairs.add(pair.get());
      }
    }
  }

  /**
   * Two bodies, without what of them is meant to touch.
   *
   * @param joints which bodies are meant to touch; those of other bodies do not matter
   * @return the pair; empty if all of one body is left out
   * @throws IllegalArgumentException if a joint of the two cuts back one that is not a link
   */
  public static Optional<ClearancePair> of(Body first, Body second, List<Joint> joints) {
    EndCut firstCut = cutOf(first, second, joints);
    EndCut secondCut = cutOf(second, first, joints);
    return leavesSome(first, firstCut) && leavesSome(second, secondCut)
        ? Optional.of(new ClearancePair(first, second, firstCut, secondCut))
        : Optional.empty();
  }

  private static EndCut cutOf(Body body, Body other, List<Joint> joints) {
    EndCut cut = EndCut.NONE;
    for (Joint joint : joints) {
      if (joint.name().equals(body.name()) && joint.joinedTo().equals(other.name())) {
        checkJoint(body, joint);
        cut = cut.and(joint.leftOutAtFrameEndMm(), joint.leftOutAtAxleEndMm());
      }
    }
    return cut;
  }

  private static boolean leavesSome(Body body, EndCut cut) {
    return cut.isNone() || cut.frameEndMm() + cut.axleEndMm() < body.lengthMm();
  }

  private static void checkNames(List<Body> bodies, List<Joint> joints) {
    Set<String> names = new HashSet<>();
    for (Body body : bodies) {
      if (!names.add(body.name())) {
        throw new IllegalArgumentException(
            "Two bodies are called '"
                + body.name()
                + "'; every body of a clearance check must have its own name. Rename one.");
      }
    }
    for (Joint joint : joints) {
      checkKnown(joint, joint.name(), names);
      checkKnown(joint, joint.joinedTo(), names);
    }
  }

  private static void checkKnown(Joint joint, String name, Set<String> names) {
    if (!names.contains(name)) {
      throw new IllegalArgumentException(
          "The joint of '"
              + joint.name()
              + "' and '"
              + joint.joinedTo()
              + "' names '"
              + name
              + "', and there is no such body. Give the body, correct the name or drop the joint.");
    }
  }

  private static void checkJoint(Body body, Joint joint) {
    if (!joint.isWhole()) {
      checkCut(body, joint.leftOutAtFrameEndMm(), joint.leftOutAtAxleEndMm());
    }
  }

  private static void checkCut(Body body, double frameEndMm, double axleEndMm) {
    double cutMm = frameEndMm + axleEndMm;
    if (cutMm == 0 || body.carrier().isBetween() && !Double.isInfinite(cutMm)) {
      return;
    }
    throw new IllegalArgumentException(
        "The body '"
            + body.name()
            + "' is to be cut back by "
            + frameEndMm
            + " mm at its frame end and "
            + axleEndMm
            + " mm at its axle end; only a link has such ends, and the lengths must be finite."
            + " Cut back the link, or leave the pair out.");
  }
}
