package trammel.app.drawings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.assembly.Mesh;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.view.Body;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.BodyPose;

/** The frame, the axle and all that is made for them, ready to be looked at joint by joint. */
public final class JointScene {
  private static final Set<String> KEPT =
      Set.of(
          VehicleParts.rail(true),
          VehicleParts.rail(false),
          VehicleParts.AXLE_TUBE,
          VehicleParts.HOUSING);

  private static final Set<PartKind> SET = EnumSet.of(PartKind.PLATE, PartKind.TUBE);
  private static final Set<String> HOLDING = Set.of(BodyPose.FRAME, BodyPose.AXLE);

  /** A bar, spring or shock whose box is as near as this to a joint ends there (mm). */
  private static final double AT_THE_JOINT_MM = 5;

  /** Plates whose box is as near as this to a joint are those of its bracket (mm). */
  private static final double BRACKET_MM = 30;

  private final List<Standing> all = new ArrayList<>();

  /** A body and the box about it. */
  private record Standing(Body body, boolean strong, boolean kept, Point3 least, Point3 most) {
    boolean reaches(Point3 middle, double halfMm) {
      return least.xMm() < middle.xMm() + halfMm
          && most.xMm() > middle.xMm() - halfMm
          && least.yMm() < middle.yMm() + halfMm
          && most.yMm() > middle.yMm() - halfMm
          && least.zMm() < middle.zMm() + halfMm
          && most.zMm() > middle.zMm() - halfMm;
    }
  }

  /**
   * What stands near a joint.
   *
   * @param bodies the bodies
   * @param strong the ids of the plates and tubes that are set on frame and axle
   * @param bracket the ids of those of them that stand about the joint itself
   */
  record Near(List<Body> bodies, Set<String> strong, Set<String> bracket) {}

  /**
   * @param assembly the finished vehicle at ride
   */
  public JointScene(Assembly assembly) {
    for (PlacedPart part : assembly.parts()) {
      if (part.kind().added() || KEPT.contains(part.id())) {
        all.add(standing(part));
      }
    }
  }

  private static Standing standing(PlacedPart part) {
    Mesh mesh = part.solid().mesh().placed(part.place());
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Point3 corner : mesh.corners()) {
      double[] at = {corner.xMm(), corner.yMm(), corner.zMm()};
      for (int i = 0; i < at.length; i++) {
        least[i] = Math.min(least[i], at[i]);
        most[i] = Math.max(most[i], at[i]);
      }
    }
    return new Standing(
        new Body(part.id(), mesh, true),
        SET.contains(part.kind()) && HOLDING.contains(part.carrier()),
        HOLDING.contains(part.carrier()),
        new Point3(least[0], least[1], least[2]),
        new Point3(most[0], most[1], most[2]));
  }

  /**
   * What reaches into a cube about a point. Bars, springs and shocks only where they end there: the
   * others are not in yet when the bracket is set, and would stand before it.
   */
  Near near(Point3 middle, double halfMm) {
    List<Standing> near =
        all.stream()
            .filter(one -> one.reaches(middle, halfMm))
            .filter(one -> one.kept || one.reaches(middle, AT_THE_JOINT_MM))
            .toList();
    return new Near(
        near.stream().map(Standing::body).toList(),
        ids(near.stream().filter(Standing::strong)),
        ids(near.stream().filter(one -> one.strong && one.reaches(middle, BRACKET_MM))));
  }

  private static Set<String> ids(Stream<Standing> standing) {
    return standing.map(one -> one.body().id()).collect(Collectors.toSet());
  }
}
