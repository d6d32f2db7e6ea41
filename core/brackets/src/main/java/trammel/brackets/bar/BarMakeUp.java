package trammel.brackets.bar;

import java.util.Optional;
import java.util.Set;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BarTube;
import trammel.engine.layout.BracketPlate;
import trammel.engine.layout.Duty;

/**
 * What bars and brackets are made of.
 *
 * @param tube tube of the bar
 * @param frameEnd joint on the frame
 * @param axleEnd joint on the axle
 * @param bracket plate of the brackets
 * @param frameHoles pick-up holes in each frame bracket
 * @param lightened true when bracket plates get the holes that leave them as strong
 */
public record BarMakeUp(
    BarMaterial tube,
    EndFitting frameEnd,
    EndFitting axleEnd,
    PlateMaterial bracket,
    HoleRow frameHoles,
    boolean lightened) {

  /** The frame joint in its bracket. */
  public JointSeat frameSeat() {
    return new JointSeat(frameEnd.joint(), bracket.form().thicknessMm(), frameHoles);
  }

  /** The axle joint in its bracket. */
  public JointSeat axleSeat() {
    return new JointSeat(axleEnd.joint(), bracket.form().thicknessMm());
  }

  /** The same with other holes in the frame brackets. */
  public BarMakeUp withFrameHoles(HoleRow holes) {
    return new BarMakeUp(tube, frameEnd, axleEnd, bracket, holes, lightened);
  }

  /** Half the room across that a bar and both its brackets take (mm). */
  public double halfAcrossMm() {
    double bracketsMm = Math.max(frameSeat().stackMm(), axleSeat().stackMm());
    return Math.max(bracketsMm, tube.tube().outsideDiameterMm()) / 2;
  }

  /** A bar of this make-up. */
  public Bar bar(String name, Set<Duty> duties, Point3 frame, Point3 axle) {
    BarTube barTube = tube.tube();
    BracketPlate plate =
        new BracketPlate(bracket.form().thicknessMm(), bracket.yieldMPa(), bracket.tensileMPa());
    return new Bar(
        name, duties, frame, axle, frameEnd.joint(), axleEnd.joint(), barTube, Optional.of(plate));
  }
}
