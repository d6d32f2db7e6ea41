package trammel.engine.mechanism;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.LinearSystem;
import trammel.engine.motion.LinkForces;
import trammel.engine.motion.Load;
import trammel.engine.motion.MemberForce;
import trammel.engine.motion.SpringPoint;

/**
 * Forces at ride when loads act on the axle of a mechanism: in every link and spring, and in every
 * sliding joint.
 *
 * <p>Links and springs strain, pivots and sliding joints do not. The small displacement of all
 * coordinates, heave and roll among them, makes the energy of links and springs less the work of
 * the loads least while the joints hold; Lagrange's multipliers are the forces in the joints
 * (Przemieniecki, Theory of Matrix Structural Analysis, McGraw-Hill 1968, from memory). For plain
 * bars it is the solution of {@link LinkForces}.
 *
 * @param members forces in links and springs, and what the axle gives
 * @param slidersN force of each sliding joint's line on the body that slides, in the order of the
 *     mechanism (N)
 */
public record MechanismForces(LinkForces members, List<Vector3> slidersN) {
  public MechanismForces {
    slidersN = List.copyOf(slidersN);
  }

  /**
   * Forces under several sets of loads, each by itself.
   *
   * @param mechanism what holds the axle
   * @param springs two springs or more from the frame to the axle, each with a rate above zero
   * @param loadSets the loads on the axle of each set
   * @throws IllegalArgumentException if a spring has no rate, or all together leave the axle loose
   */
  public static List<MechanismForces> underEach(
      Mechanism mechanism, List<SpringPoint> springs, List<List<Load>> loadSets) {
    Balance balance = new Balance(mechanism, springs);
    List<MechanismForces> forces = new ArrayList<>(loadSets.size());
    for (List<Load> loads : loadSets) {
      forces.add(balance.under(loads));
    }
    return forces;
  }

  /** The equations of balance at ride, the same for every set of loads. */
  private static final class Balance {
    private final Mechanism mechanism;
    private final List<SpringPoint> springs;
    private final Coordinates coordinates;
    private final Strain strain;
    private final double[][] springBy;
    private final double[][] matrix;
    private final double stiffest;

    Balance(Mechanism mechanism, List<SpringPoint> springs) {
      this.mechanism = mechanism;
      this.springs = springs;
      coordinates =
          new Coordinates(
              mechanism.trackMm(),
              mechanism.tyreLoadedRadiusMm(),
              mechanism.bodies(),
              mechanism.links(),
              mechanism.joints(),
              mechanism.bushes());
      strain = new Strain(coordinates, mechanism.links(), mechanism.joints(), mechanism.bushes());
      strain.evaluate(new double[coordinates.free], 0, 0);
      springBy = new double[springs.size()][];
      for (int i = 0; i < springBy.length; i++) {
        springBy[i] = stretchBy(springs.get(i));
      }
      double largest = 0;
      for (double stiffness : strain.stiffness) {
        largest = Math.max(largest, stiffness);
      }
      stiffest = largest;
      matrix = matrix();
      requireHeld();
    }

    private double[] stretchBy(SpringPoint spring) {
      if (!(spring.rateNPerMm() > 0)) {
        throw new IllegalArgumentException(
            "Spring '"
                + spring.name()
                + "' has a rate of "
                + spring.rateNPerMm()
                + " N/mm and cannot hold the axle; give a rate above 0, or leave it out.");
      }
      Vector3 way = spring.frame().to(spring.axle()).normalized();
      double[] along = {way.x(), way.y(), way.z()};
      double[] by = new double[coordinates.count];
      for (int column = 0; column < by.length; column++) {
        by[column] = Rotation.dot(along, velocity(spring.axle(), column));
      }
      return by;
    }

    private double[] velocity(Point3 onAxle, int column) {
      int axle = coordinates.index(Mechanism.AXLE);
      return strain.stand().velocity(axle, Stand.array(onAxle), column);
    }

    private double[][] matrix() {
      int n = coordinates.count;
      double[][] sum = new double[n + strain.exact.length][n + strain.exact.length];
      for (int i = 0; i < strain.elasticBy.length; i++) {
        add(sum, strain.elasticBy[i], strain.stiffness[i]);
      }
      for (int i = 0; i < springBy.length; i++) {
        add(sum, springBy[i], springs.get(i).rateNPerMm());
      }
      // Multiplied by a stiffness, so that all entries are alike in size.
      for (int i = 0; i < strain.exact.length; i++) {
        for (int j = 0; j < n; j++) {
          sum[n + i][j] = stiffest * strain.exactBy[i][j];
          sum[j][n + i] = stiffest * strain.exactBy[i][j];
        }
      }
      return sum;
    }

