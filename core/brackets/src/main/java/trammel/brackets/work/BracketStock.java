package trammel.brackets.work;

import static trammel.engine.quantity.Amount.length;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import trammel.assembly.Held;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Lightening;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.PlateShape;
import trammel.trade.plates.Point2;

/**
 * One thickness of plate from which brackets are cut.
 *
 * @param material the plate in the catalog
 * @param thicknessMm its thickness, or the thickness that is tried in its place (mm)
 * @param lightened true when loaded plates get the holes that leave them as strong
 */
public record BracketStock(PlateMaterial material, double thicknessMm, boolean lightened) {

  public BracketStock(PlateMaterial material) {
    this(material, material.form().thicknessMm(), false);
  }

  /**
   * A plate of a drawn shape.
   *
   * @throws UnworkableLayoutException if the shape cannot be drawn where the layout puts it
   */
  public PlateNeed cut(String name, List<Held> places, Supplier<PlateShape> shape, Phrase why) {
    return new PlateNeed(drawn(name, shape), material.key(), places, why);
  }

  /**
   * A plate of a drawn shape that carries a bar's force, lightened if that is asked for.
   *
   * @throws UnworkableLayoutException if the shape cannot be drawn where the layout puts it
   */
  public PlateNeed loaded(
      String name,
      List<Held> places,
      Supplier<PlateShape> shape,
      Lightening lightening,
      Phrase why) {
    PlateNeed solid = cut(name, places, shape, why);
    if (!lightened) {
      return solid;
    }
    Optional<Outline> lighter = lightening.of(solid.plate().outline(), thicknessMm());
    if (lighter.isEmpty()) {
      return cut(
          name, places, shape, Phrase.of("{}; no hole to lighten it leaves it as strong", why));
    }
    Plate plate = new Plate(name, lighter.get(), thicknessMm(), material.title());
    return new PlateNeed(
        plate,
        material.key(),
        places,
        Phrase.of(
            "{}; lightened where no cut through it is weaker than its weakest"
                + " without the holes",
            why));
  }

  private Plate drawn(String name, Supplier<PlateShape> shape) {
    try {
      return shape.get().plate(material.title());
    } catch (IllegalArgumentException refused) {
      throw new UnworkableLayoutException(
          Phrase.of("{} cannot be made for this layout. {}", name, refused.getMessage()));
    }
  }

  /** A plain rectangle. */
  public PlateNeed strip(
      String name, List<Held> places, double lengthMm, double widthMm, Phrase why) {
    return strip(name, places, lengthMm, widthMm, widthMm, why);
  }

  /**
   * A strip whose width changes evenly along it, its base straight: corners (0, 0), (length, 0),
   * (length, end width) and (0, start width).
   */
  public PlateNeed strip(
      String name,
      List<Held> places,
      double lengthMm,
      double startWidthMm,
      double endWidthMm,
      Phrase why) {
    if (!(lengthMm > 0 && startWidthMm > 0 && endWidthMm > 0)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "{} would be {} x {}; there is no room for it. Move the pick-up point away"
                  + " from the rail or tube.",
              name,
              length(lengthMm),
              length(Math.min(startWidthMm, endWidthMm))));
    }
    Outline outline =
        Outline.solid(
            Loop.through(
                List.of(
                    new Point2(0, 0),
                    new Point2(lengthMm, 0),
                    new Point2(lengthMm, endWidthMm),
                    new Point2(0, startWidthMm))));
    Plate plate = new Plate(name, outline, thicknessMm(), material.title());
    return new PlateNeed(plate, material.key(), places, why);
  }
}
