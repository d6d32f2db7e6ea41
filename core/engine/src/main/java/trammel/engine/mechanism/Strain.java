package trammel.engine.mechanism;

import java.util.List;
import trammel.engine.geometry.Vector3;

/**
 * What links and bushes are strained by and exact joints are open by, with the derivatives by all
 * coordinates. Rows: links, then three of each bush; two of each slide, three of each ball joint.
 */
final class Strain {
  /** Strain of links and bushes (mm). */
  final double[] elastic;

  final double[][] elasticBy;

  /** What exact joints are open by (mm). */
  final double[] exact;

  final double[][] exactBy;

  /** Stiffness of each elastic row (N/mm). */
  final double[] stiffness;

  private final List<ElasticLink> links;
  private final List<ExactJoint> joints;
  private final List<Bush> bushes;
  private final Coordinates coordinates;
  private final Stand stand;

  Strain(
      Coordinates coordinates,
      List<ElasticLink> links,
      List<ExactJoint> joints,
      List<Bush> bushes) {
    this.coordinates = coordinates;
    this.links = links;
    this.joints = joints;
    this.bushes = bushes;
    stand = new Stand(coordinates);
    int elasticRows = links.size() + Bush.EQUATIONS * bushes.size();
    int exactRows = joints.stream().mapToInt(ExactJoint::equations).sum();
    elastic = new double[elasticRows];
    elasticBy = new double[elasticRows][coordinates.count];
    exact = new double[exactRows];
    exactBy = new double[exactRows][coordinates.count];
    stiffness = new double[elasticRows];
    for (int i = 0; i < links.size(); i++) {
      stiffness[i] = links.get(i).stiffnessNPerMm();
    }
    for (int i = 0; i < bushes.size(); i++) {
      Vector3 along = bushes.get(i).stiffnessNPerMm();
      int row = links.size() + Bush.EQUATIONS * i;
      stiffness[row] = along.x();
      stiffness[row + 1] = along.y();
      stiffness[row + 2] = along.z();
    }
  }

  Stand stand() {
    return stand;
  }

  /** Puts the bodies in place and works everything out; see {@link Stand#place}. */
  void evaluate(double[] freeMm, double heaveMm, double rollMm) {
    stand.place(freeMm, heaveMm, rollMm);
    for (int i = 0; i < links.size(); i++) {
      link(i, links.get(i));
    }
    for (int i = 0; i < bushes.size(); i++) {
      bush(links.size() + Bush.EQUATIONS * i, bushes.get(i));
    }
    int row = 0;
    for (ExactJoint joint : joints) {
      if (joint instanceof ExactJoint.Slide slide) {
        slide(row, slide);
      } else if (joint instanceof ExactJoint.Ball ball) {
        ball(row, ball);
      }
      row += joint.equations();
    }
  }

  private void link(int row, ElasticLink link) {
    int from = coordinates.index(link.from().body());
    int to = coordinates.index(link.to().body());
    double[] start = stand.at(from, link.from().atRide());
    double[] end = stand.at(to, link.to().atRide());
    double[] way = Rotation.minus(end, start);
    double length = Math.sqrt(Rotation.dot(way, way));
    elastic[row] = length - link.lengthMm();
    for (int column = 0; column < coordinates.count; column++) {
      double[] relative =
          Rotation.minus(stand.velocity(to, end, column), stand.velocity(from, start, column));
      elasticBy[row][column] = Rotation.dot(way, relative) / length;
    }
  }

  private void bush(int row, Bush bush) {
    int body = coordinates.index(bush.body());
    int on = coordinates.index(bush.on());
    double[] held = stand.at(body, bush.point());
    double[] seat = stand.at(on, bush.point());
    double[] off = Rotation.minus(held, seat);
    put(elastic, row, Rotation.turnedBack(stand.turnOf(on), off));
    for (int column = 0; column < coordinates.count; column++) {
      double[] relative =
          Rotation.minus(stand.velocity(body, held, column), stand.velocity(on, seat, column));
      double[] seen = Rotation.minus(relative, Rotation.cross(stand.spin(on, column), off));
      put(elasticBy, row, column, Rotation.turnedBack(stand.turnOf(on), seen));
    }
  }

  private void slide(int row, ExactJoint.Slide slide) {
    int body = coordinates.index(slide.point().body());
    int line = coordinates.index(slide.line().body());
    double[] point = stand.at(body, slide.point().atRide());
    double[] start = stand.at(line, slide.line().atRide());
    double[] way = Rotation.minus(point, start);
    double[][] across = across(slide.direction());
    for (int i = 0; i < 2; i++) {
      double[] normal = Rotation.turned(stand.turnOf(line), across[i]);
      exact[row + i] = Rotation.dot(normal, way);
      for (int column = 0; column < coordinates.count; column++) {
        double[] relative =
            Rotation.minus(
                stand.velocity(body, point, column), stand.velocity(line, start, column));
        double[] turning = Rotation.cross(stand.spin(line, column), normal);
        exactBy[row + i][column] = Rotation.dot(normal, relative) + Rotation.dot(turning, way);
      }
    }
  }

  private void ball(int row, ExactJoint.Ball ball) {
    int first = coordinates.index(ball.first());
    int second = coordinates.index(ball.second());
    double[] one = stand.at(first, ball.point());
    double[] other = stand.at(second, ball.point());
    put(exact, row, Rotation.minus(one, other));
    for (int column = 0; column < coordinates.count; column++) {
      put(
          exactBy,
          row,
          column,
          Rotation.minus(
              stand.velocity(first, one, column), stand.velocity(second, other, column)));
    }
  }

  /** Two unit vectors square to a direction and to each other. */
  static double[][] across(Vector3 direction) {
    Vector3 helper =
        Math.abs(direction.z()) < 0.9 * direction.norm()
            ? new Vector3(0, 0, 1)
            : new Vector3(1, 0, 0);
    Vector3 one = direction.cross(helper).normalized();
    Vector3 other = direction.cross(one).normalized();
    return new double[][] {{one.x(), one.y(), one.z()}, {other.x(), other.y(), other.z()}};
  }

  private static void put(double[] values, int row, double[] three) {
    System.arraycopy(three, 0, values, row, 3);
  }

  private static void put(double[][] values, int row, int column, double[] three) {
    for (int i = 0; i < 3; i++) {
      values[row + i][column] = three[i];
    }
  }
}
