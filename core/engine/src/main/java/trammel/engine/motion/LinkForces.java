package trammel.engine.motion;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Force in every link and spring when loads act on the axle at a pose.
 *
 * <p>Links and springs are axial members between body and axle, the links with their bushing
 * stiffness, the springs with their rate. The axle, a rigid body with six freedoms, moves by the
 * small displacement {@code d} that balances the loads {@code W}: {@code (sum k j j') d = W}, where
 * {@code j} is the stretch of a member per unit of each freedom; a member then pulls with {@code k
 * j'd}. That is the least-energy solution, and where six members hold the axle it is plain statics
 * and the stiffnesses drop out (displacement method: Przemieniecki, Theory of Matrix Structural
 * Analysis, McGraw-Hill 1968, from memory). Geometry is that of the pose; its change under load is
 * left out.
 *
 * <p>The loads are all that acts on the axle besides these members: ground forces at the contact
 * patches, shaft torque, the axle's own weight. With the full ground forces given, the spring
 * forces are the full spring forces. The bind of the links at the pose ({@link
 * LinkReading#bindForceN}) is not in here; it comes on top.
 *
 * @param links links in the order of the linkage
 * @param springs springs in the order given
 * @param axleShiftMm displacement of the axle's middle by bushings and springs (mm)
 * @param axleTurnRad small rotation of the axle by bushings and springs (rad)
 */
public record LinkForces(
    List<MemberForce> links, List<MemberForce> springs, Vector3 axleShiftMm, Vector3 axleTurnRad) {

  private static final int FREEDOMS = 6;

  private static final String[] LOOSE = {
    "fore and aft", "sideways", "up and down", "in roll", "against wind-up", "in yaw"
  };

  /** Copies the lists. */
  public LinkForces {
    links = List.copyOf(links);
    springs = List.copyOf(springs);
  }

  /**
   * Forces under loads.
   *
   * @param linkage links that hold the axle
   * @param pose where the axle stands
   * @param springs what holds heave and roll: two springs or more with a rate above zero, or
   *     stand-in supports
   * @param loads all loads on the axle
   * @throws IllegalArgumentException if links and springs together leave the axle loose, or a
   *     spring has no rate
   */
  public static LinkForces under(
      Linkage linkage, AxlePose pose, List<SpringPoint> springs, List<Load> loads) {
    return under(linkage, pose, new Members(linkage, pose, springs), loads);
  }

  /**
   * Forces under several sets of loads, each by itself.
   *
   * @param linkage links that hold the axle
   * @param pose where the axle stands
   * @param springs as above
   * @param loadSets the loads on the axle of each set
   * @return the forces of each set, in their order
   * @throws IllegalArgumentException as above
   */
  public static List<LinkForces> underEach(
      Linkage linkage, AxlePose pose, List<SpringPoint> springs, List<List<Load>> loadSets) {
    Members members = new Members(linkage, pose, springs);
    List<LinkForces> forces = new ArrayList<>(loadSets.size());
    for (List<Load> loads : loadSets) {
      forces.add(under(linkage, pose, members, loads));
    }
    return forces;
  }

  private static LinkForces under(
      Linkage linkage, AxlePose pose, Members members, List<Load> loads) {
    double[] displacement = members.displacement(wrench(pose.centre(), loads, members.leverMm));
    int linkCount = linkage.links().size();
    return new LinkForces(
        members.forces(displacement, 0, linkCount),
        members.forces(displacement, linkCount, members.names.length),
        new Vector3(displacement[0], displacement[1], displacement[2]),
        new Vector3(displacement[3], displacement[4], displacement[5]).scaled(1 / members.leverMm));
  }

  /**
   * The force in the link of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public MemberForce link(String name) {
    return named(links, "link", name);
  }

  /**
   * The force in the spring of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public MemberForce spring(String name) {
    return named(springs, "spring", name);
  }

  private static MemberForce named(List<MemberForce> members, String what, String name) {
    for (MemberForce member : members) {
      if (member.name().equals(name)) {
        return member;
      }
    }
    throw new IllegalArgumentException(
        "There is no "
            + what
            + " '"
            + name
            + "' among the forces; give the name it was made with.");
  }

  private static double[] wrench(Point3 centre, List<Load> loads, double leverMm) {
    Vector3 force = new Vector3(0, 0, 0);
    Vector3 moment = new Vector3(0, 0, 0);
    for (Load load : loads) {
      force = force.plus(load.forceN());
      moment = moment.plus(load.momentAbout(centre));
    }
    return new double[] {
      force.x(),
      force.y(),
      force.z(),
      moment.x() / leverMm,
      moment.y() / leverMm,
      moment.z() / leverMm
    };
  }

  /** Links and springs as rows of one stiffness model; turns are times the lever, in mm. */
  private static final class Members {

    final double leverMm;
    final String[] names;
    private final double[] stiffness;
    private final Point3[] pivots;
    private final Vector3[] directions;
    private final double[][] stretchPer;
    private final double[][] matrix;

    Members(Linkage linkage, AxlePose pose, List<SpringPoint> springs) {
      leverMm = linkage.trackMm() / 3;
      int count = linkage.links().size() + springs.size();
      names = new String[count];
      stiffness = new double[count];
      pivots = new Point3[count];
      directions = new Vector3[count];
      stretchPer = new double[count][];
      Placement placement = pose.placement();
      int i = 0;
      for (Link link : linkage.links()) {
        add(i++, link.name(), placement.move(link.axle()), link.frame(), link.stiffnessNPerMm());
      }
      for (SpringPoint spring : springs) {
        requireRate(spring);
        add(i++, spring.name(), placement.move(spring.axle()), spring.frame(), spring.rateNPerMm());
      }
      for (int k = 0; k < count; k++) {
        Vector3 arm = pose.centre().to(pivots[k]);
        Vector3 turning = arm.cross(directions[k]).scaled(1 / leverMm);
        Vector3 along = directions[k];
        stretchPer[k] =
            new double[] {
              -along.x(), -along.y(), -along.z(), -turning.x(), -turning.y(), -turning.z()
            };
      }
      requireHeld();
      matrix = stiffnessMatrix();
    }

    private void add(int i, String name, Point3 axlePivot, Point3 framePivot, double rate) {
      names[i] = name;
      stiffness[i] = rate;
      pivots[i] = axlePivot;
      directions[i] = axlePivot.to(framePivot).normalized();
    }

    private static void requireRate(SpringPoint spring) {
      if (!(spring.rateNPerMm() > 0)) {
        throw new IllegalArgumentException(
            "Spring '"
                + spring.name()
                + "' has a rate of "
                + spring.rateNPerMm()
                + " N/mm and cannot hold the axle; give a rate above 0, or leave it out.");
      }
    }

    private void requireHeld() {
      double[][] rows = new double[stretchPer.length][];
      for (int i = 0; i < rows.length; i++) {
        rows[i] = stretchPer[i].clone();
      }
      int loose = HeldFreedoms.loosest(rows);
      if (loose >= 0) {
        throw new IllegalArgumentException(
            "Links and springs together do not hold the axle "
                + LOOSE[loose]
                + "; forces cannot be found. Give at least two springs, one a side.");
      }
    }

    /** Displacement that balances the wrench; one refinement removes the rounding of the first. */
    double[] displacement(double[] wrench) {
      double[] displacement = wrench.clone();
      LinearSystem.solve(copyOf(matrix), displacement);
      double[] rest = wrench.clone();
      for (int i = 0; i < stretchPer.length; i++) {
        double tension = tension(i, displacement);
        for (int j = 0; j < FREEDOMS; j++) {
          rest[j] -= tension * stretchPer[i][j];
        }
      }
      LinearSystem.solve(copyOf(matrix), rest);
      for (int j = 0; j < FREEDOMS; j++) {
        displacement[j] += rest[j];
      }
      return displacement;
    }

    private double[][] stiffnessMatrix() {
      double[][] sum = new double[FREEDOMS][FREEDOMS];
      for (int i = 0; i < stretchPer.length; i++) {
        double[] stretch = stretchPer[i];
        for (int j = 0; j < FREEDOMS; j++) {
          double weighted = stiffness[i] * stretch[j];
          double[] row = sum[j];
          for (int k = 0; k < FREEDOMS; k++) {
            row[k] += weighted * stretch[k];
          }
        }
      }
      return sum;
    }

    private static double[][] copyOf(double[][] matrix) {
      double[][] copy = new double[matrix.length][];
      for (int i = 0; i < copy.length; i++) {
        copy[i] = matrix[i].clone();
      }
      return copy;
    }

    private double tension(int i, double[] displacement) {
      double stretch = 0;
      for (int j = 0; j < FREEDOMS; j++) {
        stretch += stretchPer[i][j] * displacement[j];
      }
      return stiffness[i] * stretch;
    }

    List<MemberForce> forces(double[] displacement, int from, int to) {
      List<MemberForce> forces = new ArrayList<>(to - from);
      for (int i = from; i < to; i++) {
        forces.add(new MemberForce(names[i], tension(i, displacement), pivots[i], directions[i]));
      }
      return forces;
    }
  }
}
