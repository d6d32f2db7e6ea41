package trammel.brackets;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import trammel.brackets.material.BoltSizes;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.BracketBasis;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Rails;
import trammel.engine.layout.Traction;
import trammel.engine.layout.Travel;
import trammel.engine.layout.Tyre;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.steel.PlateStock;

/** An invented vehicle whose rails run straight and level, so that lengths are worked by hand. */
public final class SampleBasis {
  /** For refusals and reasons. */
  public static final QuantityPrinter PRINT = new QuantityPrinter(UnitSystem.METRIC);

  private SampleBasis() {}

  /** Rails 150 x 60 x 4 mm, 900 mm over both. */
  public static Rails rails(boolean boxed) {
    return new Rails(boxed, 900, 900, 450, 450, 700, 150, 60, 4, 0);
  }

  /** Those rails, boxed with plate of 5 mm. */
  public static BracketBasis of(boolean boxed) {
    Vector3 ahead = new Vector3(1, 0, 0);
    Chassis chassis =
        new Chassis(
            3000,
            3000,
            new Masses(1150, 400, 400, 170, 635),
            new Traction(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0.65),
            new Tyre(380, 368, 230),
            new AxleHousing(76, 6, 1650, 165, 700, 1625),
            rails(boxed),
            new Driveline(
                new Point3(280, 0, 330),
                ahead,
                new Point3(1520, 0, 330),
                ahead,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
            List.of(),
            new Travel(76, 76));
    PlateMaterial plate =
        new PlateMaterial(
            "plate-5",
            "plate of 5 mm",
            new PlateStock(5),
            250,
            400,
            List.of(new PlateMaterial.Sheet(1250, 2500, BigDecimal.TEN, true, List.of())),
            "supplier",
            1);
    return new BracketBasis(chassis, plate, new BoltSizes(List.of()));
  }
}
