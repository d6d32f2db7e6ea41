package trammel.engine.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GeometryTest {

  @Test
  void distanceIsThatOfABoxDiagonal() {
    assertEquals(7, new Point3(1, 1, 1).distanceMm(new Point3(3, 4, 7)));
  }

  @Test
  void aPointMirrorsInTheCentrePlane() {
    assertEquals(new Point3(1, -2, 3), new Point3(1, 2, 3).mirrored());
    assertEquals(new Point3(1, 0, 3), new Point3(1, 0, 3).mirrored());
  }

  @Test
  void theMidpointLiesHalfWay() {
    assertEquals(new Point3(2, 3, 4), new Point3(0, 0, 0).midpoint(new Point3(4, 6, 8)));
  }

  @Test
  void goingByTheVectorToAPointArrivesThere() {
    Point3 start = new Point3(1, 2, 3);
    Point3 end = new Point3(-4, 6, 0.5);
    assertEquals(end, start.plus(start.to(end)));
  }

  @Test
  void theVectorProductIsRightHanded() {
    assertEquals(new Vector3(0, 0, 1), new Vector3(1, 0, 0).cross(new Vector3(0, 1, 0)));
  }

  @ParameterizedTest
  @CsvSource({"30, 30", "150, 30", "90, 90", "180, 0", "-10, 10"})
  void theAngleOfLinesDoesNotCareWhichWayTheyPoint(double betweenDeg, double expectedDeg) {
    double angle = Math.toRadians(betweenDeg);
    Vector3 turned = new Vector3(Math.cos(angle), Math.sin(angle), 0);
    assertEquals(Math.toRadians(expectedDeg), new Vector3(2, 0, 0).angleToLineRad(turned), 1e-15);
  }

  @Test
  void aTinyAngleKeepsItsDigits() {
    assertEquals(1e-9, new Vector3(1, 0, 0).angleToLineRad(new Vector3(1, 1e-9, 0)), 1e-18);
  }

  @Test
  void viewsOfAVectorThatRisesToTheFrontAndLeft() {
    Vector3 vector = new Vector3(1, 1, Math.sqrt(2));
    assertEquals(Math.atan(Math.sqrt(2)), vector.sideViewRad(), 1e-15);
    assertEquals(Math.PI / 4, vector.planViewRad(), 1e-15);
    assertEquals(Math.PI / 4, vector.elevationRad(), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void coordinatesThatAreNoNumbersAreRefused(double value) {
    assertThrows(IllegalArgumentException.class, () -> new Point3(0, value, 0));
    assertThrows(IllegalArgumentException.class, () -> new Vector3(value, 0, 0));
  }

  @Test
  void aVectorWithoutLengthHasNoDirection() {
    Vector3 nothing = new Vector3(0, 0, 0);
    assertThrows(IllegalArgumentException.class, nothing::normalized);
    assertThrows(
        IllegalArgumentException.class, () -> nothing.angleToLineRad(new Vector3(1, 0, 0)));
  }
}