    private static void add(double[][] sum, double[] by, double stiffness) {
      for (int j = 0; j < by.length; j++) {
        for (int k = 0; k < by.length; k++) {
          sum[j][k] += stiffness * by[j] * by[k];
        }
      }
    }

    private void requireHeld() {
      int n = coordinates.count;
      double[][] rows =
          new double[strain.elasticBy.length + springBy.length + strain.exact.length][];
      int row = 0;
      for (double[][] some : List.of(strain.elasticBy, springBy, strain.exactBy)) {
        for (double[] by : some) {
          rows[row++] = by.clone();
        }
      }
      if (RideRank.rank(rows) < n) {
        throw new IllegalArgumentException(
            "Links, joints and springs together do not hold the axle; forces cannot be found. Give"
                + " at least two springs, one a side.");
      }
    }

    MechanismForces under(List<Load> loads) {
      int n = coordinates.count;
      double[] unknowns = new double[matrix.length];
      for (Load load : loads) {
        for (int column = 0; column < n; column++) {
          unknowns[column] += work(load, column);
        }
      }
      double[] wanted = unknowns.clone();
      LinearSystem.solve(copy(), unknowns);
      improve(unknowns, wanted);
      return new MechanismForces(members(unknowns), sliders(unknowns));
    }

    /** One round of refinement takes out the rounding of the first solution. */
    private void improve(double[] unknowns, double[] wanted) {
      double[] rest = wanted.clone();
      for (int i = 0; i < rest.length; i++) {
        for (int j = 0; j < rest.length; j++) {
          rest[i] -= matrix[i][j] * unknowns[j];
        }
      }
      LinearSystem.solve(copy(), rest);
      for (int i = 0; i < rest.length; i++) {
        unknowns[i] += rest[i];
      }
    }

    private double work(Load load, int column) {
      int axle = coordinates.index(Mechanism.AXLE);
      double[] force = {load.forceN().x(), load.forceN().y(), load.forceN().z()};
      double[] moment = {load.momentNmm().x(), load.momentNmm().y(), load.momentNmm().z()};
      return Rotation.dot(force, velocity(load.at(), column))
          + Rotation.dot(moment, strain.stand().spin(axle, column));
    }

    private double[][] copy() {
      double[][] copy = new double[matrix.length][];
      for (int i = 0; i < copy.length; i++) {
        copy[i] = matrix[i].clone();
      }
      return copy;
    }

    private LinkForces members(double[] displacement) {
      List<MemberForce> links = new ArrayList<>(mechanism.links().size());
      for (int i = 0; i < mechanism.links().size(); i++) {
        ElasticLink link = mechanism.links().get(i);
        double tensionN = strain.stiffness[i] * along(strain.elasticBy[i], displacement);
        links.add(
            new MemberForce(
                link.name(), tensionN, link.from().atRide(), link.wayAtRide().normalized()));
      }
      List<MemberForce> pulling = new ArrayList<>(springs.size());
      for (int i = 0; i < springs.size(); i++) {
        SpringPoint spring = springs.get(i);
        double tensionN = spring.rateNPerMm() * along(springBy[i], displacement);
        Vector3 way = spring.axle().to(spring.frame()).normalized();
        pulling.add(new MemberForce(spring.name(), tensionN, spring.axle(), way));
      }
      return new LinkForces(
          links,
          pulling,
          new Vector3(displacement[0], displacement[1], displacement[coordinates.heave]),
          new Vector3(displacement[coordinates.roll], -displacement[3], displacement[2])
              .scaled(1 / coordinates.axleLeverMm));
    }

    private static double along(double[] by, double[] displacement) {
      double sum = 0;
      for (int j = 0; j < by.length; j++) {
        sum += by[j] * displacement[j];
      }
      return sum;
    }

    private List<Vector3> sliders(double[] unknowns) {
      List<Vector3> forces = new ArrayList<>();
      int row = coordinates.count;
      for (ExactJoint joint : mechanism.joints()) {
        if (joint instanceof ExactJoint.Slide slide) {
          Vector3 sum = new Vector3(0, 0, 0);
          double[][] across = Strain.across(slide.direction());
          for (int i = 0; i < 2; i++) {
            Vector3 normal = new Vector3(across[i][0], across[i][1], across[i][2]);
            sum = sum.plus(normal.scaled(-stiffest * unknowns[row + i]));
          }
          forces.add(sum);
        }
        row += joint.equations();
      }
      return forces;
    }
  }
}
