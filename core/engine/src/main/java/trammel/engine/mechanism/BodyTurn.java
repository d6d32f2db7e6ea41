package trammel.engine.mechanism;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * How far a further body has turned from ride, against the body that carries its pivot.
 *
 * @param body name of the body
 * @param angleRad turn about its pin, right-handed (rad); for a ball the size of the turn
 * @param rotationRad axis times angle, in the ride axes of the body that carries the pivot (rad)
 * @param pivot where the pivot is now (mm)
 */
public record BodyTurn(String body, double angleRad, Vector3 rotationRad, Point3 pivot) {}
