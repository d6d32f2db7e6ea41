package trammel.brackets;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarMaking;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.mount.MountStock;
import trammel.brackets.work.BracketBasis;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Rails;
import trammel.engine.strength.BoltGrade;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.ThreadForm;
import trammel.trade.steel.PlateStock;
import trammel.trade.steel.RectangularTube;
import trammel.trade.steel.RoundTube;

/**
 * Bars for brackets that are worked by hand: bolts of 12.303125 mm, so that with 1/64 in of
 * clearance a hole is 12.7 mm and the metal about it, 1 1/2 hole diameters, 19.05 mm; sleeves of 50
 * mm, barrels of 25 mm radius, which with 1/4 in of air keep metal 31.35 mm away; plate of 5 mm.
 */
public final class SampleBars {
  static final double HOLE_MM = 12.7;
  static final double NOSE_MM = 19.05;
  static final double REACH_MM = 31.35;
  static final double BOLT_MM = 12.303125;

  private static final Joint JOINT = new Joint("bushed end", 12_000, 0.2, BOLT_MM, 50, 25, 40_000);
  private static final EndFitting BARREL =
      new EndFitting("barrel", "welded barrel", JOINT, false, 25, 0, "", "");
  private static final PlateMaterial PLATE =
      new PlateMaterial(
          "plate-5",
          "plate of 5 mm",
          new PlateStock(5),
          250,
          400,
          List.of(new PlateMaterial.Sheet(1250, 2500, BigDecimal.TEN, true, List.of())),
          "supplier",
          1);
  private static final List<BarMaterial.Stick> STICKS =
      List.of(new BarMaterial.Stick(6000, BigDecimal.TEN, true, List.of()));
  private static final BoltSizes BOLTS =
      new BoltSizes(
          List.of(
              new BoltSize(
                  "bolt",
                  "bolt grade 8",
                  new ScrewThread("bolt", ThreadForm.UNIFIED, BOLT_MM, 25.4 / 20),
                  BoltGrade.GRADE_8,
                  11,
                  2.5,
                  List.of(new BoltSize.Stocked(100, BigDecimal.ONE)),
                  BigDecimal.ONE,
                  BigDecimal.ONE,
                  "supplier",
                  1)));

  private SampleBars() {}

  static BracketBasis basis(boolean boxed) {
    return basis(SampleBasis.rails(boxed));
  }

  static BracketBasis basis(Rails rails) {
    Chassis chassis = SampleBasis.of(true).chassis().withRails(rails);
    return new BracketBasis(chassis, PLATE, BOLTS);
  }

  public static MountStock mountStock() {
    BarMaterial square =
        new BarMaterial(
            "square-50x3",
            "square tube",
            RectangularTube.square(50, 3),
            317,
            STICKS,
            "supplier",
            1);
    return new MountStock(PLATE, square, PLATE, BOLTS);
  }

  private static BarMakeUp makeUp(HoleRow holes) {
    BarMaterial tube =
        new BarMaterial("tube", "round tube", new RoundTube(40, 3), 400, STICKS, "supplier", 1);
    return new BarMakeUp(tube, BARREL, BARREL, PLATE, holes, false);
  }

  private static Bar bar(String name, Set<Duty> duties, Point3 frame, Point3 axle) {
    return makeUp(HoleRow.SINGLE).bar(name, duties, frame, axle);
  }

  static BarMaking along(String name, Point3 frame, Point3 axle) {
    return along(name, frame, axle, HoleRow.SINGLE);
  }

  static BarMaking along(String name, Point3 frame, Point3 axle, HoleRow holes) {
    return BarMaking.along(bar(name, Duty.DRIVE_AND_BRAKING.only(), frame, axle), makeUp(holes));
  }

  static BarMaking turned(String name, Point3 frame, Point3 axle) {
    return BarMaking.turned(
        bar(name, Duty.DRIVE_AND_BRAKING.only(), frame, axle), makeUp(HoleRow.SINGLE));
  }

  static BarMaking across(String name, Point3 frame, Point3 axle) {
    return BarMaking.across(bar(name, Duty.SIDEWAYS.only(), frame, axle), makeUp(HoleRow.SINGLE));
  }
}
