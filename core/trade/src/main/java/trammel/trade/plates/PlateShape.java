package trammel.trade.plates;

/** A kind of part that can draw its own outline from its dimensions. */
public interface PlateShape {
  String name();

  double thicknessMm();

  Outline outline();

  /** The finished part, cut from the given material. */
  default Plate plate(String material) {
    return new Plate(name(), outline(), thicknessMm(), material);
  }
}
