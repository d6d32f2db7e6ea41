package trammel.brackets.work;

import java.util.ArrayList;
import java.util.List;
import trammel.assembly.FlatPath;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;

/**
 * Two equal plates that face each other with a joint or a web between them.
 *
 * @param middle origin of their outlines, in the plane half way between them (mm)
 * @param x direction of the outlines' x axis
 * @param y direction of their y axis
 * @param towards square to both, from the second plate to the first
 * @param apartMm room between them (mm)
 * @param thicknessMm thickness of each (mm)
 * @param carrier the body that carries them
 * @param firstMark what the one on that side is called
 * @param secondMark what the other is called
 */
public record SidePair(
    Point3 middle,
    Vector3 x,
    Vector3 y,
    Vector3 towards,
    double apartMm,
    double thicknessMm,
    String carrier,
    String firstMark,
    String secondMark) {

  /** The same pair elsewhere. */
  public SidePair moved(Vector3 byMm) {
    return new SidePair(
        middle.plus(byMm), x, y, towards, apartMm, thicknessMm, carrier, firstMark, secondMark);
  }

  /** Where both stand, the first one first. */
  public List<Held> held() {
    return List.of(
        new Held(firstMark, carrier, Place.lying(at(apartMm / 2), x, y, towards, thicknessMm)),
        new Held(
            secondMark,
            carrier,
            Place.lying(at(-apartMm / 2), x, y, towards.scaled(-1), thicknessMm)));
  }

  private Point3 at(double offMm) {
    return middle.plus(towards.scaled(offMm));
  }

  /** The ids of both for plates of a name. */
  public List<String> ids(String name) {
    return List.of(Held.id(name, firstMark), Held.id(name, secondMark));
  }

  /** The plane of a face: 0 and 1 the first plate's inner and outer, 2 and 3 the second's. */
  public Place face(int number) {
    double offMm = apartMm / 2 + number % 2 * thicknessMm;
    return Place.of(at(number < 2 ? offMm : -offMm), x, y);
  }

  /** A weld along edges of the outline on both faces of both plates: four runs. */
  public List<SeamRun> bothFaces(String name, List<String> onto, List<Edge> edges) {
    List<SeamRun> runs = new ArrayList<>(4);
    runs.addAll(facesOf(0, name, onto, edges));
    runs.addAll(facesOf(1, name, onto, edges));
    return runs;
  }

  /** A weld along edges of the outline on both faces of the first plate, 0, or the second, 1. */
  public List<SeamRun> facesOf(int plate, String name, List<String> onto, List<Edge> edges) {
    List<String> parts = List.of(ids(name).get(plate));
    return List.of(
        new SeamRun(parts, onto, new FlatPath(face(2 * plate), edges)),
        new SeamRun(parts, onto, new FlatPath(face(2 * plate + 1), edges)));
  }

  /**
   * A weld round the foot of each plate, both faces and both ends: two runs.
   *
   * @param widthMm width of a foot, about the outline's own origin (mm)
   */
  public List<SeamRun> roundBases(String name, String onto, double widthMm) {
    List<SeamRun> runs = new ArrayList<>(2);
    double halfMm = widthMm / 2;
    Loop foot =
        new Loop(
            List.of(
                Seam.edge(-halfMm, 0, halfMm, 0),
                Seam.edge(halfMm, 0, halfMm, thicknessMm),
                Seam.edge(halfMm, thicknessMm, -halfMm, thicknessMm),
                Seam.edge(-halfMm, thicknessMm, -halfMm, 0)));
    for (int plate = 0; plate < 2; plate++) {
      Vector3 outward = towards.scaled(plate == 0 ? 1 : -1);
      Place place = Place.of(face(2 * plate).origin(), x, outward);
      runs.add(new SeamRun(ids(name).get(plate), onto, FlatPath.round(place, foot)));
    }
    return runs;
  }

  /** A weld along edges of the outline on the inner faces of both plates: two runs. */
  public List<SeamRun> innerFaces(String name, String part, List<Edge> edges) {
    return List.of(
        new SeamRun(part, ids(name).get(0), new FlatPath(face(0), edges)),
        new SeamRun(part, ids(name).get(1), new FlatPath(face(2), edges)));
  }

  /**
   * A bolt through both plates and what sits between them, its head on the first.
   *
   * @param joint centre of what sits between them (mm)
   * @param mark what tells this bolt from others of its line
   * @param name name of the plates
   * @param between id of what sits between them
   */
  public Bolting bolt(Point3 joint, String mark, String name, String between) {
    return bolt(joint, mark, name, between, true);
  }

  /**
   * A bolt through both plates and what sits between them, its head where there is least room.
   *
   * @param joint centre of what sits between them (mm)
   * @param mark what tells this bolt from others of its line
   * @param name name of the plates
   * @param between id of what sits between them
   * @param headOnFirst true for its head on the first plate, false for the second
   */
  public Bolting bolt(Point3 joint, String mark, String name, String between, boolean headOnFirst) {
    if (!headOnFirst) {
      Point3 head = joint.plus(towards.scaled(-apartMm / 2 - thicknessMm));
      return new Bolting(
          new Held(mark, carrier, Place.along(head, towards)),
          List.of(ids(name).get(1), between, ids(name).get(0)));
    }
    Point3 head = joint.plus(towards.scaled(apartMm / 2 + thicknessMm));
    return new Bolting(
        new Held(mark, carrier, Place.along(head, towards.scaled(-1))),
        List.of(ids(name).get(0), between, ids(name).get(1)));
  }
}
