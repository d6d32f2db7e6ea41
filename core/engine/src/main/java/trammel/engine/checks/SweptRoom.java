package trammel.engine.checks;

import java.util.List;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Shape;
import trammel.engine.clearance.Sphere;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.Placement;

/**
 * The upright block that a body keeps to over all poses. Two bodies are at least as far apart as
 * their blocks, which is found much sooner than their gap.
 */
final class SweptRoom {
  private final double[] lowMm = {
    Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
  };
  private final double[] highMm = {
    Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
  };

  SweptRoom(Body body, List<Placement> placements) {
    Shape shape = body.shape();
    if (body.carrier().isStill()) {
      addStanding(shape);
    } else if (body.carrier().isBetween()) {
      for (Placement placement : placements) {
        addEnd(placement.of(body.carrier().from()).move(first(shape)), radiusMm(shape));
        addEnd(placement.of(body.carrier().to()).move(second(shape)), radiusMm(shape));
      }
    } else {
      for (Placement placement : placements) {
        addMoved(shape, placement.of(body.carrier().to()));
      }
    }
  }

  private void addStanding(Shape shape) {
    if (shape instanceof Box box) {
      addBox(box);
    } else {
      addEnd(first(shape), radiusMm(shape));
      addEnd(second(shape), radiusMm(shape));
    }
  }

  private void addMoved(Shape shape, Placement placement) {
    if (shape instanceof Box box) {
      addBox(box.moved(placement));
    } else {
      addEnd(placement.move(first(shape)), radiusMm(shape));
      addEnd(placement.move(second(shape)), radiusMm(shape));
    }
  }

  private void addBox(Box box) {
    for (int corner = 0; corner < 8; corner++) {
      addEnd(
          box.centre()
              .plus(box.lengthwise().scaled(sign(corner, 1) * box.halfLengthMm()))
              .plus(box.crosswise().scaled(sign(corner, 2) * box.halfWidthMm()))
              .plus(box.upright().scaled(sign(corner, 4) * box.halfHeightMm())),
          0);
    }
  }

  private static int sign(int corner, int bit) {
    return (corner & bit) == 0 ? -1 : 1;
  }

  private static Point3 first(Shape shape) {
    if (shape instanceof Capsule capsule) {
      return capsule.from();
    }
    return shape instanceof Cylinder cylinder ? cylinder.from() : ((Sphere) shape).centre();
  }

  private static Point3 second(Shape shape) {
    if (shape instanceof Capsule capsule) {
      return capsule.to();
    }
    return shape instanceof Cylinder cylinder ? cylinder.to() : ((Sphere) shape).centre();
  }

  private static double radiusMm(Shape shape) {
    if (shape instanceof Capsule capsule) {
      return capsule.radiusMm();
    }
    return shape instanceof Cylinder cylinder ? cylinder.radiusMm() : ((Sphere) shape).radiusMm();
  }

  private void addEnd(Point3 point, double marginMm) {
    add(0, point.xMm(), marginMm);
    add(1, point.yMm(), marginMm);
    add(2, point.zMm(), marginMm);
  }

  private void add(int axis, double placeMm, double marginMm) {
    lowMm[axis] = Math.min(lowMm[axis], placeMm - marginMm);
    highMm[axis] = Math.max(highMm[axis], placeMm + marginMm);
  }

  /** A distance that two bodies never come closer than (mm); 0 where their rooms overlap. */
  double apartMm(SweptRoom other) {
    double square = 0;
    for (int axis = 0; axis < lowMm.length; axis++) {
      double gapMm =
          Math.max(0, Math.max(lowMm[axis] - other.highMm[axis], other.lowMm[axis] - highMm[axis]));
      square += gapMm * gapMm;
    }
    return Math.sqrt(square);
  }
}
