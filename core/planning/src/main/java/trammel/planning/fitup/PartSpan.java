package trammel.planning.fitup;

import java.util.List;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.engine.geometry.Vector3;

/**
 * Where one plate or tube stands: from where to where it reaches as a tape reads it, and which way
 * its drawing is held.
 *
 * @param part the placed part
 * @param from its rearmost, lowest and innermost reach (mm)
 * @param to its foremost, highest and outermost reach (mm)
 * @param top which way the top of its drawing points; of a tube, which way it runs
 * @param face which way the face looks on which the plate is drawn
 */
public record PartSpan(PlacedPart part, Vector3 from, Vector3 to, Heading top, Heading face) {
  private static final double NEARLY = 1e-3;

  /** A part by a datum. */
  static PartSpan of(PlacedPart part, Datum datum) {
    List<Vector3> corners =
        part.solid().mesh().placed(part.place()).corners().stream().map(datum::read).toList();
    boolean tube = part.kind() == PartKind.TUBE;
    return new PartSpan(
        part,
        new Vector3(
            corners.stream().mapToDouble(Vector3::x).min().orElseThrow(),
            corners.stream().mapToDouble(Vector3::y).min().orElseThrow(),
            corners.stream().mapToDouble(Vector3::z).min().orElseThrow()),
        new Vector3(
            corners.stream().mapToDouble(Vector3::x).max().orElseThrow(),
            corners.stream().mapToDouble(Vector3::y).max().orElseThrow(),
            corners.stream().mapToDouble(Vector3::z).max().orElseThrow()),
        new Heading(datum.kind(), datum.read(tube ? part.place().z() : part.place().y())),
        new Heading(datum.kind(), datum.read(tube ? part.place().x() : part.place().z())));
  }

  boolean mirrors(PartSpan other, double nearMm, boolean turnedOver) {
    Vector3 asHere = other.face.own().scaled(turnedOver ? -1 : 1);
    return (part.kind() == PartKind.TUBE || asHere.minus(face.own()).norm() < NEARLY)
        && from.minus(other.from).norm() < nearMm
        && to.minus(other.to).norm() < nearMm
        && top.words().equals(other.top.words());
  }
}
