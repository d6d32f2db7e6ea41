package trammel.assembly;

import java.util.List;
import trammel.engine.geometry.Point3;

/** Where the root of a weld runs, in vehicle axes at ride. */
public sealed interface SeamPath permits FlatPath, CopePath, SpotPath {
  /** Length of the weld, mm; 0 for a plug or slot. */
  double lengthMm();

  /**
   * Points along it, first and last included.
   *
   * @param chordMm straight lines between them stay this near to the path (mm), above 0
   */
  List<Point3> points(double chordMm);

  /**
   * The points of each stretch of it that hangs together; one, unless it says otherwise.
   *
   * @param chordMm straight lines between them stay this near to the path (mm), above 0
   */
  default List<List<Point3>> stretches(double chordMm) {
    return List.of(points(chordMm));
  }
}
