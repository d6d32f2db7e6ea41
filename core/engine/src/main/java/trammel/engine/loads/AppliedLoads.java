package trammel.engine.loads;

import java.util.List;
import trammel.engine.quantity.Given;

/**
 * Everything outside the suspension that pushes or turns the axle: forces at points, and a pure
 * moment. Links and springs hold the balance.
 *
 * @param forces forces at points
 * @param momentXNmm pure moment about the forward axis, Nmm; positive lifts the left wheel
 * @param momentYNmm pure moment about the leftward axis, Nmm; positive dips the nose of the pinion
 * @param momentZNmm pure moment about the upward axis, Nmm
 */
public record AppliedLoads(
    List<PointForce> forces, double momentXNmm, double momentYNmm, double momentZNmm) {
  /**
   * Checks the loads.
   *
   * @throws IllegalArgumentException if a moment is not a number
   */
  public AppliedLoads {
    forces = List.copyOf(forces);
    Given.finite("moment X", momentXNmm, "Nmm");
    Given.finite("moment Y", momentYNmm, "Nmm");
    Given.finite("moment Z", momentZNmm, "Nmm");
  }

  /**
   * Sum of the forces forward.
   *
   * @return force, N
   */
  public double totalForceXN() {
    double sum = 0;
    for (PointForce force : forces) {
      sum += force.forceXN();
    }
    return sum;
  }

  /**
   * Sum of the forces to the left.
   *
   * @return force, N
   */
  public double totalForceYN() {
    double sum = 0;
    for (PointForce force : forces) {
      sum += force.forceYN();
    }
    return sum;
  }

  /**
   * Sum of the forces upward.
   *
   * @return force, N
   */
  public double totalForceZN() {
    double sum = 0;
    for (PointForce force : forces) {
      sum += force.forceZN();
    }
    return sum;
  }

  /**
   * Moment of everything about the forward axis through a point.
   *
   * @param yMm the point, mm to the left
   * @param zMm the point, mm above the ground
   * @return moment, Nmm
   */
  public double momentXAboutNmm(double yMm, double zMm) {
    double sum = momentXNmm;
    for (PointForce force : forces) {
      sum += (force.yMm() - yMm) * force.forceZN() - (force.zMm() - zMm) * force.forceYN();
    }
    return sum;
  }

  /**
   * Moment of everything about the leftward axis through a point.
   *
   * @param xMm the point, mm forward
   * @param zMm the point, mm above the ground
   * @return moment, Nmm; negative winds the pinion's nose up
   */
  public double momentYAboutNmm(double xMm, double zMm) {
    double sum = momentYNmm;
    for (PointForce force : forces) {
      sum += (force.zMm() - zMm) * force.forceXN() - (force.xMm() - xMm) * force.forceZN();
    }
    return sum;
  }

  /**
   * Moment of everything about the upward axis through a point.
   *
   * @param xMm the point, mm forward
   * @param yMm the point, mm to the left
   * @return moment, Nmm
   */
  public double momentZAboutNmm(double xMm, double yMm) {
    double sum = momentZNmm;
    for (PointForce force : forces) {
      sum += (force.xMm() - xMm) * force.forceYN() - (force.yMm() - yMm) * force.forceXN();
    }
    return sum;
  }
}
